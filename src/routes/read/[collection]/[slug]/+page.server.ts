import { error, fail } from '@sveltejs/kit';
import type { Caution, Glossary } from '$lib/core/content/library';
import { HAZARDS, PPE } from '$lib/core/content/vocabulary';
import { PHASE_TITLES } from '$lib/core/process/titles';
import { markRound } from '$lib/screen/read/question-round';
import { briefings, caution, glossary, lessons, steps, troubles } from '$lib/server/content';
import type { Actions, PageServerLoad } from './$types';

const byCollection = {
	steps,
	briefings,
	troubles,
	lessons,
	reference: new Map<string, Glossary | Caution>([
		['glossary', glossary],
		['caution', caution]
	])
};

export const load: PageServerLoad = ({ params }) => {
	const { collection, slug } = params;
	const { title, source, html, hash, ...rest } = textOf(collection, slug);
	const extra = {
		step: collection === 'steps' ? stepExtra(slug) : null,
		briefing: collection === 'briefings' ? briefingExtra(slug) : null,
		trouble: collection === 'troubles' ? troubleExtra(slug) : null,
		lesson: collection === 'lessons' ? lessonExtra(slug) : null,
		terms: slug === 'glossary' && collection === 'reference' ? glossary.terms : null
	};
	const summary = 'summary' in rest ? rest.summary : 'sign' in rest ? rest.sign : undefined;
	return {
		collection,
		slug,
		title,
		summary,
		source,
		html,
		hash,
		...extra,
		beside: besides(collection, slug)
	};
};

function textOf(collection: string, slug: string) {
	if (!Object.hasOwn(byCollection, collection)) error(404, 'There is no such shelf here.');
	const text = byCollection[collection as keyof typeof byCollection].get(slug);
	return text ?? error(404, 'There is no such text here.');
}

/** The texts before and after it on its shelf. */
function besides(collection: string, slug: string) {
	const shelf = [...byCollection[collection as keyof typeof byCollection]].map(
		([key, { title }]) => ({
			href: `/read/${collection}/${key}`,
			slug: key,
			title
		})
	);
	const at = shelf.findIndex((text) => text.slug === slug);
	return { before: shelf[at - 1] ?? null, after: shelf[at + 1] ?? null };
}

function stepExtra(slug: string) {
	const step = steps.get(slug);
	if (!step) return null;
	const { hurts, ppe, ventilation, tools, checks, wrongSigns, phase } = step;
	return {
		phase: PHASE_TITLES[phase],
		hurts: hurts.map((id) => HAZARDS[id]),
		ppe: ppe.map((id) => PPE[id]),
		ventilation,
		tools,
		checks,
		wrongSigns
	};
}

function briefingExtra(slug: string) {
	const briefing = briefings.get(slug);
	if (!briefing) return null;
	const { hazards, readMin, signs, mustReadFor } = briefing;
	return {
		hazards: hazards.map((id) => HAZARDS[id].label),
		readMin,
		signs,
		mustReadFor: mustReadFor.map((id) => PHASE_TITLES[id])
	};
}

function troubleExtra(slug: string) {
	const trouble = troubles.get(slug);
	if (!trouble) return null;
	const { act, phases, severity } = trouble;
	return { act, phases: phases.map((id) => PHASE_TITLES[id]), severity };
}

function lessonExtra(slug: string) {
	const lesson = lessons.get(slug);
	if (!lesson) return null;
	const { phase, hazard, questions } = lesson;
	return {
		about: phase ? PHASE_TITLES[phase] : hazard ? HAZARDS[hazard].label : '',
		questions
	};
}

export const actions: Actions = {
	answer: async ({ params, request }) => {
		const lesson = params.collection === 'lessons' ? lessons.get(params.slug) : undefined;
		if (!lesson) return fail(404, { round: null });
		const form = await request.formData();
		const given = lesson.questions.map((_, i) => form.get(`answer-${i}`));
		return { round: markRound(lesson.questions, given) };
	}
};
