import { error, redirect } from '@sveltejs/kit';
import { asBuilt } from '$lib/core/process/as-built';
import { openDeviations, waitedFor } from '$lib/core/process/changes/deviations';
import { ENTRY_LABELS } from '$lib/core/process/entry-labels';
import { entryWords } from '$lib/core/process/entry-words';
import { wayBackLabel } from '$lib/core/process/fields/interrupting';
import { HOLDS } from '$lib/core/process/holds';
import { isSince } from '$lib/core/process/context';
import { contextOf } from '$lib/core/process/job';
import { allowedTypes } from '$lib/core/process/refusal';
import { isReadShort } from '$lib/core/process/read-short';
import { sectionOfJob } from '$lib/core/process/section-of-job';
import { PHASE_TITLES, TROUBLE_TITLES } from '$lib/core/process/titles';
import { TROUBLE_ANSWERS } from '$lib/core/process/trouble-answers';
import { answersAsked, waysBackFrom } from '$lib/core/process/troubles';
import { takenBackBySupervisor } from '$lib/core/process/undo';
import { unfitToEnd, unfitToSign } from '$lib/core/process/unfit-to-sign';
import { isEnteredLater } from '$lib/screen/record/entered-later';
import { finishOfJob } from '$lib/screen/record/finish-of-job';
import { plannedFigures } from '$lib/screen/record/planned-figures';
import { newActId } from '$lib/server/act-id';
import { now } from '$lib/server/clock';
import { briefings, steps } from '$lib/server/content';
import type { StoredEvent } from '$lib/server/event-rows';
import { jobOrError, namesById } from '$lib/server/job-or-error';
import { listPeople, maySign } from '$lib/server/people.repository';
import { signFromForm } from '$lib/server/sign-form';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, depends }) => {
	depends('gw:job');
	const { db, shop, person } = locals;
	const { state, log, plan, headSeq } = await jobOrError(db, params.id);
	const c = contextOf(state);
	const allowed = allowedTypes(state);
	const people = await listPeople(db);
	const waiting = waitedFor(c.deviations);
	const struck = takenBackBySupervisor(state);
	const built = asBuilt(state, log);
	const hold = allowed.includes('hold.signed') ? c.hold : null;
	const text = hold && steps.get(HOLDS[hold].slug);
	const signers = people.filter((p) => !p.retired && maySign(p) && !c.workers.includes(p.id));

	return {
		jobId: params.id,
		title: state.title,
		seq: headSeq,
		actId: newActId(),
		now: now(),
		zone: shop?.zone ?? 'UTC',
		names: await namesById(db),
		hold: hold && {
			id: hold,
			title: HOLDS[hold].title,
			sendBack: HOLDS[hold].sendBack.map((to) => ({ value: to, label: PHASE_TITLES[to] })),
			unfit: unfitToSign(c),
			requestedAt: c.holdRequestedAt,
			note: noteOf(log, hold),
			checks: text ? text.checks : [],
			html: text ? text.html : ''
		},
		/** `isWaitedFor`: work stands still for it; the others are decided with the next signature. */
		openDeviations: openDeviations(c.deviations).map((deviation) => ({
			...deviation,
			isWaitedFor: deviation === waiting
		})),
		trouble: c.trouble && {
			title: TROUBLE_TITLES[c.trouble.id],
			place: c.trouble.place,
			note: c.trouble.note,
			by: c.trouble.by,
			at: c.trouble.at,
			unfit: unfitToEnd(c),
			asks: isSince(c, 6)
				? answersAsked(c.trouble.id).map((name) => ({
						name,
						label: TROUBLE_ANSWERS[name].asks,
						isText: name === 'seenBy'
					}))
				: [],
			waysBack: waysBackFrom(c).map((way) => ({ value: way, label: wayBackLabel(way, c) }))
		},
		/** Each waits for its own word, after that one. */
		troublesAfter: [...c.troublesBefore]
			.reverse()
			.map(({ id, at, by, place, note }) => ({ title: TROUBLE_TITLES[id], at, by, place, note })),
		takeBack: struck && {
			id: struck.id,
			label: ENTRY_LABELS[struck.event.type],
			words: entryWords(struck.event),
			by: struck.event.by,
			at: struck.event.at
		},
		mayReject: allowed.includes('mold.rejected'),
		mayDecide: allowed.includes('deviation.decided') && waiting !== null,
		signers: signers.map(({ id, name, role }) => ({ id, name, role })),
		mySignerId: signers.find(({ id }) => id === person?.id)?.id ?? '',
		workers: c.workers,
		section: sectionOfJob(c),
		bridging: plan.bridging ?? null,
		plannedShellMm: plan.shell.thicknessMm,
		planned: plannedFigures(plan),
		built,
		/** Briefings that were open for much less time than reading them takes. */
		readShort: built.briefings.flatMap(({ person, slug, openS }) => {
			const text = briefings.get(slug);
			return text && isReadShort({ openS, readMin: text.readMin })
				? [{ person, title: text.title, openS: openS ?? 0, readMin: text.readMin }]
				: [];
		}),
		enteredLater: log.filter(isLater).map(({ seq, event, recordedAt }) => ({
			seq,
			at: event.at,
			recordedAt,
			by: event.by,
			label: ENTRY_LABELS[event.type]
		})),
		finish: finishOfJob(state)
	};
};

function isLater({ event, recordedAt }: StoredEvent): boolean {
	return isEnteredLater({ at: event.at, recordedAt });
}

function noteOf(log: Awaited<ReturnType<typeof jobOrError>>['log'], hold: string): string {
	const asked = log.findLast(({ event }) => event.type === 'hold.requested' && event.hold === hold);
	return asked?.event.type === 'hold.requested' ? (asked.event.note ?? '') : '';
}

export const actions: Actions = {
	default: async ({ locals, params, request, getClientAddress }) => {
		if (!locals.shop) error(401, 'Sign in first.');
		const answer = await signFromForm(locals.db, {
			jobId: params.id,
			zone: locals.shop.zone,
			address: getClientAddress(),
			form: await request.formData()
		});
		if ('signed' in answer) redirect(303, `/jobs/${params.id}`);
		return answer;
	}
};
