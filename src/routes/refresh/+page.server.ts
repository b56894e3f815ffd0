import { HAZARDS } from '$lib/core/content/vocabulary';
import { ROUND_SIZE } from '$lib/core/training/round';
import { dueQuestions } from '$lib/core/training/spacing';
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
		kinds: [...pools.values()].map(({ hazard, title, questions, renewMonths, renewSource }) => ({
			kind: hazard,
			title,
			sign: HAZARDS[hazard].sign,
			questions: questions.length,
			renewMonths,
			renewSource,
			due: dueQuestions(
				answers.filter(({ kind }) => kind === hazard),
				at
			).length,
			expiresAt: records.find(({ kind }) => kind === hazard)?.expiresAt ?? null
		}))
	};
};
