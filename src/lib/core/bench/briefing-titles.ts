import { ENGLISH } from '../language/words';
import type { BenchTexts } from './bench-texts';

const SLUGS = /^[a-z0-9-]+(?:, [a-z0-9-]+)*/;

/** A refusal that lists unread briefings by their ids, with their titles instead. */
export function withBriefingTitles(
	text: string,
	briefings: BenchTexts['briefings'],
	w = ENGLISH
): string {
	const first = w.rules.readFirst('');
	const at = text.toLowerCase().indexOf(first.toLowerCase());
	if (at < 0) return text;
	const start = at + first.length;
	const titled = text.slice(start).replace(SLUGS, (slugs) =>
		slugs
			.split(', ')
			.map((slug) => w.quoted(briefings[slug]?.title ?? slug))
			.join(', ')
	);
	return text.slice(0, start) + titled;
}
