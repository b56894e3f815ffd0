import { error, fail, redirect } from '@sveltejs/kit';
import { HAZARDS } from '$lib/core/content/vocabulary';
import { isLocale, LOCALE_TITLES, LOCALES } from '$lib/core/language/locale';
import { dueInPool } from '$lib/core/training/round';
import { mayManage } from '$lib/screen/people/people-rights';
import { now } from '$lib/server/clock';
import { pools } from '$lib/server/content';
import { getPerson, setLocale } from '$lib/server/people.repository';
import { answersOf, recordsOf } from '$lib/server/training/training.repository';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { db, person: viewer }, params, url }) => {
	if (!viewer) error(401, 'Sign in first.');
	const isMe = viewer.id === params.id;
	if (!isMe && !mayManage(viewer)) {
		error(403, 'What somebody has learned is seen by themselves and by those who sign.');
	}
	const found = await getPerson(db, params.id);
	if (!found) error(404, 'There is nobody with this address here.');
	const at = now();
	const answers = await answersOf(db, { personId: found.id });
	const records = await recordsOf(db, found.id);
	const { id, name, role, retired } = found;
	return {
		at,
		isMe,
		isKept: url.searchParams.get('language') === 'kept',
		locale: found.locale,
		locales: LOCALES.map((value) => ({ value, label: LOCALE_TITLES[value] })),
		member: { id, name, role, retired },
		answered: answers.length,
		kinds: [...pools.values()].map((pool) => {
			const { hazard, title, questions, renewMonths } = pool;
			return {
				kind: hazard,
				title,
				sign: HAZARDS[hazard].sign,
				questions: questions.length,
				renewMonths,
				passedAt: records.find(({ kind }) => kind === hazard)?.passedAt ?? null,
				expiresAt: records.find(({ kind }) => kind === hazard)?.expiresAt ?? null,
				due: dueInPool(
					pool,
					answers.filter(({ kind }) => kind === hazard),
					at
				)
			};
		})
	};
};

export const actions: Actions = {
	language: async ({ locals: { db, person }, params, request }) => {
		if (person?.id !== params.id) return fail(403, { problem: 'Everybody chooses their own.' });
		const locale = (await request.formData()).get('locale');
		if (!isLocale(locale)) return fail(400, { problem: 'Choose one of the list.' });
		await setLocale(db, person.id, locale);
		redirect(303, `/people/${person.id}?language=kept`);
	}
};
