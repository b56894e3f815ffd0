import { briefings, lessons, steps, troubles } from './content';

/** Hash by slug of every text in force, which a job remembers from its first event on. */
export function contentHashes(): Record<string, string> {
	const documents = [briefings, steps, troubles, lessons].flatMap((texts) => [...texts.values()]);
	return Object.fromEntries(documents.map(({ slug, hash }) => [slug, hash]));
}
