import type { ProcessContext } from '../context';
import { PHASE_TITLES, TROUBLE_TITLES } from '../titles';
import { troublesIn, waysBackFrom, type WayBack } from '../troubles';
import { choice, longText, note, text, type FieldMakers } from './field';

const WAYS: Record<'resume' | 'redo coat', string> = {
	resume: 'Go on where we were',
	'redo coat': 'Lay this coat or round again'
};

/** A way back from the trouble at hand, as a person chooses it. */
export function wayBackLabel(way: WayBack, { trouble }: Pick<ProcessContext, 'trouble'>): string {
	if (trouble?.id === 'recoat-missed') return 'Go on: abrade, wipe, dry, then the next one';
	return way === 'resume' || way === 'redo coat' ? WAYS[way] : `Back to: ${PHASE_TITLES[way]}`;
}

/** What can come in between at any time. */
export const INTERRUPTING: FieldMakers = {
	'trouble.reported': (c) => [
		choice(
			'trouble',
			'What is wrong',
			troublesIn(c.phase).map((id): [string, string] => [id, TROUBLE_TITLES[id]])
		),
		text('place', 'Where on the mold', false),
		longText('note', 'What you see', false, 'Not needed when somebody is hurt or ill: help first.')
	],
	'test.judged': () => [
		choice('kind', 'What was made, away from the mold', [
			['test cup', 'Test cup: a small mixed cup, watched for foam'],
			['test patch', 'Test patch: left for its full cure time']
		]),
		choice('result', 'What it shows', [
			['good', 'Good: no foam, cures as it should'],
			['bad', 'Bad: foams, or stays soft or sticky']
		]),
		note
	],
	'trouble.mended': (c) => [
		longText('how', 'What was done', true),
		choice(
			'wayBack',
			'How work goes on',
			waysBackFrom(c).map((way): [string, string] => [way, wayBackLabel(way, c)])
		)
	],
	'job.paused': () => [longText('reason', 'Why', true)],
	'job.takenOver': () => [note],
	'job.abandoned': () => [longText('reason', 'Why the job is given up', true)],
	'act.undone': () => [longText('reason', 'What was wrong with the entry', true)]
};
