import { z } from 'zod';
import { nameOf, parseDocument, type Document } from './parse-document';
import {
	briefingSchema,
	cautionSchema,
	glossarySchema,
	lessonSchema,
	poolSchema,
	stepSchema,
	troubleSchema
} from './schemas';
import { BRIEFING_SLUGS, HAZARD_IDS, STEP_SLUGS, TROUBLE_IDS, type HazardId } from './vocabulary';

export type Step = z.infer<typeof stepSchema> & Document;
export type Briefing = z.infer<typeof briefingSchema> & Document;
export type Trouble = z.infer<typeof troubleSchema> & Document;
export type Lesson = z.infer<typeof lessonSchema> & Document;
export type Pool = z.infer<typeof poolSchema> & Document;
export type Caution = z.infer<typeof cautionSchema> & Document;
export type Glossary = z.infer<typeof glossarySchema> & Document;

/** Everything people read, by slug, in reading order. */
export interface Library {
	steps: Map<string, Step>;
	briefings: Map<string, Briefing>;
	troubles: Map<string, Trouble>;
	lessons: Map<string, Lesson>;
	/** Questions by hazard. */
	pools: ReadonlyMap<HazardId, Pool>;
	caution: Caution;
	glossary: Glossary;
}

/** Texts by path; a path ends in `content/<collection>/NN-slug.md` or `content/<name>.md`. */
export type Files = Record<string, string>;

function attempt<T>(problems: string[], read: () => T): T | undefined {
	try {
		return read();
	} catch (error) {
		problems.push(error instanceof Error ? error.message : String(error));
		return undefined;
	}
}

/**
 * All files of one collection. Whatever is wrong is added to `problems`.
 *
 * @param required - slugs that must be there
 * @param closed - whether a slug that is not required is refused
 */
function readCollection<S extends z.ZodType<object>>(
	problems: string[],
	files: Files,
	{
		folder,
		schema,
		required = [],
		closed = false
	}: { folder: string; schema: S; required?: readonly string[]; closed?: boolean }
): Map<string, z.infer<S> & Document> {
	const found = new Map<string, z.infer<S> & Document>();
	const paths = new Map<string, string>();
	const inFolder = Object.keys(files)
		.filter((path) => path.includes(`content/${folder}/`))
		.sort();
	for (const path of inFolder) {
		const document = attempt(problems, () => parseDocument(schema, path, files[path] ?? ''));
		if (!document) continue;
		const { slug } = document;
		const twin = paths.get(slug);
		if (twin) problems.push(`${path}: slug: "${slug}" is taken by ${twin}`);
		if (closed && !required.includes(slug)) {
			problems.push(`${path}: slug: "${slug}" is not one of ${required.join(', ')}`);
		}
		paths.set(slug, path);
		found.set(slug, document);
	}
	const present = inFolder.map((path) => attempt([], () => nameOf(path).slug));
	for (const slug of required.filter((slug) => !present.includes(slug))) {
		problems.push(`content/${folder}/NN-${slug}.md: missing, but it is linked to`);
	}
	return found;
}

/** The pools of questions, one for each hazard; a file is named after the hazard it asks about. */
function readPools(problems: string[], files: Files): Map<HazardId, Pool> {
	const pools = readCollection(problems, files, {
		folder: 'questions',
		schema: poolSchema,
		required: HAZARD_IDS,
		closed: true
	});
	for (const { slug, hazard } of pools.values()) {
		if (slug !== hazard) {
			problems.push(
				`content/questions/NN-${slug}.md: hazard: "${hazard}", but the file says ${slug}`
			);
		}
	}
	return new Map([...pools.values()].map((pool) => [pool.hazard, pool]));
}

function readSingle<S extends z.ZodType<object>>(
	problems: string[],
	files: Files,
	name: string,
	schema: S
): (z.infer<S> & Document) | undefined {
	const path = Object.keys(files).find((key) => key.endsWith(`content/${name}.md`));
	if (path === undefined) {
		problems.push(`content/${name}.md: missing`);
		return undefined;
	}
	return attempt(problems, () => parseDocument(schema, path, files[path] ?? ''));
}

/**
 * Reads and cross-checks all content at once.
 *
 * @throws Error that lists every problem of every file: file, field, reason
 */
export function readLibrary(files: Files): Library {
	const problems: string[] = [];
	const steps = readCollection(problems, files, {
		folder: 'steps',
		schema: stepSchema,
		required: STEP_SLUGS
	});
	const briefings = readCollection(problems, files, {
		folder: 'briefings',
		schema: briefingSchema,
		required: BRIEFING_SLUGS
	});
	const troubles = readCollection(problems, files, {
		folder: 'troubles',
		schema: troubleSchema,
		required: TROUBLE_IDS,
		closed: true
	});
	const lessons = readCollection(problems, files, { folder: 'lessons', schema: lessonSchema });
	const pools = readPools(problems, files);
	const caution = readSingle(problems, files, 'cautions', cautionSchema);
	const glossary = readSingle(problems, files, 'glossary', glossarySchema);
	if (!caution || !glossary || problems.length > 0) {
		throw new Error(`Content cannot be used:\n\n${problems.join('\n\n')}`);
	}
	return { steps, briefings, troubles, lessons, pools, caution, glossary };
}
