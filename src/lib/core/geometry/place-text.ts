import { places as english, type PlaceWords } from '../language/en/places';
import { displayQuantity, type UnitSystem } from '../quantity/display';
import type { MeshPlace } from './mesh-body';

/** More than this many in a sentence nobody reads. */
const MOST_NAMED = 6;

/** A numbered place as it is read at the bench: "groove, 2.1 mm wide, 6 mm deep". */
export function placeText(
	{ kind, widthMm, depthMm }: Pick<MeshPlace, 'kind' | 'widthMm' | 'depthMm'>,
	system: UnitSystem = 'SI',
	words: PlaceWords = english
): string {
	const length = (mm: number): string => displayQuantity(Number(mm.toPrecision(2)), 'mm', system);
	return words.place(words.kinds[kind], length(widthMm), length(depthMm));
}

/** Several places in one sentence, each with its number. */
export function placesText(places: readonly MeshPlace[]): string {
	const named = places
		.slice(0, MOST_NAMED)
		.map((place) => `${place.number} (${placeText(place)})`)
		.join(', ');
	const more = places.length - MOST_NAMED;
	return more > 0 ? `${named} and ${more} more` : named;
}
