import { parse as parseYaml } from 'yaml';
import { z } from 'zod';
import { contentHash } from './content-hash';
import { markdownToHtml } from './markdown';

const FRONT_MATTER = /^---\r?\n([\s\S]*?)\r?\n---[ \t]*(?:\r?\n([\s\S]*))?$/;
const FILE_NAME = /([^/]+)\.md$/;
const ORDER = /^(\d+)-/;
const SLUG = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** What every file in content/ has besides its front matter. */
export interface Document {
	/** File name without its order number and ending. */
	slug: string;
	/** The number before the name, or 0. Files are read in its order. */
	order: number;
	/** The body, rendered and safe to insert. */
	html: string;
	/** SHA-256 of the whole file, see `contentHash`. */
	hash: string;
}

/** Order number and slug of a file. @throws Error when the name has no usable slug */
export function nameOf(path: string): { slug: string; order: number } {
	const name = FILE_NAME.exec(path)?.[1] ?? '';
	const order = Number(ORDER.exec(name)?.[1] ?? 0);
	const slug = name.replace(ORDER, '');
	if (!SLUG.test(slug)) {
		throw new Error(`${path}: file name: accepted is NN-slug.md, in lower case with hyphens`);
	}
	return { slug, order };
}

function readYaml(path: string, yaml: string): unknown {
	try {
		return parseYaml(yaml);
	} catch (cause) {
		const reason = cause instanceof Error ? cause.message : String(cause);
		throw new Error(`${path}: front matter is not YAML: ${reason}`, { cause });
	}
}

/**
 * One file of content/ as data.
 *
 * @throws Error that names the file and, one per line, every field that is wrong and why
 */
export function parseDocument<S extends z.ZodType<object>>(
	schema: S,
	path: string,
	text: string
): z.infer<S> & Document {
	const name = nameOf(path);
	const match = FRONT_MATTER.exec(text);
	if (!match) throw new Error(`${path}: front matter: none found between two lines of ---`);

	const result = schema.safeParse(readYaml(path, match[1] ?? ''));
	if (!result.success) throw new Error(`${path}\n${z.prettifyError(result.error)}`);

	const body = match[2] ?? '';
	if (body.trim() === '') throw new Error(`${path}: body: empty, expected the text to read`);
	return { ...result.data, ...name, html: markdownToHtml(body), hash: contentHash(text) };
}
