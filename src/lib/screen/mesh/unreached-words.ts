import type { Brush, Unreached } from '$lib/core/geometry/brush';
import { displayQuantity, type UnitSystem } from '$lib/core/quantity/display';

type Place = Unreached['places'][number];

/** What can be done about a place that no brush reaches. */
export const UNREACHED_CURE =
	'Plug it flush before the release goes on, where the casting may do without it; or let thin material drip in until it stands full; or have it drawn wider.';

/** How much is left out of the exposed area, and by which brush. */
export function unreachedText(
	{ brush, areaCm2, places, unlistedPlaces }: Unreached,
	system: UnitSystem
): string {
	const count = places.length + unlistedPlaces;
	const stops = brushText(brush, system);
	return areaCm2 === 0
		? `${stops} reaches everything.`
		: `${displayQuantity(areaCm2, 'cm2', system)} in ${count} ${count === 1 ? 'place is' : 'places are'} left out of the exposed area: ${stops.charAt(0).toLowerCase()}${stops.slice(1)} does not reach there. The coats’ volumes count it as filled.`;
}

function brushText({ widthMm, reachMm }: Brush, system: UnitSystem): string {
	return `A brush ${displayQuantity(widthMm, 'mm', system)} wide, whose tips go ${displayQuantity(reachMm, 'mm', system)} beyond where it stops,`;
}

/** One such place: what it is and how deep. */
export function unreachedPlaceText(
	{ widthMm, depthMm }: Pick<Place, 'widthMm' | 'depthMm'>,
	brush: Brush,
	system: UnitSystem
): string {
	const length = (mm: number): string => displayQuantity(Number(mm.toPrecision(2)), 'mm', system);
	return widthMm > brush.widthMm
		? `hollow behind a neck narrower than the brush, ${length(depthMm)} from where it stops`
		: `hole or slot, ${length(widthMm)} wide, ${length(depthMm)} deep`;
}
