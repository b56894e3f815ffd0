import type { Briefing, Step, Trouble } from '../content/library';
import type { Translation } from '../content/translation';
import type { Lang } from '../language/locale';

/** The texts a bench shows, by slug: what it takes along when it has to go on without the server. */
export interface BenchTexts {
	lang: Lang;
	steps: Record<
		string,
		Pick<
			Step,
			| 'slug'
			| 'title'
			| 'html'
			| 'tools'
			| 'checks'
			| 'wrongSigns'
			| 'hurts'
			| 'ppe'
			| 'ventilation'
		>
	>;
	briefings: Record<
		string,
		Pick<Briefing, 'slug' | 'title' | 'summary' | 'readMin' | 'signs' | 'html' | 'hash'>
	>;
	troubles: Record<string, Pick<Trouble, 'title' | 'sign' | 'act' | 'severity' | 'html'>>;
}

/** The bench's part of all that can be read. */
export function benchTexts(
	{ steps, briefings, troubles }: Translation,
	lang: Lang = 'en'
): BenchTexts {
	return {
		lang,
		steps: mapped(
			steps,
			({ slug, title, html, tools, checks, wrongSigns, hurts, ppe, ventilation }) => ({
				slug,
				title,
				html,
				tools,
				checks,
				wrongSigns,
				hurts,
				ppe,
				ventilation
			})
		),
		briefings: mapped(briefings, ({ slug, title, summary, readMin, signs, html, hash }) => ({
			slug,
			title,
			summary,
			readMin,
			signs,
			html,
			hash
		})),
		troubles: mapped(troubles, ({ title, sign, act, severity, html }) => ({
			title,
			sign,
			act,
			severity,
			html
		}))
	};
}

function mapped<T, U>(texts: ReadonlyMap<string, T>, part: (text: T) => U): Record<string, U> {
	return Object.fromEntries([...texts].map(([slug, text]) => [slug, part(text)]));
}
