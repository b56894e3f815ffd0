import { additiveDilutionFlow, dilutionFlowLaw } from '../laws/dilution';
import {
	liquidMixtureLimitLaw,
	liquidMixtureLimitMgPerM3,
	mixtureLelLaw,
	mixtureLelPct
} from '../laws/mixture';
import { mgPerM3FromPpm } from '../laws/ppm';
import { strictestLimit } from '../laws/strictest-limit';
import { SUBSTANCES } from '../laws/substances';
import type { AirRelease } from './air-releases';
import { mixingInput, type AirRoom } from './air-room';
import type { Plan } from './plan';
import { computed, inherited, traced, type Draft } from './trace';
import { withinLaw } from './within-law';

type Mixture = NonNullable<Plan['air']>['mixtures'][number];

/** Materials that give off several vapors at once: their common limit, explosive limit and flow. */
export function mixturesOf(
	draft: Draft,
	room: AirRoom,
	releases: readonly AirRelease[]
): Mixture[] {
	const uses = [...new Set(releases.map(({ use }) => use))];
	return uses
		.map((use) => releases.filter((release) => release.use === use && release.fraction !== null))
		.filter((parts) => parts.length > 1)
		.map((parts, i) => mixture(draft, room, parts, `air.mixtures.${i}`));
}

function mixture(draft: Draft, room: AirRoom, parts: readonly AirRelease[], path: string): Mixture {
	const name = parts[0]?.use.sheet.name ?? '';
	const totalG = parts.reduce((sum, { fraction }) => sum + (fraction ?? 0), 0);
	const known = parts.map(({ substanceId, fraction, releaseGPerMin }) => {
		const { molarMassGPerMol, lelPct, sensitizer } = SUBSTANCES[substanceId];
		const limit = strictestLimit({ substance: substanceId, sets: room.limitSets, kind: 'average' });
		return {
			massFraction: (fraction ?? 0) / totalG,
			moles: (fraction ?? 0) / molarMassGPerMol.value,
			molarMassGPerMol: molarMassGPerMol.value,
			releaseGPerMin,
			lelPct: lelPct?.value,
			limitPpm: limit?.limitPpm,
			sensitizer
		};
	});
	const moles = known.reduce((sum, part) => sum + part.moles, 0);
	const withLel = known.flatMap(({ lelPct, moles: n }) =>
		lelPct === undefined ? [] : { lelPct, moleFraction: n / moles }
	);
	const withLimit = known.flatMap(({ limitPpm, ...part }) =>
		limitPpm === undefined ? [] : { ...part, limitPpm }
	);
	const inputs = parts.map(({ substanceId, fraction }, i) =>
		computed(`f_${i + 1}`, `${SUBSTANCES[substanceId].name} in ${name}`, fraction ?? 0, 'fraction')
	);
	const number = (
		key: 'limitMgPerM3' | 'lelPct' | 'dilutionM3PerH',
		label: string,
		isKnown: boolean,
		compute: (mixingFactor: number) => number
	): number | null => {
		const given = key === 'dilutionM3PerH' ? [...inputs, mixingInput(draft, room)] : inputs;
		return isKnown
			? withinLaw(draft, 'air', `${name}: ${label}`, () =>
					traced(draft, `${path}.${key}`, {
						label: `${name}: ${label}`,
						value: compute(room.mixingFactor),
						unit: key === 'limitMgPerM3' ? 'mg/m3' : key === 'lelPct' ? '%' : 'm3/h',
						law: {
							limitMgPerM3: liquidMixtureLimitLaw,
							lelPct: mixtureLelLaw,
							dilutionM3PerH: dilutionFlowLaw
						}[key],
						inputs: given,
						...inherited(draft, given, (...values) => compute(values.at(-1) ?? room.mixingFactor))
					})
				)
			: null;
	};
	const isWhole = withLimit.length === known.length;
	return {
		materialName: name,
		phase: parts[0]?.use.phase ?? '',
		limitMgPerM3: number('limitMgPerM3', 'limit of its vapors together', isWhole, () =>
			liquidMixtureLimitMgPerM3(
				withLimit.map(({ massFraction, limitPpm, molarMassGPerMol }) => ({
					massFraction,
					limitMgPerM3: mgPerM3FromPpm(limitPpm, { molarMassGPerMol })
				}))
			)
		),
		lelPct: number(
			'lelPct',
			'lower explosive limit of its vapors',
			withLel.length === known.length,
			() => mixtureLelPct(withLel)
		),
		dilutionM3PerH: number(
			'dilutionM3PerH',
			'outdoor air for all its vapors',
			isWhole && !known.some(({ sensitizer }) => sensitizer),
			(mixingFactor) =>
				additiveDilutionFlow(
					withLimit.map((part) => ({ ...part, mixingFactor })),
					draft.temperatureC
				).flowM3PerH
		)
	};
}
