import type { Pool } from '$lib/core/content/library';
import { drawRound, type AskedQuestion } from '$lib/core/training/round';
import { expiryOf } from '$lib/core/training/training';
import type { Db } from '../database';
import { exclusively } from '../dialect';
import { isDue } from './due-round';
import { answersOf, expiryOfRound, insertRound } from './training.repository';

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
 * Marks a round and keeps it under the person's name. Sent twice, it is kept once and answered from what was
 * kept. A question without an answer counts as missed.
 *
 * @returns 'another round' when it is not the one that this person has to answer now: another was answered in
 *   between, this one was answered otherwise before, or what was shown is not what is drawn
 */
export async function takeRound(db: Db, taking: Taking): Promise<MarkedRound | 'another round'> {
	const { personId } = taking;
	if (personId === null) return mark(taking, []);
	return exclusively(db, `training ${personId}`, async (trx) => {
		const { pool, round, at } = taking;
		const kind = pool.hazard;
		const all = await answersOf(trx, { personId, kind });
		const before = all.filter((answer) => answer.round !== round);
		if (!isDue(taking, { personId, kind, before })) return 'another round';
		const marked = mark(taking, before);
		if (marked === 'another round') return marked;
		const answers = marked.questions.map(({ id, chosen, right }) => ({
			question: id,
			isRight: chosen === right
		}));
		const kept = all.filter((answer) => answer.round === round);
		if (kept.length > 0) {
			return isSame(kept, answers)
				? { ...marked, expiresAt: await expiryOfRound(trx, round) }
				: 'another round';
		}
		const expiresAt = marked.isPassed ? expiryOf(at, pool.renewMonths) : null;
		const textHash = pool.hash;
		await insertRound(trx, { round, personId, kind, at, textHash, answers, expiresAt });
		return { ...marked, expiresAt };
	});
}

interface Given {
	question: string;
	isRight: boolean;
}

function isSame(kept: readonly Given[], answers: readonly Given[]): boolean {
	const right = new Map(kept.map(({ question, isRight }) => [question, isRight]));
	return (
		kept.length === answers.length &&
		answers.every(({ question, isRight }) => right.get(question) === isRight)
	);
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
