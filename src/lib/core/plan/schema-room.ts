import { z } from 'zod';

const s = z.number().nonnegative();

/** Air and surface of the room; null where an input lies outside a law, with a warning that says which. */
export const roomSectionSchema = z.strictObject({
	dewPointC: z.number(),
	/** Lowest temperature of the pattern that keeps 3 K above the dew point. */
	lowestSurfaceC: z.number(),
	surfaceC: z.number(),
	surfaceMarginK: z.number(),
	isSurfaceFit: z.boolean(),
	absoluteHumidityGPerM3: z.number().nonnegative(),
	/** Of the air for a moisture-sensitive material. */
	moisture: z.enum(['fit', 'caution', 'stop']),
	isMoistureSensitive: z.boolean(),
	evaporationGPerM2H: z.number().nonnegative(),
	/** Each pass of the parting film; null without film, or when the air is too damp to dry it. */
	filmDrying: z.strictObject({ lowS: s, highS: s }).nullable()
});

const curvePointSchema = z.strictObject({
	atS: s,
	temperatureC: z.number(),
	conversion: z.number().min(0).max(1)
});

/** One material that heats itself: a cup of it against the coat, from mixing on. */
const cureMaterialSchema = z.strictObject({
	materialId: z.string(),
	materialName: z.string(),
	cup: z.strictObject({
		massG: z.number().positive(),
		workableS: s,
		peakC: z.number(),
		peakAtS: s,
		curve: z.array(curvePointSchema)
	}),
	film: z.strictObject({
		thicknessMm: z.number().positive(),
		peakC: z.number(),
		curve: z.array(curvePointSchema)
	}),
	/** Heaviest cup that, forgotten, stays at or below `calmPeakC`; null when even a lump of a gram passes it. */
	largestCalmG: z.number().positive().nullable(),
	/** Heaviest cup that stays below what only a supervisor lets pass, when the planned one does not. */
	smallerCupG: z.number().positive().optional(),
	/** How thick what is left may be spread to stay at or below it, when no lump does. */
	calmSpreadMm: z.number().positive().optional(),
	calmPeakC: z.number()
});

/** The first part in the mold, and a batch of it left in its bucket. */
const castingHeatSchema = z.strictObject({
	materialId: z.string(),
	materialName: z.string(),
	batchG: z.number().positive(),
	batchPeakC: z.number(),
	/** Volume of the part over the area of the mold that it lies against. */
	thicknessMm: z.number().positive(),
	peakC: z.number(),
	calmPeakC: z.number()
});

export const cureSectionSchema = z.strictObject({
	materials: z.array(cureMaterialSchema),
	/** Absent without a pot life or a heat of reaction, beyond a law, and from plans of before. */
	casting: castingHeatSchema.optional(),
	/** Present when the shop says how cold its nights are. */
	night: z
		.strictObject({
			temperatureC: z.number(),
			gloveS: s.nullable(),
			shellS: s.nullable(),
			/** How far the glove is cured when a room as warm as by day would have cured it. */
			gloveShareFraction: z.number().min(0).max(1).nullable()
		})
		.nullable(),
	caution: z.string()
});

/** What holds, sags and drains on the walls of this pattern. */
export const wallsSectionSchema = z.strictObject({
	slopeDeg: z.number(),
	/** Null when the data sheet gives no yield stress. */
	holdingLimitMm: z.number().nullable(),
	thickestCoatMm: z.number(),
	neededYieldStressPa: z.number().nonnegative(),
	/** Of the thickest coat; 0 when it stays up, null when the sheet can't tell. */
	sagSpeedMmPerS: z.number().nonnegative().nullable(),
	/** Build coats that all hold, when the planned ones do not. */
	holdingCoatsMm: z.array(z.number()).nullable(),
	/** A detail coat until it is brushed back; null without one, or without its viscosity. */
	detail: z
		.strictObject({
			laidMm: z.number(),
			drainedMm: z.number(),
			meanMm: z.number(),
			/** Null when the pattern gives no recess. */
			puddleMm: z.number().nullable()
		})
		.nullable()
});
