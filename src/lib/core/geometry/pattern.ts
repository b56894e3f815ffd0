import { z } from 'zod';
import { meshBodySchema } from './mesh-body';

/** A length a person can measure on a pattern: 0.1 mm to 10 m. */
const lengthMm = z.number().min(0.1).max(10_000);
const name = z.string().trim().min(1).max(120);

const standing = {
	id: z.string().regex(/^[a-z0-9-]{1,40}$/, 'small letters, digits and hyphens, up to 40'),
	name: name.max(60),
	/** What it stands on: "board", or the id of the solid below. */
	on: z.string().regex(/^[a-z0-9-]{1,40}$/, 'small letters, digits and hyphens, up to 40'),
	/** Side walls pressed against another solid: that area is hidden on both. */
	against: z
		.array(z.strictObject({ id: z.string(), areaCm2: z.number().positive().max(1e6) }))
		.max(12)
		.default([])
};

/** Solids a pattern is built of, each standing upright. Cone: a frustum with top diameter 0. */
export const solidSchema = z.discriminatedUnion('shape', [
	z.strictObject({
		shape: z.literal('box'),
		...standing,
		lengthMm,
		widthMm: lengthMm,
		heightMm: lengthMm
	}),
	z.strictObject({
		shape: z.literal('cylinder'),
		...standing,
		diameterMm: lengthMm,
		heightMm: lengthMm
	}),
	z.strictObject({
		shape: z.literal('frustum'),
		...standing,
		bottomDiameterMm: lengthMm,
		topDiameterMm: z.number().min(0).max(10_000),
		heightMm: lengthMm
	}),
	/** A spherical cap; a hemisphere when the height is half the diameter. */
	z.strictObject({
		shape: z.literal('dome'),
		...standing,
		diameterMm: lengthMm,
		heightMm: lengthMm
	}),
	/** A ramp: a right triangle of length × height, extruded over the width. */
	z.strictObject({
		shape: z.literal('wedge'),
		...standing,
		lengthMm,
		widthMm: lengthMm,
		heightMm: lengthMm
	}),
	z.strictObject({
		shape: z.literal('ring'),
		...standing,
		outerDiameterMm: lengthMm,
		innerDiameterMm: lengthMm,
		heightMm: lengthMm
	})
]);
export type Solid = z.infer<typeof solidSchema>;

export const bodySchema = z.discriminatedUnion('kind', [
	z.strictObject({ kind: z.literal('solids'), solids: z.array(solidSchema).min(1).max(60) }),
	z.strictObject({
		kind: z.literal('measured'),
		/** What the brush covers, without the face on the board. */
		exposedAreaCm2: z.number().positive().max(1e6),
		volumeMl: z.number().positive().max(1e7),
		lengthMm,
		widthMm: lengthMm,
		heightMm: lengthMm,
		/** Steepest wall, degrees from the board: 90 is vertical, more is undercut. */
		steepestWallDeg: z.number().min(0).max(150)
	}),
	meshBodySchema
]);
export type Body = z.infer<typeof bodySchema>;

export const PATTERN_MATERIALS = [
	'wood',
	'plaster',
	'foam',
	'sulfur clay',
	'sulfur-free clay',
	'photopolymer print',
	'filament print',
	'metal',
	'stone',
	'concrete',
	'cured epoxy',
	'cured urethane',
	'cured silicone',
	'wax'
] as const;

export const patternSchema = z.strictObject({
	name,
	body: bodySchema,
	material: z.enum(PATTERN_MATERIALS),
	porosity: z.enum(['dense', 'porous', 'porous, sealed']),
	detail: z.strictObject({
		/** Narrowest groove, joint or hole the mold must carry. */
		narrowestRecessMm: z.number().min(0.05).max(10_000).optional(),
		deepestRecessMm: z.number().min(0.05).max(10_000).optional(),
		/** Finest line, grain or lettering stroke. */
		finestLineMm: z.number().min(0.01).max(100).optional()
	}),
	/** Farthest any surface overhangs in the direction of opening; 0 when it only drafts. */
	undercutMm: z.number().min(0).max(1000).default(0),
	/** What the mold is for, in the shop's own words. */
	purpose: z.string().trim().max(500).default(''),
	partsWanted: z.number().int().min(1).max(100_000)
});
export type Pattern = z.infer<typeof patternSchema>;

/** What the plan needs to know of a pattern's shape. */
export interface Surface {
	exposedAreaCm2: number;
	volumeMl: number;
	/** Area standing on the board. */
	footprintCm2: number;
	lengthMm: number;
	widthMm: number;
	heightMm: number;
	steepestWallDeg: number;
	/** Length of edges above the board times their turning angle (radians), curved walls included: Steiner's t²/2 term. */
	edgeTurnMm: number;
	/** Sum of solid angles turned at corners, steradians; 2π for an upright convex body: Steiner's t³/3 term. */
	cornerTurnSr: number;
	/** Length of the line where pattern meets board. */
	footLengthMm: number;
	/** Board that shows inside the pattern, for example through a ring: it is coated as well. */
	enclosedBoardCm2: number;
	/** Section through the middle, from the left foot over the highest point to the right foot, for drawing. */
	profile: Array<{ xMm: number; yMm: number }>;
	/** Volumes out to true offset surfaces, where a mesh gave them; they stand in for the two turns. */
	offsets?: readonly { outerMm: number; volumeMl: number; errorMl: number }[];
}
