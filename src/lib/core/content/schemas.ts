import { z } from 'zod';
import {
	HAZARD_IDS,
	PHASE_IDS,
	PPE_IDS,
	SEVERITY_IDS,
	SIGNS,
	VENTILATION_IDS,
	type SignCode
} from './vocabulary';

const line = z
	.string()
	.trim()
	.min(1)
	.max(400)
	.regex(/^[^\n]*$/, 'must be one line');
const phase = z.enum(PHASE_IDS);
const hazard = z.enum(HAZARD_IDS);
const sign = z.enum(Object.keys(SIGNS) as [SignCode, ...SignCode[]]);

/** A list in which nothing stands twice. */
function listOf<T extends z.ZodType<string>>(item: T) {
	return z
		.array(item)
		.refine((items) => new Set(items).size === items.length, 'names the same thing twice');
}

/** A citation, or "common practice, no source". Never left out: a reader may ask "who says so?". */
const source = line;

export const stepSchema = z.strictObject({
	title: line,
	phase,
	/** One line, imperative. */
	summary: line,
	hurts: listOf(hazard),
	ppe: listOf(z.enum(PPE_IDS)),
	ventilation: z.enum(VENTILATION_IDS),
	tools: listOf(line),
	/** What to see before going on. */
	checks: listOf(line).min(1),
	/** What tells that it went wrong. */
	wrongSigns: listOf(line).min(1),
	source
});

export const briefingSchema = z.strictObject({
	title: line,
	summary: line,
	hazards: listOf(hazard).min(1),
	/** Minutes it takes to read with care. */
	readMin: z.number().int().min(1).max(60),
	/** ISO 7010 references. */
	signs: listOf(sign).min(1),
	/** Phases before which a person must have read it. */
	mustReadFor: listOf(phase).min(1),
	source
});

export const troubleSchema = z.strictObject({
	title: line,
	/** What is seen, felt or heard. */
	sign: line,
	/** What to do first. */
	act: line,
	/** Phases in which it can happen. */
	phases: listOf(phase).min(1),
	severity: z.enum(SEVERITY_IDS),
	source
});

const questionSchema = z
	.strictObject({
		ask: line,
		answers: listOf(line).min(2).max(6),
		/** Index of the right answer, counted from 0. */
		right: z.number().int().nonnegative(),
		because: line
	})
	.refine(({ answers, right }) => right < answers.length, {
		path: ['right'],
		error: 'points past the last answer'
	});

export const lessonSchema = z
	.strictObject({
		title: line,
		summary: line,
		phase: phase.optional(),
		hazard: hazard.optional(),
		source,
		questions: z.array(questionSchema).min(4).max(12)
	})
	.refine((lesson) => (lesson.phase === undefined) !== (lesson.hazard === undefined), {
		path: ['phase'],
		error: 'give either phase or hazard, and only one of them'
	});

const pooledQuestionSchema = z
	.strictObject({
		/** Names it in the answers that are kept; another question gets another id. */
		id: z.string().regex(/^[a-z0-9-]{1,40}$/, 'lower case, digits and hyphens'),
		ask: line,
		right: line,
		wrong: listOf(line).min(2).max(4),
		because: line,
		source
	})
	.refine(({ right, wrong }) => !wrong.includes(right), {
		path: ['wrong'],
		error: 'holds the right answer too'
	});

/** The pool that rounds of one hazard are drawn from. */
export const poolSchema = z.strictObject({
	title: line,
	hazard,
	/** Months for which a round that was passed counts. */
	renewMonths: z.number().int().min(1).max(60),
	renewSource: source,
	questions: z
		.array(pooledQuestionSchema)
		.min(8)
		.max(40)
		.refine(
			(questions) => new Set(questions.map(({ id }) => id)).size === questions.length,
			'gives two questions the same id'
		)
});

/** SHA-256 of the English file that a translation was made from. */
const of = z.string().regex(/^[0-9a-f]{64}$/, 'the SHA-256 of the English file');

/** What a translation says in its own words; everything else is taken from the English text. */
export const stepWordsSchema = stepSchema
	.pick({ title: true, summary: true, tools: true, checks: true, wrongSigns: true, source: true })
	.extend({ of })
	.strict();
export const briefingWordsSchema = briefingSchema
	.pick({ title: true, summary: true, source: true })
	.extend({ of })
	.strict();
export const troubleWordsSchema = troubleSchema
	.pick({ title: true, sign: true, act: true, source: true })
	.extend({ of })
	.strict();
export const cautionWordsSchema = z.strictObject({ title: line, summary: line, source, of });

export const cautionSchema = z.strictObject({ title: line, summary: line, source });

export const glossarySchema = z.strictObject({
	title: line,
	source,
	terms: z
		.array(z.strictObject({ term: line, meaning: line }))
		.min(1)
		.refine(
			(terms) => new Set(terms.map(({ term }) => term.toLowerCase())).size === terms.length,
			'explains the same term twice'
		)
});
