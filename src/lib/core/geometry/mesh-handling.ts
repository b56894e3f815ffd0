import { z } from 'zod';

const placeMm = z.number().min(-10_000).max(10_000);
const lengthMm = z.number().min(0).max(20_000);
const areaCm2 = z.number().min(0).max(1e6);
const part = z.number().min(-1).max(1);
const spot = { xMm: placeMm, yMm: placeMm, zMm: placeMm };
const spotSchema = z.strictObject(spot);

/** A shell that has to be parted: where, into how many pieces, and what still locks then. */
const partedSchema = z.strictObject({
	pieces: z.union([z.literal(2), z.literal(3)]),
	/** Unit normal of the parting plane and its distance from the middle of the board. */
	normal: z.tuple([part, part, part]),
	offsetMm: placeMm,
	lockedCm2: areaCm2,
	/** Where the third piece goes and in which direction it leaves; patterns of before say only that there is one. */
	third: z.strictObject({ direction: z.tuple([part, part, part]), ...spot, areaCm2 }).optional()
});

const openingSchema = z.strictObject({
	isFree: z.boolean(),
	/** In which the shell leaves most freely; straight up is 0, 0, 1. */
	direction: z.tuple([part, part, part]),
	lockedCm2: areaCm2,
	lockedFraction: z.number().min(0).max(1),
	/** Null when nothing is locked, or no parting was found. */
	parted: partedSchema.nullable(),
	/** Least glove over which one piece leaves; null when up to four times as thick none does. */
	freeingGloveMm: z.number().positive().max(200).nullable()
});

/** How glove and shell of one thickness come off a pattern, and what runs together on it. */
export const meshHandlingSchema = z.strictObject({
	/** The glove that shell and keys were computed with. */
	gloveMm: z.number().positive().max(50),
	center: spotSchema,
	undercut: z.strictObject({ depthMm: lengthMm, areaCm2, at: spotSchema.nullable() }),
	/** Greatest elongation of a ring of the glove that comes off in one pull, 1 for twice as long. */
	stretch: z.strictObject({ fraction: z.number().min(0).max(1000), zMm: placeMm }),
	/** Where to start peeling; null when the pattern meets no board. */
	peelAt: spotSchema.nullable(),
	opening: openingSchema,
	keying: z.strictObject({
		/** Null where nothing stops it. */
		slideMm: lengthMm.nullable(),
		turnDeg: z.number().min(0).max(1e4).nullable(),
		isKeyed: z.boolean(),
		keysAt: z.array(spotSchema).max(6)
	}),
	puddles: z
		.array(
			z.strictObject({
				number: z.number().int().min(1).max(20),
				...spot,
				depthMm: lengthMm,
				areaCm2,
				volumeMl: z.number().min(0).max(1e7)
			})
		)
		.max(20),
	unlistedPuddles: z.number().int().min(0).max(1000),
	/** Area by slope: 0 to 5°, 5 to 10° … 175 to 180° from facing up. */
	slopeAreasCm2: z.array(areaCm2).length(36)
});
export type MeshHandling = z.infer<typeof meshHandlingSchema>;
