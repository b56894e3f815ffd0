import { row, type StepRow } from './row';

/** Where no step is at work: paused, in trouble, ended. */
export const RESTING: Readonly<Record<string, StepRow>> = {
	paused: row(
		'brief',
		({ steps: { paused } }, c) => ({ title: paused.title, what: paused.what(c.pausedFor ?? '') }),
		'job.resumed'
	),
	troubled: row(
		'brief',
		({ steps, titles }, c) => ({
			title: c.trouble ? titles.troubles[c.trouble.id] : steps.trouble,
			what: c.trouble?.note ?? ''
		}),
		'trouble.mended',
		'test.judged',
		'trouble.decided',
		'cup.discarded'
	),
	handedOver: row('hand-over', ({ steps }) => steps.handedOver),
	abandoned: row('hand-over', ({ steps: { abandoned } }, c) => ({
		title: abandoned.title,
		what: abandoned.what(c.endReason ?? '')
	})),
	rejected: row('mold-accepted', ({ steps: { rejected } }, c) => ({
		title: rejected.title,
		what: rejected.what(c.endReason ?? '')
	}))
};
