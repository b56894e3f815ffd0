import { z } from 'zod';
import { SEVERITIES } from '../materials/pair-problem';
import { UNITS } from '../quantity/unit';
import { planInputsSchema } from './inputs';
import { airSectionSchema } from './schema-air';
import {
	additionsSectionSchema,
	choiceSectionSchema,
	forcesSectionSchema,
	lifeSectionSchema,
	liftingSectionSchema,
	plasterSectionSchema,
	sizesSectionSchema,
	wasteSectionSchema,
	weighingSectionSchema
} from './schema-mold';
import { bridgingSectionSchema, handlingSectionSchema } from './schema-mesh';
import { cureSectionSchema, roomSectionSchema, wallsSectionSchema } from './schema-room';

/**
 * Version of the process machine a job is started with; it goes on to its end under it. Since 2 an
 * abraded surface needs no print, and a mold is accepted only as its inspection found it. Since 3 coats of
 * sealer, layers of cloth, keys and test cups are logged, and where there was trouble is looked at. Since 4 a thin reading is answered once the coat added for it is on. Since 5 a coat's window
 * shuts from its first cup and also for what is still bare below a coat being laid, the pot life counts from when the parts
 * meet, and what put the work before a supervisor is ended or taken back by one. Since 6 that holds for a cup weighed ahead too, each cup
 * keeps its number, and what no cup of the shop holds is not weighed; the number is a choice of ours.
 */
export const PROCESS_VERSION = 6;

const g = z.number().nonnegative();
const s = z.number().nonnegative();

const lawSchema = z.strictObject({
	id: z.string(),
	name: z.string(),
	formula: z.string(),
	source: z.string(),
	validity: z.string()
});

const figureSchema = z.strictObject({
	label: z.string(),
	value: z.number(),
	unit: z.enum(UNITS),
	law: lawSchema,
	inputs: z.array(
		z.strictObject({
			symbol: z.string(),
			label: z.string(),
			value: z.union([z.number(), z.string()]),
			unit: z.enum(UNITS),
			origin: z.enum(['entered', 'data sheet', 'default', 'computed', 'constant']),
			figure: z.string().optional(),
			low: z.number().optional(),
			high: z.number().optional()
		})
	),
	low: z.number().optional(),
	high: z.number().optional(),
	note: z.string().optional()
});

/** One cup: what goes in, in pouring order (thicker part first, water before powder), as the shop's scale shows it. */
const cupSchema = z.strictObject({
	massG: g,
	parts: z.array(z.strictObject({ part: z.string(), massG: g })).min(1),
	/** Brim volume of the cup to take from the shelf; filled to two thirds at most. */
	cupVolumeMl: g
});

/** What is mixed and laid for one coat of the glove or one round of the shell. */
const batch = {
	materialId: z.string(),
	materialName: z.string(),
	massG: g,
	/** Target masses in the ratio, one per part, in the sheet's order, summing to 1. */
	fractions: z.array(z.strictObject({ part: z.string(), fraction: z.number().min(0).max(1) })),
	/** Greatest deviation of the weight ratio that may be mixed. */
	toleranceFraction: z.number().min(0).max(0.2),
	cups: z.array(cupSchema).min(1),
	/** The most one cup may hold, so that it is laid before it turns. */
	largestCupG: g,
	mixS: s,
	/** From the end of mixing till the cup must be laid, at the room's temperature. */
	workingS: s,
	/**
	 * What a cup of more than planned still works for after mixing, and how hot it gets when it is forgotten, by its
	 * mass, the planned cup first; absent where no heat is known, and from plans of before.
	 */
	cupLives: z
		.array(z.strictObject({ massG: g, workingS: s, peakC: z.number() }))
		.min(2)
		.optional(),
	/** From the first mixing to the last empty cup; absent from plans of before. */
	paceS: s.optional()
};

const coatSchema = z.strictObject({
	id: z.string(),
	kind: z.enum(['detail', 'build']),
	/** 1-based within its kind. */
	number: z.number().int().positive(),
	title: z.string(),
	thicknessMm: z.number().positive(),
	volumeMl: g,
	...batch,
	/** After laying, when a thin coat is brushed back up its walls; null for a build coat. */
	brushBackS: s.nullable(),
	/** After laying, when to try the first tack test, and when the window shuts. */
	tackTestS: s,
	windowClosesS: s,
	/** After laying, when it may be almost tack-free at the soonest; plans of before have none. */
	tackSoonestS: s.optional()
});

