import { group } from 'd3-array';
import type { Plan } from '$lib/core/plan/plan';
import { displayQuantity } from '$lib/core/quantity/display';
import { durationText } from '$lib/core/quantity/duration-text';
import type { PlotLevel, TimePlotData } from '../plot/plot-data';
import { LIMIT_KINDS } from './limit-kinds';

export type AirStep = NonNullable<Plan['air']>['steps'][number];
type Limit = AirStep['limits'][number];

/** Limits up to this many times the highest point are drawn; the rest would flatten the curve. */
const ROOM_ABOVE = 1.25;
const ppm = (value: number) => displayQuantity(value, 'ppm', 'SI');

/** "NIOSH REL 59.4 ppm (eight-hour average)". */
export const limitWords = ({ set, ppm: value, kind }: Limit): string =>
	`${set} ${ppm(value)} (${LIMIT_KINDS[kind]})`;

/** Which limits lie inside the plot, one line for each value, and which above it. */
export function limitsAround({ curve, limit, limits }: AirStep): {
	levels: PlotLevel[];
	inside: Limit[];
	above: Limit[];
} {
	const highest = ROOM_ABOVE * Math.max(limit?.ppm ?? 0, ...curve.map((point) => point.ppm));
	const inside = limits.filter((each) => each.ppm <= highest);
	const levels = [...group(inside, ({ ppm: value }) => value.toPrecision(2)).values()].map(
		(same): PlotLevel => {
			const [first] = same;
			const isStrictest = same.some((each) => each.ppm === limit?.ppm);
			return {
				label: (first?.set ?? '') + (same.length > 1 ? ` +${same.length - 1}` : ''),
				value: first?.ppm ?? 0,
				stroke: isStrictest ? 'dashed' : 'dotted'
			};
		}
	);
	return {
		levels: uniquelyNamed(levels),
		inside,
		above: limits.filter((each) => each.ppm > highest)
	};
}

/** One list may name an average and a short-time limit: the second says so by its value. */
function uniquelyNamed(levels: PlotLevel[]): PlotLevel[] {
	return levels.map((level, i) =>
		levels.findIndex(({ label }) => label === level.label) === i
			? level
			: { ...level, label: `${level.label}, ${Number(level.value.toPrecision(2))}` }
	);
}

/** Level of one vapor in the room while the work goes on and after it; null without a curve. */
export function airPlot(step: AirStep): TimePlotData | null {
	const { curve, overS, times, clearWaitS } = step;
	const workS = overS * times;
	const untilS = curve.at(-1)?.atS ?? 0;
	if (untilS <= 0) return null;
	const points = curve.map(({ atS, ppm: y }) => ({ x: atS, y }));
	const after = points.filter(({ x }) => x >= workS);
	return {
		series: [
			{
				label: 'level',
				stroke: 'solid',
				pieces: [points.filter(({ x }) => x <= workS), ...(after.length > 1 ? [after] : [])]
			}
		],
		levels: limitsAround(step).levels,
		spans: [
			{ label: `work ${durationText(workS)}`, fromS: 0, toS: workS },
			...(clearWaitS
				? [{ label: `wait ${durationText(clearWaitS)}`, fromS: workS, toS: workS + clearWaitS }]
				: [])
		],
		untilS,
		unit: 'ppm',
		isFromZero: true,
		summary: airSummary(step, workS),
		table: {
			head: ['After', 'In the room', 'Share of the limit'],
			rows: curve.map(({ atS, ppm: value }) => [
				durationText(atS),
				ppm(value),
				step.limit ? displayQuantity(value / step.limit.ppm, 'fraction', 'SI') : 'no limit listed'
			])
		}
	};
}

function airSummary(step: AirStep, workS: number): string {
	const { substance, peakPpm, limit, clearWaitS, isSensitizer } = step;
	const rises = `rises to ${ppm(peakPpm ?? 0)} after ${durationText(workS)} of work`;
	const level = `${substance} ${rises}`;
	const against = limit
		? `, ${(peakPpm ?? 0) > limit.ppm ? 'above' : 'below'} the strictest limit chosen, ${limitWords(limit)}`
		: ', and no chosen list has a limit for it';
	// First of all, because a curve below a line looks like leave to breathe.
	if (isSensitizer)
		return `No level of ${substance} is known to be safe, because it sensitizes; here it ${rises}${against}.`;
	if (clearWaitS === null) return `${level}${against}.`;
	if (clearWaitS === 0) return `${level}${against}, and under a tenth of it from the start.`;
	return `${level}${against}; a tenth of that limit is reached ${durationText(clearWaitS)} later.`;
}
