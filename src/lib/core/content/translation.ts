import { z } from 'zod';
import type { Lang } from '../language/locale';
import type { Briefing, Caution, Files, Library, Step, Trouble } from './library';
import { parseDocument, type Document } from './parse-document';
import {
	briefingWordsSchema,
	cautionWordsSchema,
	stepWordsSchema,
	troubleWordsSchema
} from './schemas';

/** What people read in another language: the words are its own, everything else is the English text's. */
export interface Translation {
	steps: Map<string, Step>;
	briefings: Map<string, Briefing>;
	troubles: Map<string, Trouble>;
	caution: Caution;
}

type Words = { of: string } & Document;

/** English lists that are shown item by item keep their length, so that nothing is left out. */
function lengthProblems(words: object, english: object): string[] {
	return Object.entries(words).flatMap(([key, items]: [string, unknown]) => {
		const original: unknown = Reflect.get(english, key);
		if (!Array.isArray(items) || !Array.isArray(original)) return [];
		if (items.length === original.length) return [];
		return [`${key}: has ${items.length} items, the English text ${original.length}`];
	});
}

function readOne<E extends Document, S extends z.ZodType<{ of: string }>>(
	problems: string[],
	{ path, text, schema, english }: { path: string; text: string; schema: S; english: E }
): E | null {
	let words: z.infer<S> & Document;
	try {
		words = parseDocument(schema, path, text);
	} catch (error) {
		problems.push(error instanceof Error ? error.message : String(error));
		return null;
	}
	const { of, ...rest } = words as Words & z.infer<S>;
	if (of !== english.hash) {
		problems.push(
			`${path}: of: the English text has changed since. Bring this one up to it, then write ${english.hash} here.`
		);
	}
	problems.push(...lengthProblems(rest, english).map((problem) => `${path}: ${problem}`));
	return { ...english, ...rest };
}

function readFolder<E extends Document, S extends z.ZodType<{ of: string }>>(
	problems: string[],
	files: Files,
	{ folder, schema, originals }: { folder: string; schema: S; originals: ReadonlyMap<string, E> }
): Map<string, E> {
	const translated = new Map<string, E>();
	const left = new Set(Object.keys(files).filter((path) => path.includes(`content/${folder}/`)));
	for (const [slug, english] of originals) {
		const name = `${String(english.order).padStart(2, '0')}-${slug}.md`;
		const path = [...left].find((key) => key.endsWith(`content/${folder}/${name}`));
		if (path === undefined) {
			problems.push(`content/${folder}/${name}: missing, but the English text is there`);
			continue;
		}
		left.delete(path);
		const text = files[path] ?? '';
		const one = readOne(problems, { path, text, schema, english });
		if (one) translated.set(slug, one);
	}
	for (const path of left)
		problems.push(`${path}: file name: there is no English text of this name`);
	return translated;
}

/**
 * Reads the steps, briefings, troubles and cautions of one language, and holds them to the English ones:
 * each is there, none is of an older English text, no item of a list is left out.
 *
 * @param library - the English texts
 * @throws Error that lists every problem of every file: file, field, reason
 */
export function readTranslation(
	files: Files,
	library: Library,
	lang: Exclude<Lang, 'en'>
): Translation {
	const problems: string[] = [];
	const steps = readFolder(problems, files, {
		folder: `${lang}/steps`,
		schema: stepWordsSchema,
		originals: library.steps
	});
	const briefings = readFolder(problems, files, {
		folder: `${lang}/briefings`,
		schema: briefingWordsSchema,
		originals: library.briefings
	});
	const troubles = readFolder(problems, files, {
		folder: `${lang}/troubles`,
		schema: troubleWordsSchema,
		originals: library.troubles
	});
	const path = Object.keys(files).find((key) => key.endsWith(`content/${lang}/cautions.md`));
	if (path === undefined) problems.push(`content/${lang}/cautions.md: missing`);
	const caution = readOne(problems, {
		path: path ?? '',
		text: files[path ?? ''] ?? '',
		schema: cautionWordsSchema,
		english: library.caution
	});
	if (!caution || problems.length > 0) {
		throw new Error(`Content cannot be used:\n\n${problems.join('\n\n')}`);
	}
	return { steps, briefings, troubles, caution };
}
