import type { PhaseId } from '../content/vocabulary';

/** One piece of the job in the order of the work. */
export interface Task {
	id: string;
	phase: PhaseId;
	title: string;
	kind: 'work' | 'wait';
	lengthS: number;
	people: number;
	/** Work that a window waits for: it starts when the wait is over, or before this many seconds after the wait began. */
	closesS: number | null;
}

export const MIN_S = 60;

/** Hands on each step; common practice, no source. Areas add their share. */
export const HANDS_S = {
	brief: 30 * MIN_S,
	pattern: 45 * MIN_S,
	sealPerM2: 15 * MIN_S,
	waxPerM2: 20 * MIN_S,
	filmPerM2: 10 * MIN_S,
	least: 5 * MIN_S,
	frame: 60 * MIN_S,
	hold: 10 * MIN_S,
	setUp: 5 * MIN_S,
	brushBack: 5 * MIN_S,
	thickness: 15 * MIN_S,
	trim: 60 * MIN_S,
	refit: 15 * MIN_S,
	open: 30 * MIN_S,
	mark: 5 * MIN_S,
	peel: 30 * MIN_S,
	wash: 20 * MIN_S,
	inspect: 30 * MIN_S,
	pour: 30 * MIN_S,
	release: 15 * MIN_S,
	handover: 20 * MIN_S
} as const;

/** Hands on an area, in whole minutes, never less than it takes to begin. */
export const overArea = (perM2S: number, areaCm2: number): number =>
	Math.ceil(Math.max(HANDS_S.least, (perM2S * areaCm2) / 10_000) / MIN_S) * MIN_S;

export const work = (
	phase: PhaseId,
	id: string,
	title: string,
	lengthS: number,
	people = 1
): Task => ({
	id,
	phase,
	title,
	kind: 'work',
	lengthS: Math.ceil(lengthS / MIN_S) * MIN_S,
	people,
	closesS: null
});
export const wait = (
	phase: PhaseId,
	id: string,
	title: string,
	lengthS: number,
	closesS: number | null = null
): Task => ({ id, phase, title, kind: 'wait', lengthS, people: 0, closesS });
