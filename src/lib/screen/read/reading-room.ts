import type { Library } from '$lib/core/content/library';
import { PHASE_IDS, type HazardId, type PhaseId } from '$lib/core/content/vocabulary';
import type { CollectionId, Reading } from './reading';
import { plainText, type Searchable } from './search-readings';

interface Text {
	slug: string;
	title: string;
	html: string;
}

/** Every text of the library as the reading room lists and searches it, in reading order. */
export function readingRoom(library: Omit<Library, 'pools'>): Searchable[] {
	const { briefings, steps, troubles, lessons, caution, glossary } = library;
	return [
		...[...steps.values()].map((step) =>
			entry('steps', step, {
				summary: step.summary,
				phases: [step.phase],
				hazards: step.hurts,
				more: [...step.checks, ...step.wrongSigns, ...step.tools]
			})
		),
		...[...briefings.values()].map((briefing) =>
			entry('briefings', briefing, {
				summary: briefing.summary,
				phases: briefing.mustReadFor,
				hazards: briefing.hazards
			})
		),
		...[...troubles.values()].map((trouble) =>
			entry('troubles', trouble, {
				summary: trouble.sign,
				phases: trouble.phases,
				more: [trouble.act]
			})
		),
		...[...lessons.values()].map((lesson) =>
			entry('lessons', lesson, {
				summary: lesson.summary,
				phases: lesson.phase ? [lesson.phase] : [],
				hazards: lesson.hazard ? [lesson.hazard] : [],
				more: lesson.questions.flatMap(({ ask, because }) => [ask, because])
			})
		),
		entry('reference', glossary, {
			summary: `${glossary.terms.length} words of the trade and what they mean.`,
			more: glossary.terms.map(({ term, meaning }) => `${term}: ${meaning}`)
		}),
		entry('reference', { ...caution, slug: 'caution' }, { summary: caution.summary })
	];
}

interface Place {
	summary: string;
	phases?: PhaseId[];
	hazards?: HazardId[];
	/** Text that is not in the body. */
	more?: string[];
}

function entry(
	collection: CollectionId,
	{ slug, title, html }: Text,
	{ summary, phases = [], hazards = [], more = [] }: Place
): Searchable {
	return {
		reading: {
			collection,
			slug,
			title,
			summary,
			phases: PHASE_IDS.filter((id) => phases.includes(id)),
			hazards
		} satisfies Reading,
		text: [summary, ...more, plainText(html)].join(' ')
	};
}
