import { z } from 'zod';
import { HAZARD_IDS, type HazardId } from '$lib/core/content/vocabulary';
import type { Answered } from '$lib/core/training/spacing';
import type { TrainingRecord } from '$lib/core/training/training';
import type { Db } from '../database';

const kindSchema = z.enum(HAZARD_IDS);

/** What a person answered to the questions of one kind, in order of time. */
export async function answersOf(
	db: Db,
	{ personId, kind }: { personId: string; kind?: HazardId }
): Promise<Array<Answered & { kind: HazardId; round: string }>> {
	const rows = await db
		.selectFrom('training_answer')
		.select(['round', 'kind', 'question', 'is_right', 'answered_at'])
		.where('person_id', '=', personId)
		.$if(kind !== undefined, (query) => query.where('kind', '=', kind ?? ''))
		.orderBy('answered_at')
		.orderBy('round')
		.execute();
	return rows.map(({ round, kind: of, question, is_right, answered_at }) => ({
		round,
		kind: kindSchema.parse(of),
		question,
		isRight: is_right === 1,
		at: answered_at
	}));
}

/** Each person's newest record of each kind, by person. */
export async function recordsByPerson(db: Db): Promise<Map<string, TrainingRecord[]>> {
	const rows = await db
		.selectFrom('training_record')
		.select(['person_id', 'kind', 'passed_at', 'expires_at'])
		.orderBy('passed_at', 'desc')
		.execute();
	const byPerson = new Map<string, TrainingRecord[]>();
	for (const { person_id, kind, passed_at, expires_at } of rows) {
		const held = byPerson.get(person_id) ?? [];
		if (held.some((record) => record.kind === kind)) continue;
		const record = { kind: kindSchema.parse(kind), passedAt: passed_at, expiresAt: expires_at };
		byPerson.set(person_id, [...held, record]);
	}
	return byPerson;
}

/** The newest record of each kind that one person holds. */
export async function recordsOf(db: Db, personId: string): Promise<TrainingRecord[]> {
	return (await recordsByPerson(db)).get(personId) ?? [];
}

/** Until when training of one kind holds that a person had passed by `at`; undefined when there was none. */
export async function heldUntil(
	db: Db,
	{ kind, personId, at }: { kind: HazardId; personId: string; at: string }
): Promise<string | undefined> {
	const row = await db
		.selectFrom('training_record')
		.select((e) => e.fn.max('expires_at').as('expires_at'))
		.where('kind', '=', kind)
		.where('person_id', '=', personId)
		.where('passed_at', '<=', new Date(at).toISOString())
		.executeTakeFirst();
	return row?.expires_at ?? undefined;
}

/** Until when the record of one round counts; null when it was not passed. */
export async function expiryOfRound(db: Db, round: string): Promise<string | null> {
	const row = await db
		.selectFrom('training_record')
		.select('expires_at')
		.where('round', '=', round)
		.executeTakeFirst();
	return row?.expires_at ?? null;
}

export interface GivenRound {
	/** Its id, by which it was drawn. */
	round: string;
	personId: string;
	kind: HazardId;
	at: string;
	textHash: string;
	answers: Array<{ question: string; isRight: boolean }>;
	/** Until when it counts, when it was passed. */
	expiresAt: string | null;
}

/** Writes a round's answers, and its record when it was passed. The caller has looked that it is new. */
export async function insertRound(trx: Db, given: GivenRound): Promise<void> {
	const { round, personId, kind, at, textHash, answers, expiresAt } = given;
	await trx
		.insertInto('training_answer')
		.values(
			answers.map(({ question, isRight }) => ({
				round,
				question,
				person_id: personId,
				kind,
				is_right: isRight ? 1 : 0,
				answered_at: at,
				text_hash: textHash
			}))
		)
		.execute();
	if (expiresAt === null) return;
	await trx
		.insertInto('training_record')
		.values({
			round,
			person_id: personId,
			kind,
			passed_at: at,
			expires_at: expiresAt,
			text_hash: textHash
		})
		.execute();
}
