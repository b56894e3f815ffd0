import type { HazardId, PhaseId } from '$lib/core/content/vocabulary';

export const COLLECTIONS = ['steps', 'briefings', 'troubles', 'lessons', 'reference'] as const;
export type CollectionId = (typeof COLLECTIONS)[number];

export const COLLECTION_TITLES: Record<CollectionId, { one: string; many: string }> = {
	steps: { one: 'Step', many: 'Steps' },
	briefings: { one: 'Briefing', many: 'Briefings' },
	troubles: { one: 'Trouble', many: 'Troubles' },
	lessons: { one: 'Lesson', many: 'Lessons' },
	reference: { one: 'Reference', many: 'Reference' }
};

/** One text as the reading room lists it. */
export interface Reading {
	collection: CollectionId;
	slug: string;
	title: string;
	summary: string;
	/** Phases it belongs to, in order. */
	phases: PhaseId[];
	hazards: HazardId[];
}

export const VIEWS = ['phase', 'hazard', 'kind'] as const;
export type View = (typeof VIEWS)[number];

export function viewIn(params: URLSearchParams): View {
	return VIEWS.find((view) => view === params.get('by')) ?? 'phase';
}
