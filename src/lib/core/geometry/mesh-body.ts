import { z } from 'zod';
import { unreachedSchema } from './brush';
import { meshHandlingSchema } from './mesh-handling';
import type { Surface } from './pattern';

const lengthMm = z.number().min(0.1).max(10_000);
const text = z.string().trim().min(1);
const placeMm = z.number().min(-10_000).max(10_000);

/** Coat thickness, and what a coat out to there takes over the board. */
const offsetSchema = z.strictObject({
	outerMm: z.number().positive().max(100),
	volumeMl: z.number().positive().max(1e7),
	/** By the computation alone. */
	errorMl: z.number().min(0).max(1e7)
});

/** Where a first coat spans a recess instead of wetting it. */
export const meshPlaceSchema = z.strictObject({
	number: z.number().int().min(1).max(60),
	kind: z.enum(['foot', 'groove', 'pit', 'inner corner']),
	xMm: placeMm,
	yMm: placeMm,
	zMm: placeMm,
	depthMm: z.number().min(0).max(10_000),
	widthMm: z.number().min(0).max(10_000),
	lengthMm: z.number().min(0).max(20_000),
	areaCm2: z.number().min(0).max(1e6),
	airMl: z.number().min(0).max(1e7)
});
export type MeshPlace = z.infer<typeof meshPlaceSchema>;

/** What coats of one reach bridge. */
const bridgingSchema = z.strictObject({
	/** Radius by which such a coat rounds off what it should wet. */
	reachMm: z.number().positive().max(100),
	areaCm2: z.number().min(0).max(1e6),
	places: z.array(meshPlaceSchema).max(60),
	unlistedPlaces: z.number().int().min(0)
});
export type MeshBridging = z.infer<typeof bridgingSchema>;

/** A pattern measured on its mesh as it lies on the board; the file is kept under its hash. */
export const meshBodySchema = z.strictObject({
	kind: z.literal('mesh'),
	file: z.strictObject({
		sha256: z.string().regex(/^[0-9a-f]{64}$/, 'a SHA-256 of 64 hexadecimal digits'),
		name: text.max(200),
		format: z.enum(['stl', 'obj', 'ply', '3mf']),
		bytes: z.number().int().positive().max(1e9)
	}),
	triangles: z.number().int().min(4).max(20_000_000),
	/** Millimeters in the file's unit. */
	unitMm: z.number().positive().max(100_000),
	/** Enlargement against shrinkage. */
	scale: z.number().min(0.01).max(100),
	/** Outward normal of the face that lies down, in the file's axes. */
	down: z.tuple([z.number().min(-1).max(1), z.number().min(-1).max(1), z.number().min(-1).max(1)]),
	turnDeg: z.number().min(-360).max(360),
	/** What repair was done and what is left, in words. */
	health: z.array(text.max(300)).max(30),
	exposedAreaCm2: z.number().positive().max(1e6),
	volumeMl: z.number().positive().max(1e7),
	footprintCm2: z.number().min(0).max(1e6),
	footLengthMm: z.number().min(0).max(1e6),
	/** Board seen through the pattern's own holes. */
	enclosedBoardCm2: z.number().min(0).max(1e6),
	lengthMm,
	widthMm: lengthMm,
	heightMm: lengthMm,
	steepestWallDeg: z.number().min(0).max(180),
	offsets: z.array(offsetSchema).min(3).max(40),
	/** Left foot over the top to the right foot, through the middle of the pattern. */
	profile: z
		.array(z.strictObject({ xMm: placeMm, yMm: z.number().min(0).max(10_000) }))
		.min(3)
		.max(800),
	/** Reach of the coat that the places were looked for with; 0 when none were. */
	bridgeReachMm: z.number().min(0).max(100),
	places: z.array(meshPlaceSchema).max(60),
	/** The same for coats of several reaches, that one among them; older patterns have none. */
	bridgings: z.array(bridgingSchema).max(8).optional(),
	/** Older patterns have none. */
	handling: meshHandlingSchema.optional(),
	/** What the narrowest brush leaves out, no part of the exposed area; older patterns have none. */
	unreached: unreachedSchema.optional()
});
export type MeshBody = z.infer<typeof meshBodySchema>;

/** Surface of a pattern measured on its mesh. */
export function meshSurface(body: MeshBody): Surface {
	const { exposedAreaCm2, offsets } = body;
	const first = offsets[0];
	if (!first) throw new RangeError('offsets: 0 rows; accepted: 3 or more');
	return {
		exposedAreaCm2,
		volumeMl: body.volumeMl,
		footprintCm2: body.footprintCm2,
		lengthMm: body.lengthMm,
		widthMm: body.widthMm,
		heightMm: body.heightMm,
		steepestWallDeg: body.steepestWallDeg,
		// What the edges add to the thinnest computed coat; the corners' part of it is in there too.
		edgeTurnMm:
			(2 * (first.volumeMl * 1000 - exposedAreaCm2 * 100 * first.outerMm)) / first.outerMm ** 2,
		cornerTurnSr: 0,
		footLengthMm: body.footLengthMm,
		enclosedBoardCm2: body.enclosedBoardCm2,
		profile: body.profile,
		offsets
	};
}

/** What no mesh on a board can be, by field. */
export function meshBodyProblems(body: MeshBody): { field: string; message: string }[] {
	const boxMl = (body.lengthMm * body.widthMm * body.heightMm) / 1000;
	const found: { field: string; message: string }[] = [];
	if (body.volumeMl > boxMl * 1.000001) {
		found.push({
			field: 'volumeMl',
			message: `The volume, ${body.volumeMl} mL, is more than the box around the pattern holds: ${boxMl.toPrecision(4)} mL at most.`
		});
	}
	if (body.footprintCm2 > ((body.lengthMm * body.widthMm) / 100) * 1.000001) {
		found.push({
			field: 'footprintCm2',
			message: `The footprint, ${body.footprintCm2} cm², is more than length times width.`
		});
	}
	const isRising = body.offsets.every(({ outerMm, volumeMl }, i) => {
		const below = body.offsets[i - 1] ?? { outerMm: 0, volumeMl: 0 };
		return outerMm > below.outerMm && volumeMl > below.volumeMl;
	});
	if (!isRising) {
		found.push({
			field: 'offsets',
			message: 'The coat volumes must rise with the thickness, row by row.'
		});
	}
	return found;
}
