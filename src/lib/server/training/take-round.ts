import type { Pool } from '$lib/core/content/library';
import { drawRound, type AskedQuestion } from '$lib/core/training/round';
import { expiryOf } from '$lib/core/training/training';
import type { Db } from '../database';
import { exclusively } from '../dialect';
import { answersOf, insertRound } from './training.repository';

export interface Taking {
	pool: Pool;
	/** Null for a visitor: the round is marked, and nothing is kept. */
	personId: string | null;
	/** The round's id and instant, as it was drawn. */
	round: string;
	drawnAt: string;
	/** Ids of the questions that were shown, with blanks between. */
	ids: string;
	at: string;
	/** Index of the answer chosen, question by question; null where none was. */
	chosen: (questions: readonly AskedQuestion[]) => Array<number | null>;
}

export interface MarkedRound {
	questions: Array<AskedQuestion & { chosen: number | null }>;
	right: number;
	/** Every question right. */
	isPassed: boolean;
	/** Until when the record counts that was written for it. */
	expiresAt: string | null;
}

/**
 * Marks a round and keeps it under the person's name. Sent twice, it is kept once. A question without an
 * answer counts as missed.
 *
 * @returns 'another round' when what was shown is not what would be drawn: the person has answered in between
 */
export async function takeRound(db: Db, taking: Taking): Promise<MarkedRound | 'another round'> {
	const { personId } = taking;
	if (personId === null) return mark(taking, []);
	return exclusively(db, `training ${personId}`, async (trx) => {
		const { pool, round, at } = taking;
		const all = await answersOf(trx, { personId, kind: pool.hazard });
		const marked = mark(
			taking,
			all.filter((answer) => answer.round !== round)
		);
		if (marked === 'another round') return marked;
		const isKept = all.some((answer) => answer.round === round);
		const expiresAt = marked.isPassed ? expiryOf(at, pool.renewMonths) : null;
		if (!isKept) {
			await insertRound(trx, {
				round,
				personId,
				kind: pool.hazard,
				at,
				textHash: pool.hash,
				answers: marked.questions.map(({ id, chosen, right }) => ({
					question: id,
					isRight: chosen === right
				})),
				expiresAt
			});
		}
		return { ...marked, expiresAt };
	});
}

function mark(
	{ pool, round, drawnAt, ids, chosen }: Taking,
	before: Parameters<typeof drawRound>[1]['answers']
): MarkedRound | 'another round' {
	const drawn = drawRound(pool, { answers: before, at: drawnAt, seed: round });
	if (drawn.map(({ id }) => id).join(' ') !== ids) return 'another round';
	const given = chosen(drawn);
	const questions = drawn.map((question, i) => ({ ...question, chosen: given[i] ?? null }));
	const right = questions.filter((question) => question.chosen === question.right).length;
	return { questions, right, isPassed: right === questions.length, expiresAt: null };
}