const shellRoundSchema = z.strictObject({
	id: z.string(),
	number: z.number().int().positive(),
	title: z.string(),
	...batch,
	/** Cloth or strand laid into this round. */
	reinforcementG: g,
	/** How many layers of a cloth or mat of known weight that is; loose strand is not counted. */
	layers: z.number().int().positive().optional(),
	/** After a round is laid, when the next no longer bonds without abrading. */
	windowClosesS: s
});

const waitSchema = z.strictObject({
	/** After the coat or round before it, when the test may be tried. */
	testS: s,
	/** What ends it. */
	test: z.string(),
	why: z.string()
});

const boardSchema = z.strictObject({
	name: z.string(),
	count: z.number().int().positive(),
	lengthMm: z.number(),
	widthMm: z.number(),
	thicknessMm: z.number()
});

const orderLineSchema = z.strictObject({
	materialId: z.string(),
	name: z.string(),
	/** What the plan uses, and what to have at hand. */
	needG: g,
	safeG: g,
	kits: z.array(z.strictObject({ name: z.string(), massG: g, count: z.number().int(), price: g })),
	boughtG: g,
	leftoverG: g,
	price: g,
	/** Likely range of what the plan uses. */
	lowG: g.optional(),
	highG: g.optional(),
	shelfLifeDays: z.number().optional(),
	/** On the day the job ends; a lot without a date is taken as made on the day it begins. */
	shelf: z
		.strictObject({
			leftS: z.number(),
			state: z.enum(['good', 'ending', 'over']),
			isAssumedFresh: z.boolean()
		})
		.optional()
});

const warningSchema = z.strictObject({
	code: z.string(),
	/** "refuse" blocks acceptance of the plan, "decide" leaves it to a supervisor. */
	severity: z.enum(SEVERITIES),
	/** Part of the plan it belongs to, for example "materials" or "calendar". */
	where: z.string(),
	text: z.string()
});
export type PlanWarning = z.infer<typeof warningSchema>;

const calendarEntrySchema = z.strictObject({
	id: z.string(),
	/** Phase id of the process. */
	phase: z.string(),
	title: z.string(),
	kind: z.enum(['work', 'wait']),
	startAt: z.iso.datetime(),
	endAt: z.iso.datetime(),
	/** For a wait: when its window closes. */
	closesAt: z.iso.datetime().nullable(),
	/** Part of it that needs hands falls outside the shop's shifts. */
	outsideShift: z.boolean()
});

