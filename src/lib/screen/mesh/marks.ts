import type { MeshPlace } from '$lib/core/geometry/mesh-body';
import type { MeshHandling } from '$lib/core/geometry/mesh-handling';

/** A point on the pattern as section and model show it: a short sign in a disc. */
export interface Mark {
	sign: string;
	what: 'place' | 'undercut' | 'peel' | 'key' | 'third' | 'puddle' | 'center';
	xMm: number;
	yMm: number;
	zMm: number;
}

/** What the signs mean, in the order of the legend. */
export const MARK_WORDS: Record<Mark['what'], string> = {
	place: '1, 2 … bridged places, as listed',
	undercut: 'U deepest undercut',
	peel: 'P start peeling here',
	key: 'K keys in the flange',
	third: 'T third piece of the shell',
	puddle: 'a, b … thin material stands here',
	center: 'M center of mass'
};

/** More would hide the pattern. */
const MOST_PLACES = 20;
const MOST_PUDDLES = 12;

/** All that is to be marked on a pattern. */
export function marksOf(places: readonly MeshPlace[], handling: MeshHandling | null): Mark[] {
	const marks: Mark[] = places
		// Every inner corner rounds off a little; their signs would hide what matters.
		.filter(({ kind }) => kind !== 'inner corner')
		.slice(0, MOST_PLACES)
		.map(({ number, xMm, yMm, zMm }) => ({ sign: `${number}`, what: 'place', xMm, yMm, zMm }));
	if (!handling) return marks;
	const { undercut, peelAt, keying, puddles, center } = handling;
	if (undercut.at) marks.push({ sign: 'U', what: 'undercut', ...undercut.at });
	if (peelAt) marks.push({ sign: 'P', what: 'peel', ...peelAt });
	for (const spot of keying.keysAt) marks.push({ sign: 'K', what: 'key', ...spot });
	const { parted } = handling.opening;
	if (parted?.third) marks.push({ sign: 'T', what: 'third', ...spotOf(parted.third) });
	for (const { number, xMm, yMm, zMm } of puddles.slice(0, MOST_PUDDLES)) {
		marks.push({ sign: puddleSign(number), what: 'puddle', xMm, yMm, zMm });
	}
	marks.push({ sign: 'M', what: 'center', ...center });
	return marks;
}

/** The point alone, without what else is said of it. */
function spotOf({ xMm, yMm, zMm }: Pick<Mark, 'xMm' | 'yMm' | 'zMm'>) {
	return { xMm, yMm, zMm };
}

/** Puddles go by letters, so that nobody takes one for a bridged place. */
export function puddleSign(number: number): string {
	return String.fromCharCode(96 + Math.min(26, number));
}
