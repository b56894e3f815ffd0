import { dilutionFlow, dilutionFlowLaw } from '../laws/dilution';
import {
	fireDilutionFlow,
	fireDilutionLaw,
	lelFraction,
	lelFractionLaw
} from '../laws/fire-dilution';
import { SUBSTANCES } from '../laws/substances';
import type { FigureInput } from '../quantity/figure';
import type { AirRelease } from './air-releases';
import { flowInput, mixingInput, type AirRoom } from './air-room';
import type { Plan } from './plan';
import { constant, inherited, traced, type Draft } from './trace';
import { withinLaw } from './within-law';

type AirStep = NonNullable<Plan['air']>['steps'][number];
type AirLimit = NonNullable<AirStep['limit']>;

/** Outdoor air that holds the limit and keeps clear of fire, and how near to fire the room comes. */
export function flowsFor(
	draft: Draft,
	room: AirRoom,
	{ use, substanceId, releaseGPerMin }: AirRelease,
	limit: AirLimit | null,
	inputs: FigureInput[],
	path: string
): Pick<AirStep, 'dilutionM3PerH' | 'fireM3PerH' | 'lelFraction'> {
	const substance = SUBSTANCES[substanceId];
	const sensitizer = substance.sensitizer;
	const molarMassGPerMol = substance.molarMassGPerMol.value;
	const what = `${substance.name} from ${use.sheet.name}`;
	const lelPct = substance.lelPct;
	const flammable = lelPct && {
		releaseGPerMin,
		molarMassGPerMol,
		lelPct: lelPct.value,
		temperatureC: draft.temperatureC,
		sensitizer
	};
	const lel = lelPct && constant('LEL', lelPct.source, lelPct.value, '%');
	const diluting = [...inputs, mixingInput(draft, room)];
	const diluted = (limitPpm: number, rate: number, mixingFactor = 1): number =>
		dilutionFlow(
			{ releaseGPerMin: rate, molarMassGPerMol, limitPpm, mixingFactor, sensitizer },
			draft.temperatureC
		).flowM3PerH;
	const mixing = [
		...inputs.slice(0, 3),
		...(lel ? [lel] : []),
		flowInput(room),
		mixingInput(draft, room)
	];
	return {
		// Dilution is no control for a sensitizer, so no flow is named that would look like one.
		dilutionM3PerH:
			!limit || sensitizer
				? null
				: withinLaw(draft, 'air', `Dilution flow, ${what}`, () =>
						traced(draft, `${path}.dilutionM3PerH`, {
							label: `${what}: outdoor air to stay at the limit`,
							value: diluted(limit.ppm, releaseGPerMin, room.mixingFactor),
							unit: 'm3/h',
							law: dilutionFlowLaw,
							inputs: diluting,
							...inherited(draft, diluting, (rate = 0, ...others) =>
								diluted(limit.ppm, rate, others.at(-1))
							),
							note: 'Never an all-clear: measure, and follow the SDS.'
						})
					),
		fireM3PerH: !flammable
			? null
			: withinLaw(draft, 'air', `Flow against fire, ${what}`, () =>
					traced(draft, `${path}.fireM3PerH`, {
						label: `${what}: outdoor air to stay at a quarter of the explosive limit`,
						value: fireDilutionFlow(flammable).flowM3PerH,
						unit: 'm3/h',
						law: fireDilutionLaw,
						inputs: [...inputs.slice(0, 3), ...(lel ? [lel] : [])],
						...inherited(
							draft,
							inputs,
							(rate = 0) => fireDilutionFlow({ ...flammable, releaseGPerMin: rate }).flowM3PerH
						)
					})
				),
		lelFraction: !flammable
			? null
			: withinLaw(draft, 'air', `Share of the explosive limit, ${what}`, () =>
					traced(draft, `${path}.lelFraction`, {
						label: `${what}: share of the lower explosive limit`,
						value: lelFraction({ ...flammable, flowM3PerH: room.flowM3PerH / room.mixingFactor })
							.fraction,
						unit: 'fraction',
						law: lelFractionLaw,
						inputs: mixing,
						...inherited(draft, mixing, (rate = 0, ...others) => {
							const [flow = 0, factor = 1] = others.slice(-2);
							return lelFraction({
								...flammable,
								releaseGPerMin: rate,
								flowM3PerH: flow / factor
							}).fraction;
						}),
						note: 'Averaged over the room: near the liquid it can burn all the same.'
					})
				)
	};
}
