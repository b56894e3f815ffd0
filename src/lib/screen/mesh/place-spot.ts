import type { MeshPlace } from '$lib/core/geometry/mesh-body';
import { places as english, type PlaceWords } from '$lib/core/language/en/places';
import { displayQuantity, type UnitSystem } from '$lib/core/quantity/display';

type Spot = Pick<MeshPlace, 'xMm' | 'yMm' | 'zMm'>;

/** Where a place is on the pattern as it lies: from its middle, seen from above with the length across. */
export function placeSpot(
	{ xMm, yMm, zMm }: Spot,
	system: UnitSystem,
	words: PlaceWords = english
): string {
	type Way = (by: string) => string;
	const away = (mm: number, ahead: Way, behind: Way): string[] =>
		Math.abs(mm) < 0.5
			? []
			: [(mm > 0 ? ahead : behind)(displayQuantity(Math.abs(mm), 'mm', system))];
	const flat = [...away(xMm, words.right, words.left), ...away(yMm, words.back, words.front)];
	const spot = flat.length > 0 ? words.ofMiddle(flat.join(', ')) : words.inMiddle;
	return zMm < 0.5 ? words.atBoard(spot) : words.up(spot, displayQuantity(zMm, 'mm', system));
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
