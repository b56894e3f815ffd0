import type { BridgedPlace, Bridging } from './bridging';

export interface DetailAdvice {
	/** Thin, free-flowing coats to put under the build coats. */
	detailCoats: 0 | 1 | 2;
	/** Places that even the detail coat spans: brush them out twice. */
	brushTwice: BridgedPlace[];
}

/** A line at the foot is filled before coating, and a fillet in an inner corner traps no air to speak of. */
const matters = ({ kind }: BridgedPlace): boolean => kind === 'groove' || kind === 'pit';

/**
 * How many detail coats a pattern needs: none when the first build coat wets every recess, one when a
 * detail coat does, two when that spans some as well. Common practice, no source.
 *
 * @param build - bridging at the reach of the first build coat
 * @param detail - bridging at the reach of a detail coat
 */
export function detailAdvice(build: Bridging, detail: Bridging): DetailAdvice {
	if (!build.places.some(matters)) return { detailCoats: 0, brushTwice: [] };
	const brushTwice = detail.places.filter(matters);
	return { detailCoats: brushTwice.length === 0 ? 1 : 2, brushTwice };
}