export const planSchema = z.strictObject({
	format: z.literal('glovewright.plan.1'),
	processVersion: z.number().int(),
	title: z.string(),
	inputs: planInputsSchema,
	surface: z.strictObject({
		exposedAreaCm2: z.number(),
		volumeMl: z.number(),
		footprintCm2: z.number(),
		lengthMm: z.number(),
		widthMm: z.number(),
		heightMm: z.number(),
		steepestWallDeg: z.number(),
		flangeAreaCm2: z.number(),
		/** Pattern and flange: what a coat covers. */
		coatedAreaCm2: z.number(),
		profile: z.array(z.strictObject({ xMm: z.number(), yMm: z.number() }))
	}),
	roomTemperatureC: z.number(),
	roomHumidityPct: z.number(),
	release: z.strictObject({
		needed: z.boolean(),
		why: z.string(),
		sealerG: g,
		/** Absent from plans frozen before coats of sealer were logged. */
		sealerCoats: z.number().int().nonnegative().optional(),
		sealerDryS: s.optional(),
		waxCoats: z.number().int().nonnegative(),
		waxG: g,
		waxHazeS: s,
		filmPasses: z.number().int().nonnegative(),
		filmG: g,
		filmDryS: s
	}),
	frame: z.strictObject({
		gapMm: z.number(),
		flangeMm: z.number(),
		insideLengthMm: z.number(),
		insideWidthMm: z.number(),
		heightMm: z.number(),
		boards: z.array(boardSchema)
	}),
	detail: z.strictObject({ needed: z.boolean(), why: z.string() }),
	/** Detail coats first, then build coats, in the order they go on. */
	coats: z.array(coatSchema).min(1),
	glove: z.strictObject({
		thicknessMm: z.number(),
		/** Thinnest a gauge point may read and still pass. */
		leastMm: z.number(),
		shoreA: z.number().nullable()
	}),
	gloveCure: waitSchema,
	shellRelease: z.strictObject({
		needed: z.boolean(),
		why: z.string(),
		waxCoats: z.number().int(),
		waxG: g
	}),
	shell: z.strictObject({
		thicknessMm: z.number(),
		why: z.string(),
		rounds: z.array(shellRoundSchema).min(1)
	}),
	shellCure: waitSchema,
	pour: z.strictObject({
		materialName: z.string(),
		volumeMl: g,
		massG: g,
		parts: z.array(z.strictObject({ part: z.string(), massG: g })),
		/** Batches that one person mixes and pours before they turn; absent without a pot life, and from plans of before. */
		batches: z
			.strictObject({
				count: z.number().int().positive(),
				/** Of each batch, as the scale shows it, and its parts in pouring order. */
				massG: g,
				parts: z.array(z.strictObject({ part: z.string(), massG: g })),
				largestG: g,
				/** Absent for what is molten and not mixed. */
				mixS: s.optional(),
				/** From the end of mixing till the batch must be in the mold; absent for what is molten. */
				workingS: s.optional(),
				/** From the first mixing to the last batch's being in. */
				spanS: s
			})
			.optional(),
		/** For what is poured molten: melting it, and when it is solid through at the latest. */
		melt: z.strictObject({ meltS: s, solidS: s }).optional(),
		headMm: z.number(),
		/** Pressure at the deepest point. */
		pressurePa: z.number()
	}),
	washing: z.string(),
	weights: z.strictObject({
		gloveG: g,
		shellG: g,
		/** Glove and shell together; absent from plans of before. */
		gloveAndShellG: g.optional(),
		frameG: g,
		filledG: g
	}),
	order: z.array(orderLineSchema),
	cost: z.strictObject({
		materials: g,
		labor: g,
		total: g,
		perPart: g,
		laborS: s
	}),
	calendar: z.array(calendarEntrySchema),
	/** A start within the next two weeks at which no window falls outside a shift, when the asked one does. */
	betterStartAt: z.iso.datetime().nullable(),
	/** When it would be finished with that start; absent from plans of before. */
	betterFinishAt: z.iso.datetime().optional(),
	finishAt: z.iso.datetime(),
	people: z.number().int(),
	/** PPE and hazard ids of the content vocabulary. */
	ppe: z.array(z.string()),
	hazards: z.array(z.string()),
	/** Briefing slugs that must be read before the chemistry is touched. */
	briefings: z.array(z.string()),
	block: z.strictObject({
		rubberMl: g,
		rubberG: g,
		gloveRubberG: g,
		cost: g,
		gloveCost: g,
		days: z.number(),
		gloveDays: z.number(),
		better: z.enum(['glove', 'block']),
		why: z.string()
	}),
	warnings: z.array(warningSchema),
	// Plans frozen by an earlier version have none of these sections.
	room: roomSectionSchema.optional(),
	walls: wallsSectionSchema.optional(),
	cure: cureSectionSchema.optional(),
	air: airSectionSchema.optional(),
	lifting: liftingSectionSchema.optional(),
	forces: forcesSectionSchema.optional(),
	sizes: sizesSectionSchema.optional(),
	plaster: plasterSectionSchema.optional(),
	choice: choiceSectionSchema.optional(),
	life: lifeSectionSchema.optional(),
	waste: wasteSectionSchema.optional(),
	weighing: weighingSectionSchema.optional(),
	additions: additionsSectionSchema.optional(),
	/** Only for a pattern measured on its mesh. */
	bridging: bridgingSectionSchema.optional(),
	handling: handlingSectionSchema.optional(),
	/** Trace of the plan's numbers by path, for example "coats.0.massG". */
	figures: z.record(z.string(), figureSchema)
});

export type Plan = z.infer<typeof planSchema>;
export type Coat = z.infer<typeof coatSchema>;
export type ShellRound = z.infer<typeof shellRoundSchema>;
export type Cup = z.infer<typeof cupSchema>;
