import { saturatedVapor, saturationLaw } from '../laws/evaporation';
import type { LimitKind } from '../laws/exposure-limits';
import { SUBSTANCES } from '../laws/substances';
import { substancePressurePa, type AirRelease } from './air-releases';
import { flowsFor } from './air-flows';
import { levelsIn } from './air-levels';
import { limitOf, traceLimit } from './air-limits';
import type { AirRoom } from './air-room';
import type { Plan } from './plan';
import { constant, computed, entered, inherited, traced, type Draft } from './trace';
import { withinLaw } from './within-law';

type AirStep = NonNullable<Plan['air']>['steps'][number];

const KINDS: readonly LimitKind[] = ['average', 'short', 'ceiling'];

/** Everything that can be said of one substance in one kind of work. */
export function airStep(draft: Draft, room: AirRoom, release: AirRelease, path: string): AirStep {
	const { use, substanceId, releaseGPerMin } = release;
	const { temperatureC } = draft;
	const substance = SUBSTANCES[substanceId];
	const hazard = { sensitizer: substance.sensitizer };
	const molarMassGPerMol = substance.molarMassGPerMol.value;
	const what = `${substance.name} from ${use.sheet.name}`;
	const limit =
		KINDS.map((kind) => limitOf(substanceId, room.limitSets, kind)).find(Boolean) ?? null;
	const limits = room.limitSets.flatMap((set) =>
		KINDS.flatMap((kind) => limitOf(substanceId, [set], kind) ?? [])
	);
	const rate = computed('ṁ', 'release', releaseGPerMin, 'g/min', `${path}.releaseGPerMin`);
	const molar = constant(
		'M',
		`molar mass, g/mol (${substance.molarMassGPerMol.source})`,
		molarMassGPerMol,
		'count'
	);
	const warm = entered('T', 'room temperature', temperatureC, 'C');
	traced(draft, `${path}.releaseGPerMin`, {
		label: `${what}: release`,
		value: releaseGPerMin,
		unit: 'g/min',
		law: release.law,
		inputs: release.inputs,
		...inherited(draft, release.inputs, release.of)
	});
	const limitInput =
		limit && computed('L', `${limit.set}, ${limit.edition}`, limit.ppm, 'ppm', `${path}.limit.ppm`);
	if (limit) traceLimit(draft, `${path}.limit.ppm`, substance.name, limit, limits);
	const pressurePa = substancePressurePa(substanceId, temperatureC);
	const ceilingPpm =
		pressurePa === null
			? null
			: withinLaw(draft, 'air', `Saturated vapor, ${what}`, () =>
					traced(draft, `${path}.ceilingPpm`, {
						label: `${substance.name}: the most that the air can hold`,
						value: saturatedVapor({
							vaporPressurePa: pressurePa,
							molarMassGPerMol,
							temperatureC,
							...hazard
						}).ppm,
						unit: 'ppm',
						law: saturationLaw,
						inputs: [constant('P', 'vapor pressure', pressurePa, 'Pa'), warm]
					})
				);
	const flows = flowsFor(
		draft,
		room,
		release,
		limit,
		limitInput ? [rate, molar, warm, limitInput] : [rate, molar, warm],
		path
	);
	const levels = levelsIn(draft, room, release, limit, ceilingPpm, path);
	return {
		phase: use.phase,
		title: use.title,
		materialId: use.sheet.id,
		materialName: use.sheet.name,
		substanceId,
		substance: substance.name,
		isSensitizer: substance.sensitizer,
		isAssumed: release.isAssumed,
		releaseGPerMin,
		overS: use.overS,
		times: use.times,
		ceilingPpm,
		limit,
		limits,
		...flows,
		...levels
	};
}
