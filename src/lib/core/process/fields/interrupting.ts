import { PHASE_TITLES, TROUBLE_TITLES } from '../titles';
import { troublesIn, waysBackFrom, type WayBack } from '../troubles';
import { choice, longText, note, text, type FieldMakers } from './field';

const WAYS: Record<'resume' | 'redo coat', string> = {
	resume: 'Go on where we were',
	'redo coat': 'Lay this coat or round again'
};

function wayBackLabel(way: WayBack): string {
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
		longText('note', 'What you see', true)
	],
	'trouble.mended': (c) => [
		longText('how', 'What was done', true),
		choice(
			'wayBack',
			'How work goes on',
			waysBackFrom(c).map((way): [string, string] => [way, wayBackLabel(way)])
		)
	],
	'job.paused': () => [longText('reason', 'Why', true)],
	'job.takenOver': () => [note],
	'job.abandoned': () => [longText('reason', 'Why the job is given up', true)],
	'act.undone': () => [longText('reason', 'What was wrong with the entry', true)]
};
