import type { MeshPlace } from '$lib/core/geometry/mesh-body';
import { displayQuantity, type UnitSystem } from '$lib/core/quantity/display';

type Spot = Pick<MeshPlace, 'xMm' | 'yMm' | 'zMm'>;

/** Where a place is on the pattern as it lies: from its middle, seen from above with the length across. */
export function placeSpot({ xMm, yMm, zMm }: Spot, system: UnitSystem): string {
	const away = (mm: number, ahead: string, behind: string): string[] =>
		Math.abs(mm) < 0.5
			? []
			: [`${displayQuantity(Math.abs(mm), 'mm', system)} ${mm > 0 ? ahead : behind}`];
	const flat = [...away(xMm, 'right', 'left'), ...away(yMm, 'back', 'front')];
	const spot = flat.length > 0 ? `${flat.join(', ')} of the middle` : 'in the middle';
	return zMm < 0.5 ? `${spot}, at the board` : `${spot}, ${displayQuantity(zMm, 'mm', system)} up`;
}

/** What the places say of a pattern's detail: least width and greatest depth of grooves and pits. */
export function recessesOf(places: readonly MeshPlace[]): {
	narrowestRecessMm?: number;
	deepestRecessMm?: number;
} {
	const recesses = places.filter(({ kind }) => kind === 'groove' || kind === 'pit');
	if (recesses.length === 0) return {};
	const round = (mm: number): number => Math.max(0.1, Math.round(mm * 10) / 10);
	return {
		narrowestRecessMm: round(Math.min(...recesses.map(({ widthMm }) => widthMm))),
		deepestRecessMm: round(Math.max(...recesses.map(({ depthMm }) => depthMm)))
	};
}
