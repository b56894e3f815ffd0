import { error, fail } from '@sveltejs/kit';
import type { Caution, Glossary } from '$lib/core/content/library';
import { ENGLISH, type Words } from '$lib/core/language/words';
import { HAZARDS, PPE } from '$lib/core/content/vocabulary';
import { inShopUnits } from '$lib/core/plan/in-shop-units';
import { PHASE_TITLES } from '$lib/core/process/titles';
import { markRound } from '$lib/screen/read/question-round';
import {
	briefings,
	caution,
	glossary,
	lessons,
	steps,
	textsByLang,
	troubles
} from '$lib/server/content';
import { wordsOf } from '$lib/server/words';
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

/** The shelves that are kept in every language. */
const TRANSLATED = ['steps', 'briefings', 'troubles'] as const;

export const load: PageServerLoad = ({ params, locals, url }) => {
	const { collection, slug } = params;
	const hasOwn = TRANSLATED.some((shelf) => shelf === collection);
	const isTranslated = hasOwn && url.searchParams.get('lang') !== 'en';
	locals.isTranslated = isTranslated;
	const w = isTranslated ? wordsOf(locals.locale) : ENGLISH;
	const shelves = { ...byCollection, ...textsByLang[w.lang] };
	const { title, source, html, hash, ...rest } = textOf(shelves, collection, slug);
	const extra = {
		step: collection === 'steps' ? stepExtra(shelves, slug, w) : null,
		briefing: collection === 'briefings' ? briefingExtra(slug, w) : null,
		trouble: collection === 'troubles' ? troubleExtra(shelves, slug, w) : null,
		lesson: collection === 'lessons' ? lessonExtra(slug) : null,
		terms: slug === 'glossary' && collection === 'reference' ? glossary.terms : null
	};
	const summary = 'summary' in rest ? rest.summary : 'sign' in rest ? rest.sign : undefined;
	return {
		collection,
		slug,
		title,
		source,
		hash,
		...inShopUnits({ summary, html, ...extra }, locals.shop?.units ?? 'SI'),
		beside: besides(shelves, collection, slug),
		isTranslated,
		/** The same text in English, where this one is not. */
		english: w.lang === 'en' ? null : `/read/${collection}/${slug}?lang=en`
	};
};

type Shelves = typeof byCollection;

function textOf(shelves: Shelves, collection: string, slug: string) {
	if (!Object.hasOwn(byCollection, collection)) error(404, 'There is no such shelf here.');
	const text = shelves[collection as keyof Shelves].get(slug);
	return text ?? error(404, 'There is no such text here.');
}

/** The texts before and after it on its shelf. */
function besides(shelves: Shelves, collection: string, slug: string) {
	const shelf = [...shelves[collection as keyof Shelves]].map(([key, { title }]) => ({
		href: `/read/${collection}/${key}`,
		slug: key,
		title
	}));
	const at = shelf.findIndex((text) => text.slug === slug);
	return { before: shelf[at - 1] ?? null, after: shelf[at + 1] ?? null };
}

function stepExtra(shelves: Shelves, slug: string, { titles }: Words) {
	const step = shelves.steps.get(slug);
	if (!step) return null;
	const { hurts, ppe, ventilation, tools, checks, wrongSigns, phase } = step;
	return {
		phase: titles.phases[phase],
		hurts: hurts.map((id) => ({ label: titles.hazards[id], sign: HAZARDS[id].sign })),
		ppe: ppe.map((id) => ({ label: titles.ppe[id], sign: PPE[id].sign })),
		ventilation,
		tools,
		checks,
		wrongSigns
	};
}

function briefingExtra(slug: string, { titles }: Words) {
	const briefing = briefings.get(slug);
	if (!briefing) return null;
	const { hazards, readMin, signs, mustReadFor } = briefing;
	return {
		hazards: hazards.map((id) => titles.hazards[id]),
		readMin,
		signs: signs.map((sign) => ({ sign, label: titles.signs[sign] })),
		mustReadFor: mustReadFor.map((id) => titles.phases[id])
	};
}

function troubleExtra(shelves: Shelves, slug: string, { titles }: Words) {
	const trouble = shelves.troubles.get(slug);
	if (!trouble) return null;
	const { act, phases, severity } = trouble;
	return { act, phases: phases.map((id) => titles.phases[id]), severity };
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
	answer: async ({ params, request, locals }) => {
		const lesson = params.collection === 'lessons' ? lessons.get(params.slug) : undefined;
		if (!lesson) return fail(404, { round: null });
		const form = await request.formData();
		const given = lesson.questions.map((_, i) => form.get(`answer-${i}`));
		const round = markRound(lesson.questions, given);
		return { round: inShopUnits(round, locals.shop?.units ?? 'SI') };
	}
};
