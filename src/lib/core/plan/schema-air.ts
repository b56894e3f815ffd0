import { z } from 'zod';
import { LIMIT_SETS } from '../laws/exposure-limits';
import { SUBSTANCE_IDS } from '../laws/substances';

const positive = z.number().nonnegative();

const airLimitSchema = z.strictObject({
	ppm: z.number().positive(),
	kind: z.enum(['average', 'short', 'ceiling']),
	set: z.enum(LIMIT_SETS),
	/** Document and edition. */
	edition: z.string()
});

/** One substance released in one kind of work; null where no law gives a number. */
const airStepSchema = z.strictObject({
	phase: z.string(),
	title: z.string(),
	materialId: z.string(),
	materialName: z.string(),
	substanceId: z.enum(SUBSTANCE_IDS),
	substance: z.string(),
	isSensitizer: z.boolean(),
	/** Whether the data sheet says what evaporates, or the plan assumes it by family. */
	isAssumed: z.boolean(),
	releaseGPerMin: positive,
	overS: positive,
	times: z.number().int().positive(),
	ceilingPpm: positive.nullable(),
	/** The strictest of the chosen lists; null when none of them names the substance. */
	limit: airLimitSchema.nullable(),
	limits: z.array(airLimitSchema),
	/** Null for sensitizers, which dilution does not control. */
	dilutionM3PerH: positive.nullable(),
	fireM3PerH: positive.nullable(),
	/** Share of the lower explosive limit with the shop's flow, averaged over the room. */
	lelFraction: positive.nullable(),
	/** With the shop's flow, at the end of the step. */
	peakPpm: positive.nullable(),
	/** Over eight hours with this step alone, what lingers after it counted. */
	shiftAveragePpm: positive.nullable(),
	curve: z.array(z.strictObject({ atS: positive, ppm: positive })),
	/** After the step's end, until a tenth of the limit; null when no number says so. */
	clearWaitS: positive.nullable()
});

export const airSectionSchema = z.strictObject({
	roomM3: z.number().positive(),
	flowM3PerH: z.number().positive(),
	/** Where the flow comes from. */
	flowFrom: z.enum(['measured', 'grille', 'assumed']),
	mixingFactor: z.number(),
	airChangesPerH: z.number(),
	halfLifeS: positive,
	limitSets: z.array(z.enum(LIMIT_SETS)),
	steps: z.array(airStepSchema),
	/** The worst eight hours of each substance, over all steps; absent from plans of before. */
	shifts: z
		.array(
			z.strictObject({
				substanceId: z.enum(SUBSTANCE_IDS),
				substance: z.string(),
				fromAt: z.string(),
				/** Indexes of the steps that fall into them. */
				steps: z.array(z.number().int().nonnegative()),
				limit: airLimitSchema.nullable(),
				averagePpm: positive
			})
		)
		.optional(),
	/** Materials that release more than one substance. */
	mixtures: z.array(
		z.strictObject({
			materialName: z.string(),
			phase: z.string(),
			limitMgPerM3: positive.nullable(),
			lelPct: positive.nullable(),
			dilutionM3PerH: positive.nullable()
		})
	),
	/** Largest sum of shares of their limits within one phase; null when no limit is known. */
	mixtureIndex: z
		.strictObject({ phase: z.string(), index: positive, exceeded: z.boolean() })
		.nullable(),
	dust: z.array(
		z.strictObject({
			phase: z.string(),
			dust: z.string(),
			fraction: z.enum(['respirable', 'inhalable', 'total']),
			mgPerM3: positive,
			set: z.enum(LIMIT_SETS),
			edition: z.string()
		})
	),
	/** No number here is permission to breathe. */
	allClear: z.literal(false),
	cautions: z.array(z.string()).min(1)
});
