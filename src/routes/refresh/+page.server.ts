import { HAZARDS } from '$lib/core/content/vocabulary';
import { dueInPool, ROUND_SIZE } from '$lib/core/training/round';
import { now } from '$lib/server/clock';
import { pools } from '$lib/server/content';
import { answersOf, recordsOf } from '$lib/server/training/training.repository';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { db, person, shop } }) => {
	const at = now();
	const answers = person ? await answersOf(db, { personId: person.id }) : [];
	const records = person ? await recordsOf(db, person.id) : [];
	return {
		at,
		zone: shop?.zone ?? 'UTC',
		roundSize: ROUND_SIZE,
		kinds: [...pools.values()].map((pool) => {
			const { hazard, title, questions, renewMonths, renewSource } = pool;
			return {
				kind: hazard,
				title,
				sign: HAZARDS[hazard].sign,
				questions: questions.length,
				renewMonths,
				renewSource,
				due: dueInPool(
					pool,
					answers.filter(({ kind }) => kind === hazard),
					at
				),
				expiresAt: records.find(({ kind }) => kind === hazard)?.expiresAt ?? null
			};
		})
	};
};
