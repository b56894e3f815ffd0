import { HAZARDS } from '../content/vocabulary';
import { strictestDustLimit, type DustId } from '../laws/dust-limits';
import { SUBSTANCES } from '../laws/substances';
import type { Sheet } from '../materials/sheet';
import { takenHazards } from '../materials/usual-hazards';
import { numberText } from '../quantity/display';
import type { AirRoom } from './air-room';
import type { Plan } from './plan';
import { highEnd, warn, type Draft } from './trace';

type AirSection = NonNullable<Plan['air']>;

/** Part of the lower explosive limit that no room may come to; common practice, no source. */
const MOST_LEL = 0.25;

/**
 * Warns of every level above its limit, and of vapor that could burn: by the upper end of what is
 * likely, in the room when the work ends and over the worst eight hours of the calendar. What is likely to burn or
 * to overcome somebody is for a supervisor to decide.
 */
export function warnOfLevels(
	draft: Draft,
	steps: AirSection['steps'],
	shifts: NonNullable<AirSection['shifts']>,
	flowFrom: AirSection['flowFrom']
): void {
	const flow = flowFrom === 'assumed' ? 'without a measured fan' : 'with the fan as measured';
	for (const [i, step] of steps.entries()) {
		const { substance, substanceId, materialName, phase, title, peakPpm, limit, lelFraction } =
			step;
		const of = `${substance} from ${materialName} (${title})`;
		const shift = shifts.find((each) => each.substanceId === substanceId);
		const shiftPath = `air.shifts.${shift ? shifts.indexOf(shift) : -1}.averagePpm`;
		const averagePpm = shift ? highEnd(draft, shiftPath, shift.averagePpm) : 0;
		const peakHighPpm = highEnd(draft, `air.steps.${i}.peakPpm`, peakPpm ?? 0);
		const isAbove = limit && peakHighPpm > limit.ppm;
		const isAboveOverShift = shift?.limit && averagePpm > shift.limit.ppm;
		const named = limit ?? shift?.limit;
		if (peakPpm !== null && named && (isAbove || isAboveOverShift)) {
			const over = shift
				? ` and, over the worst eight hours of the calendar, ${reaching(averagePpm, shift.averagePpm, 'ppm')} on average`
				: '';
			const text = `${of} can reach ${reaching(peakHighPpm, peakPpm, 'ppm')} in the room when the work ends${over}, ${flow}; ${named.set} allows ${numberText(Number(named.ppm.toPrecision(3)))} ppm (${named.edition}). Extract at the work, and wear what the SDS asks for.`;
			warn(draft, 'warn', 'air-limit', phase, text);
		}
		const idlh = substanceId ? SUBSTANCES[substanceId].idlhPpm : undefined;
		if (peakPpm !== null && idlh && peakHighPpm > idlh.value) {
			const text = `${of} can reach ${reaching(peakHighPpm, peakPpm, 'ppm')} in the room when the work ends, ${flow}. From ${numberText(idlh.value, 0)} ppm on the air is immediately dangerous to life or health (${idlh.source}), and a filter respirator is no way to work there. Measure the extraction, mix and lay less at a time, or take another material.`;
			warn(draft, peakPpm > idlh.value ? 'decide' : 'warn', 'air-danger', phase, text);
		}
		const lelHigh = highEnd(draft, `air.steps.${i}.lelFraction`, lelFraction ?? 0);
		if (lelFraction !== null && lelHigh >= MOST_LEL) {
			const text = `${of} comes to ${reaching(100 * lelHigh, 100 * lelFraction, '%')} of its lower explosive limit in the room ${flow} if the work goes on; a quarter is too much. No flame, no spark, and more air.`;
			warn(draft, lelFraction >= MOST_LEL ? 'decide' : 'warn', 'fire', phase, text);
		}
	}
}

/** "530 ppm (likely 300)": what decides first. */
function reaching(high: number, likely: number, unit: string): string {
	const [most, usual] = [high, likely].map((value) => numberText(Number(value.toPrecision(2)), 2));
	return most === usual ? `${most} ${unit}` : `${most} ${unit} (likely ${usual})`;
}

/** Hazards that come through the air as vapor. */
const VAPORS = ['solvent', 'styrene', 'amine', 'peroxide'] as const;

/** What is known to be in the air and can't be computed. */
export function unknowns(used: readonly Sheet[], steps: AirSection['steps']): string[] {
	return used.flatMap((sheet) => {
		const { id, name } = sheet;
		const taken = takenHazards(sheet);
		const found = VAPORS.filter((hazard) => taken.includes(hazard));
		const hasStep = steps.some(({ materialId }) => materialId === id);
		const open = found.filter((hazard) => hazard === 'amine' || hazard === 'peroxide' || !hasStep);
		return open.length > 0
			? [
					`${name}: ${open.map((hazard) => HAZARDS[hazard].label.toLowerCase()).join(', ')} in the air; nobody can compute how much from its data sheet. The SDS says what to do.`
				]
			: [];
	});
}

/** Limits for the dust of trimming and sanding; no flow is computed for dust. */
export function dustOf({ limitSets }: AirRoom, used: readonly Sheet[]): AirSection['dust'] {
	const dusts: [string, DustId][] = [['trim', 'other dust']];
	if (used.some(({ family }) => family === 'plaster')) dusts.push(['pour', 'plaster']);
	if (used.some((sheet) => takenHazards(sheet).includes('silica-dust'))) {
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
