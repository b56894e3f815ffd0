import type { Reading } from './reading';

/** A text with its words, to be searched. */
export interface Searchable {
	reading: Reading;
	/** Everything in it as plain text. */
	text: string;
}

export interface Found {
	reading: Reading;
	/** A piece of the text round the first word found; `hit` marks what was looked for. */
	snippet: Array<{ text: string; hit: boolean }>;
}

const MOST_WORDS = 8;
const BEFORE = 60;
const AFTER = 120;

/** The words looked for: lower case, each once, eight at most. */
export function searchWords(q: string): string[] {
	return [
		...new Set(
			q
				.toLowerCase()
				.split(/[^\p{L}\p{N}]+/u)
				.filter(Boolean)
		)
	].slice(0, MOST_WORDS);
}

/** HTML of our own making as plain text. */
export function plainText(html: string): string {
	return html
		.replace(/<[^>]*>/g, ' ')
		.replace(/&lt;/g, '<')
		.replace(/&gt;/g, '>')
		.replace(/&quot;/g, '"')
		.replace(/&#39;/g, "'")
		.replace(/&amp;/g, '&')
		.replace(/\s+/g, ' ')
		.trim();
}

/** Texts in which every word occurs, those that say it in the title first, then in the summary. */
export function searchReadings(texts: readonly Searchable[], q: string): Found[] {
	const words = searchWords(q);
	if (words.length === 0) return [];
	return texts
		.map((entry) => ({ entry, score: scoreOf(entry, words) }))
		.filter(({ score }) => score > 0)
		.sort((a, b) => b.score - a.score)
		.map(({ entry }) => ({ reading: entry.reading, snippet: snippetOf(entry.text, words) }));
}

function scoreOf({ reading, text }: Searchable, words: readonly string[]): number {
	const title = reading.title.toLowerCase();
	const summary = reading.summary.toLowerCase();
	const body = text.toLowerCase();
	const scores = words.map((word): number =>
		title.includes(word) ? 9 : summary.includes(word) ? 3 : body.includes(word) ? 1 : 0
	);
	return scores.includes(0) ? 0 : scores.reduce((sum, score) => sum + score, 0);
}

function snippetOf(text: string, words: readonly string[]): Found['snippet'] {
	const lower = text.toLowerCase();
	const places = words.map((word) => lower.indexOf(word)).filter((at) => at >= 0);
	const first = Math.min(...places);
	if (!Number.isFinite(first)) return [];
	const from = first <= BEFORE ? 0 : lower.indexOf(' ', first - BEFORE) + 1;
	const end = first + AFTER >= text.length ? text.length : lower.lastIndexOf(' ', first + AFTER);
	const piece = text.slice(Math.min(from, first), Math.max(end, first + 1));
	const pattern = new RegExp(`(${words.toSorted((a, b) => b.length - a.length).join('|')})`, 'giu');
	const parts = piece.split(pattern).filter(Boolean);
	return [
		...(from > 0 ? [{ text: '… ', hit: false }] : []),
		...parts.map((part) => ({ text: part, hit: words.includes(part.toLowerCase()) })),
		...(end < text.length ? [{ text: ' …', hit: false }] : [])
	];
}
