import { z } from 'zod';
import { meshPlaceSchema } from '../geometry/mesh-body';

const n = z.number().nonnegative();

/** What the first build coat would bridge on the pattern's mesh, and where to brush twice. */
export const bridgingSectionSchema = z.strictObject({
	buildReachMm: n,
	/** The reach that the places were computed for: the same or the next greater one. */
	lookedReachMm: n,
	/** Null without a material for detail coats. */
	detailReachMm: n.nullable(),
	areaCm2: n,
	places: z.array(meshPlaceSchema),
	unlistedPlaces: z.number().int().nonnegative(),
	/** Numbers of those places that a detail coat spans as well. */
	brushTwice: z.array(z.number().int())
});

/** How glove and shell of this plan come off the pattern, as far as its mesh tells. */
export const handlingSectionSchema = z.strictObject({
	/** Whether a shell in one piece leaves over this glove. */
	shell: z.enum(['leaves', 'locks', 'not computed']),
	/** Pieces of the proposed shell when one locks; null when no parting was found. */
	pieces: z.number().int().nullable(),
	lockedCm2: n,
	freeingGloveMm: n.nullable(),
	/** Of the glove that comes off in one pull, and of the material at break; null when its sheet does not say. */
	stretchFraction: n,
	elongationFraction: n.nullable(),
	/** Area from which the thickest build coat runs off; null when its sheet can't tell. */
	runsOffCm2: n.nullable()
});
