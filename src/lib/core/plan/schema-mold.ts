import { z } from 'zod';

const n = z.number().nonnegative();
const mm = z.number();

const liftSchema = z.strictObject({
	what: z.string(),
	massG: n,
	/** Height of the center of mass above what the mold stands on. */
	centerMm: mm,
	/** How far it may lean before it goes over; null outside the law. */
	tippingDeg: n.nullable(),
	way: z.enum(['one person', 'two people', 'three people', 'hoist or pallet truck']),
	index: n.nullable(),
	limitG: n.nullable(),
	reason: z.string()
});

export const liftingSectionSchema = z.strictObject({
	recommendedG: n,
	forbidden: z.array(z.string()),
	horizontalMm: mm,
	lifts: z.array(liftSchema).min(1),
	caution: z.string()
});

const bendingSchema = z.strictObject({ deflectionMm: n, stressPa: n });

export const forcesSectionSchema = z.strictObject({
	/** Longest frame board under wet shell up to its top; null outside the law. */
	frameBoard: bendingSchema.extend({ spanMm: mm }).nullable(),
	/** Flattest wall of the shell under the full head, at the planned thickness. */
	shellWall: bendingSchema.nullable(),
	/** Round closed wall, when the pattern is round. */
	roundWall: z.strictObject({ growthMm: n, stressPa: n, radiusMm: mm }).nullable(),
	/** The mold board laid back on as a lid, filled through a riser. */
	lid: z.strictObject({ riserMm: mm, upliftN: n, straps: z.number().int(), strapN: n }).nullable(),
	/** What holds the pattern down if rubber flows under it; its own weight is not counted on. */
	pattern: z.strictObject({ upliftN: n, immersedFraction: z.number().min(0).max(1) }).nullable()
});

const sizeSchema = z.strictObject({
	dimension: z.enum(['length', 'width', 'height']),
	patternMm: mm,
	partMm: mm,
	lowMm: mm,
	highMm: mm,
	/** Pattern that would give a part of the pattern's present size. */
	oversizeMm: mm
});

export const sizesSectionSchema = z.strictObject({
	rows: z.array(sizeSchema),
	gloveShrinkageFraction: z.number(),
	castingShrinkageFraction: z.number(),
	volumeShrinkageFraction: z.number(),
	note: z.string()
});

export const plasterSectionSchema = z.strictObject({
	waterRatio: n,
	/** On the bag: milliliters of water for 100 g of plaster. */
	consistencyMlPer100G: n,
	plasterG: n,
	waterG: n,
	slurryGPerMl: n,
	yieldMlPerKg: n,
	dryG: n,
	dryGPerMl: n,
	dryingWaterG: n
});

export const choiceSectionSchema = z.strictObject({
	/** Glove, solid block, poured layer. */
	estimates: z
		.array(
			z.strictObject({
				process: z.enum(['glove', 'solid block', 'poured layer']),
				rubberG: n,
				shellG: n,
				moldG: n,
				materialPrice: n,
				laborS: n,
				totalPrice: n,
				daysCount: n,
				/** How a mold of this mass is turned over. */
				way: z.string()
			})
		)
		.length(3),
	chosen: z.enum(['glove', 'solid block', 'poured layer']).nullable(),
	reason: z.string(),
	/** Times as large or small as this one, from which a glove costs less than a block; null: never or always. */
	evenScale: n.nullable(),
	evenLengthMm: n.nullable(),
	limits: z.array(z.strictObject({ process: z.string(), text: z.string() }))
});

export const lifeSectionSchema = z.strictObject({
	moldLifePours: n,
	poursCount: n,
	moldsCount: n,
	moldPricePerPart: n,
	pourPricePerPart: n,
	totalPricePerPart: n
});

export const wasteSectionSchema = z.strictObject({
	lines: z.array(
		z.strictObject({
			materialId: z.string(),
			materialName: z.string(),
			mixedG: n,
			wasteG: n,
			wasteFraction: n
		})
	),
	buildG: n,
	perPartG: n,
	caution: z.string()
});

export const weighingSectionSchema = z.array(
	z.strictObject({
		materialId: z.string(),
		materialName: z.string(),
		/** Null for a material of one part, and outside the law. */
		smallestBatchG: n.nullable(),
		smallestCupG: n,
		/** For 100 g of the first part, and for 100 mL of it where the sheet gives densities. */
		perHundred: z
			.array(z.strictObject({ part: z.string(), massG: n, volumeMl: n.nullable() }))
			.optional(),
		/** Standard uncertainty of the ratio in the smallest cup of the plan. */
		uncertaintyFraction: n.nullable(),
		toleranceFraction: n,
		isFineEnough: z.boolean()
	})
);

export const additionsSectionSchema = z.array(
	z.strictObject({
		to: z.string(),
		name: z.string(),
		partsPerHundred: n,
		totalG: n,
		batches: z.array(z.strictObject({ id: z.string(), title: z.string(), perCupG: n }))
	})
);
