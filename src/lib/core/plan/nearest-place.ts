import type { MeshPlace } from '../geometry/mesh-body';

type Spot = Pick<MeshPlace, 'xMm' | 'yMm' | 'zMm'>;

/**
 * Where thinner material is caught, thicker is: the number of the place that holds a point.
 *
 * @param places - at least one
 */
export function nearestPlace(of: Spot, places: readonly MeshPlace[]): number {
	const first = places[0];
	if (!first) throw new RangeError('places: 0; accepted: 1 or more');
	const far = (p: MeshPlace): number =>
		Math.hypot(p.xMm - of.xMm, p.yMm - of.yMm, p.zMm - of.zMm) - p.lengthMm / 2;
	return places.reduce((best, place) => (far(place) < far(best) ? place : best), first).number;
}
