import { contentHash } from '../content/content-hash';
import type { Pool } from '../content/library';
import { dueQuestions, standings, type Answered } from './spacing';

/** Questions in one round: few enough for a coffee. */
export const ROUND_SIZE = 6;

/** A question as it is asked: answers in an order of its own, the right one among them. */
export interface AskedQuestion {
	id: string;
	ask: string;
	answers: string[];
	/** Index of the right answer. */
	right: number;
	because: string;
	source: string;
	/** It was missed before and comes again. */
	isAgain: boolean;
}

interface Drawing {
	/** What this person answered before, in order of time. */
	answers: readonly Answered[];
	at: string;
	/** The round's own id: the same one draws the same round. */
	seed: string;
}

/** How many questions of a pool are to be asked again; what is no longer in it can't be learned any more. */
export function dueInPool(pool: Pool, answers: readonly Answered[], at: string): number {
	const asked = new Set(pool.questions.map(({ id }) => id));
	return dueQuestions(answers, at).filter((id) => asked.has(id)).length;
}

/**
 * A round from a pool: what was missed and is due, then what was never asked, then what was asked
 * longest ago. Chance comes from the seed alone, so that a round can be drawn again to be marked.
 */
export function drawRound(pool: Pool, { answers, at, seed }: Drawing): AskedQuestion[] {
	const due = dueQuestions(answers, at);
	const known = standings(answers);
	const lot = (id: string) => contentHash(`${seed} ${id}`);
	const rank = (id: string): string => {
		const place = due.indexOf(id);
		if (place >= 0) return `0 ${String(place).padStart(4, '0')}`;
		const askedAt = known.get(id)?.askedAt;
		return askedAt ? `2 ${askedAt} ${lot(id)}` : `1 ${lot(id)}`;
	};
	return pool.questions
		.toSorted((a, b) => (rank(a.id) < rank(b.id) ? -1 : 1))
		.slice(0, ROUND_SIZE)
		.map(({ id, ask, right, wrong, because, source }) => {
			const shown = [right, ...wrong].toSorted((a, b) =>
				lot(`${id} ${a}`) < lot(`${id} ${b}`) ? -1 : 1
			);
			const isAgain = due.includes(id);
			return { id, ask, answers: shown, right: shown.indexOf(right), because, source, isAgain };
		});
}
