import { TROUBLE_TITLES } from '../titles';
import { row, type StepRow } from './row';

/** Where no step is at work: paused, in trouble, ended. */
export const RESTING: Readonly<Record<string, StepRow>> = {
	paused: row('brief', 'Paused', (c) => `Paused: ${c.pausedFor ?? ''}`, 'job.resumed'),
	troubled: row(
		'brief',
		(c) => (c.trouble ? TROUBLE_TITLES[c.trouble.id] : 'Trouble'),
		(c) => c.trouble?.note ?? '',
		'trouble.mended',
		'test.judged',
		'trouble.decided'
	),
	handedOver: row('hand-over', 'Handed over', 'The mold is in use. Its record is closed.'),
	abandoned: row('hand-over', 'Abandoned', (c) => `Given up: ${c.endReason ?? ''}`),
	rejected: row('mold-accepted', 'Rejected', (c) => `Rejected at inspection: ${c.endReason ?? ''}`)
};
