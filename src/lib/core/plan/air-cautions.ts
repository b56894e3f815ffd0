import { strictestDustLimit, type DustId } from '../laws/dust-limits';
import type { Sheet } from '../materials/sheet';
import type { AirRoom } from './air-room';
import type { Plan } from './plan';
import { warn, type Draft } from './trace';

type AirSection = NonNullable<Plan['air']>;

/** Warns of every level above its limit, and of vapor that could burn. */
export function warnOfLevels(
	draft: Draft,
	steps: AirSection['steps'],
	flowFrom: AirSection['flowFrom']
): void {
	const flow = flowFrom === 'assumed' ? 'without a measured fan' : 'with the fan as measured';
	for (const { substance, materialName, phase, peakPpm, limit, lelFraction } of steps) {
		if (peakPpm !== null && limit && peakPpm > limit.ppm) {
			const text = `${substance} from ${materialName} can reach ${peakPpm.toPrecision(2)} ppm in the room ${flow}; ${limit.set} allows ${limit.ppm.toPrecision(3)} ppm (${limit.edition}). Extract at the work, and wear what the SDS asks for.`;
			warn(draft, 'warn', 'air-limit', phase, text);
		}
		if (lelFraction !== null && lelFraction >= 0.25) {
			const text = `${substance} from ${materialName} can reach ${Math.round(100 * lelFraction)} % of its lower explosive limit in the room ${flow}; a quarter is too much. No flame, no spark, and more air.`;
			warn(draft, 'warn', 'fire', phase, text);
		}
	}
}

/** What is known to be in the air and can't be computed. */
export function unknowns(used: readonly Sheet[], steps: AirSection['steps']): string[] {
	return used.flatMap(({ id, name, hazards }) => {
		const found = hazards.filter((hazard) =>
			['solvent', 'styrene', 'amine', 'peroxide'].includes(hazard)
		);
		const hasStep = steps.some(({ materialId }) => materialId === id);
		const open = found.filter((hazard) => hazard === 'amine' || hazard === 'peroxide' || !hasStep);
		return open.length > 0
			? [
					`${name}: ${open.join(', ')} in the air; nobody can compute how much from its data sheet. The SDS says what to do.`
				]
			: [];
	});
}

/** Limits for the dust of trimming and sanding; no flow is computed for dust. */
export function dustOf({ limitSets }: AirRoom, used: readonly Sheet[]): AirSection['dust'] {
	const dusts: [string, DustId][] = [['trim', 'other dust']];
	if (used.some(({ family }) => family === 'plaster')) dusts.push(['pour', 'plaster']);
	if (used.some(({ hazards }) => hazards.includes('silica-dust'))) {
		dusts.push(['pour', 'crystalline silica']);
	}
	return dusts.flatMap(([phase, dust]) =>
		(['respirable', 'inhalable'] as const).flatMap((fraction) => {
			const limit = strictestDustLimit({ dust, fraction, sets: limitSets });
			return limit
				? { phase, dust, fraction, mgPerM3: limit.mgPerM3, set: limit.set, edition: limit.source }
				: [];
		})
	);
}
