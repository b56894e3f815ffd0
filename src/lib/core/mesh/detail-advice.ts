import type { BridgedPlace } from './bridged-places';

type Recess = Pick<BridgedPlace, 'kind'>;

export interface DetailAdvice<Place extends Recess> {
	/** Thin, free-flowing coats to put under the build coats. */
	detailCoats: 0 | 1 | 2;
	/** Places that even the detail coat spans: brush them out twice. */
	brushTwice: Place[];
}

/** A line at the foot is filled before coating, and a fillet in an inner corner traps no air to speak of. */
export const trapsAir = ({ kind }: Recess): boolean => kind === 'groove' || kind === 'pit';

/**
 * How many detail coats a pattern needs: none when the first build coat wets every recess, one when a
 * detail coat does, two when that spans some as well. Common practice, no source.
 *
 * @param build - bridging at the reach of the first build coat
 * @param detail - bridging at the reach of a detail coat
 */
export function detailAdvice<Place extends Recess>(
	build: { places: readonly Place[] },
	detail: { places: readonly Place[] }
): DetailAdvice<Place> {
	if (!build.places.some(trapsAir)) return { detailCoats: 0, brushTwice: [] };
	const brushTwice = detail.places.filter(trapsAir);
	return { detailCoats: brushTwice.length === 0 ? 1 : 2, brushTwice };
}
