import { randomUUID } from 'node:crypto';
import { error, fail } from '@sveltejs/kit';
import { z } from 'zod';
import { HAZARDS, type HazardId } from '$lib/core/content/vocabulary';
import { inShopUnits } from '$lib/core/plan/in-shop-units';
import { drawRound } from '$lib/core/training/round';
import { chosenIndex } from '$lib/screen/read/question-round';
import { now } from '$lib/server/clock';
import { pools } from '$lib/server/content';
import { dueRoundId } from '$lib/server/training/due-round';
import { takeRound } from '$lib/server/training/take-round';
import { answersOf, recordsOf } from '$lib/server/training/training.repository';
import type { Actions, PageServerLoad } from './$types';

/** What a round carries with it, so that it can be drawn again to be marked. */
const roundSchema = z.object({
	round: z.string().min(1).max(64),
	drawnAt: z.iso.datetime(),
	questions: z.string().max(400)
});

function poolOf(kind: string) {
	return pools.get(kind as HazardId) ?? error(404, 'There are no questions of this kind.');
}

export const load: PageServerLoad = async ({ locals: { db, person, shop }, params }) => {
	const pool = poolOf(params.kind);
	const drawnAt = now();
	const kind = pool.hazard;
	const answers = person ? await answersOf(db, { personId: person.id, kind }) : [];
	const round = person ? dueRoundId({ personId: person.id, kind, before: answers }) : randomUUID();
	const records = person ? await recordsOf(db, person.id) : [];
	const drawn = drawRound(pool, { answers, at: drawnAt, seed: round });
	return {
		kind,
		title: pool.title,
		html: pool.html,
		sign: HAZARDS[kind].sign,
		renewMonths: pool.renewMonths,
		renewSource: pool.renewSource,
		hash: pool.hash,
		of: pool.questions.length,
		zone: shop?.zone ?? 'UTC',
		expiresAt: records.find((record) => record.kind === kind)?.expiresAt ?? null,
		round,
		drawnAt,
		ids: drawn.map(({ id }) => id).join(' '),
		// Which answer is right stays here until the round is marked.
		questions: inShopUnits(
			drawn.map(({ ask, answers, isAgain }) => ({ ask, answers, isAgain })),
			shop?.units ?? 'SI'
		)
	};
};

export const actions: Actions = {
	default: async ({ locals: { db, person, shop }, params, request }) => {
		const pool = poolOf(params.kind);
		const form = await request.formData();
		const given = roundSchema.safeParse(Object.fromEntries(form));
		if (!given.success)
			return fail(400, { stale: 'The round came in incomplete. Here is a new one.' });
		const { round, drawnAt, questions: ids } = given.data;
		const taken = await takeRound(db, {
			pool,
			personId: person?.id ?? null,
			round,
			drawnAt,
			ids,
			at: now(),
			chosen: (questions) =>
				questions.map(({ answers }, i) => chosenIndex(form.get(`answer-${i}`), answers.length))
		});
		return taken === 'another round'
			? fail(409, {
					stale:
						'This round was answered already, or no longer fits what you answered since. Here is the one that comes now.'
				})
			: { marked: inShopUnits(taken, shop?.units ?? 'SI') };
	}
};
