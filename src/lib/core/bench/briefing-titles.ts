import type { BenchTexts } from './bench-texts';

const UNREAD = /(read the briefings first: )([\w-]+(?:, [\w-]+)*)/i;

/** A refusal that lists unread briefings by their ids, with their titles instead. */
export function withBriefingTitles(text: string, briefings: BenchTexts['briefings']): string {
	return text.replace(UNREAD, (_said, first: string, slugs: string) => {
		const titles = slugs.split(', ').map((slug) => briefings[slug]?.title ?? slug);
		return first + titles.map((title) => `“${title}”`).join(', ');
	});
}
