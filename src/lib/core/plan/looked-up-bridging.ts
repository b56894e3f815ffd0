import type { MeshBridging } from '../geometry/mesh-body';

/** Reaches this near are the same: less is rounding. */
const SAME_MM = 1e-3;

/**
 * What a mesh pattern keeps of coats with this reach: computed for the next greater one, which bridges no
 * less. Where all that is kept is for thinner coats, the greatest of them, and `isEnough` is false.
 *
 * @throws RangeError when nothing is kept
 */
export function lookedUpBridging(
	bridgings: readonly MeshBridging[],
	reachMm: number
): MeshBridging & { isEnough: boolean } {
	const all = bridgings.toSorted((a, b) => a.reachMm - b.reachMm);
	const enough = all.find((one) => one.reachMm >= reachMm - SAME_MM);
	const found = enough ?? all.at(-1);
	if (!found) throw new RangeError('bridgings: 0 reaches; accepted: 1 or more');
	return { ...found, isEnough: enough !== undefined };
}
