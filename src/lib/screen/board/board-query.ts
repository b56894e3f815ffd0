import { PHASE_IDS, type PhaseId } from '$lib/core/content/vocabulary';

export const SHOWS = ['all', 'me', 'supervisor', 'mine'] as const;
export const STATUSES = ['running', 'paused', 'ended', 'all'] as const;
export const SORTS = ['urgency', 'name', 'start'] as const;

/** What the board is asked for; it stands in the address, so that a view can be kept as a link. */
export interface BoardQuery {
	q: string;
	show: (typeof SHOWS)[number];
	phase: PhaseId | '';
	status: (typeof STATUSES)[number];
	sort: (typeof SORTS)[number];
}

const LONGEST = 120;

/** The query in an address; whatever is not known there counts as not said. */
export function boardQuery(params: URLSearchParams): BoardQuery {
	const one = <T extends string>(name: string, known: readonly T[], or: T): T =>
		known.find((value) => value === params.get(name)) ?? or;
	return {
		q: (params.get('q') ?? '').trim().slice(0, LONGEST),
		show: one('show', SHOWS, 'all'),
		phase: one<PhaseId | ''>('phase', PHASE_IDS, ''),
		status: one('status', STATUSES, 'running'),
		sort: one('sort', SORTS, 'urgency')
	};
}

/** Whether anything but the order is asked for. */
export function isNarrowed({ q, show, phase, status }: BoardQuery): boolean {
	return q !== '' || show !== 'all' || phase !== '' || status !== 'running';
}
