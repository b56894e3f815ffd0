import type { CureMoment } from '../laws/exotherm';

/** Points of a curve that is drawn; choice of the plan. */
const POINTS = 24;

/** So many points of a curve, its hottest among them, rounded for a drawing. */
export function thinned(curve: readonly CureMoment[]): CureMoment[] {
	const last = curve.length - 1;
	const hottest = curve.reduce(
		(best, { temperatureC }, i) => (temperatureC > (curve[best]?.temperatureC ?? 0) ? i : best),
		0
	);
	const kept = new Set([hottest, last]);
	for (let i = 0; i < POINTS - 1; i += 1) kept.add(Math.round((i * last) / (POINTS - 1)));
	return [...kept]
		.sort((a, b) => a - b)
		.flatMap((i) => {
			const moment = curve[i];
			if (!moment) return [];
			return {
				atS: Math.round(moment.atS),
				temperatureC: Math.round(moment.temperatureC * 10) / 10,
				conversion: Math.round(moment.conversion * 1000) / 1000
			};
		});
}
