import {
	addLine,
	batchTitle,
	endLine,
	laidLine,
	layersLine,
	materialName,
	whoDecides
} from './batch-words';
import { holdRows } from './hold-rows';
import { row, type StepRow } from './row';

/** From the cured glove to the hard shell. */
export const SHELLING: Readonly<Record<string, StepRow>> = {
	gloveCure: row('glove-cure', ({ steps }) => steps.gloveCure, 'glove.tested'),
	trim: row('trim', ({ steps }) => steps.trim, 'glove.trimmed'),
	'shellRelease.waxing': row('shell-release', ({ steps }) => steps.waxBack, 'glove.waxed'),
	'shellRelease.refitting': row('shell-release', ({ steps }) => steps.refit, 'frame.refitted'),
	...holdRows('readyForShell'),
	'shell.weighing': row(
		'weigh-and-mix',
		(w, c) => ({
			title: batchTitle(w, c),
			what:
				laidLine(w, c) +
				(endLine(w, c, 'Round') || w.steps.shell.weigh(materialName(w, c)) + addLine(w, c))
		}),
		'cup.weighed',
		'coat.finished'
	),
	'shell.weighed': row(
		'weigh-and-mix',
		(w, c) => ({ title: batchTitle(w, c), what: w.steps.shell.mix }),
		'cup.mixed',
		'cup.weighed',
		'cup.discarded'
	),
	'shell.mixed': row(
		'shell',
		(w, c) => ({ title: batchTitle(w, c), what: w.steps.shell.lay(layersLine(w, c)) }),
		'cup.applied',
		'cup.weighed',
		'cup.mixed',
		'cup.discarded'
	),
	'shell.missed': row(
		'abrade',
		(w, c) => ({
			title: w.steps.shell.missedTitle,
			what: w.steps.shell.abrade(whoDecides(w, c, 'shell'))
		}),
		'surface.abraded'
	),
	'shell.deciding': row(
		'abrade',
		({ steps: { shell } }) => ({ title: shell.decisionTitle, what: shell.decision }),
		'deviation.decided'
	),
	'shell.finishing': row(
		'shell',
		({ steps: { shell } }) => ({ title: shell.finishTitle, what: shell.finish }),
		'shell.finished',
		'coat.added'
	),
	shellCure: row('shell-cure', ({ steps }) => steps.shellCure, 'shell.tested'),
	...holdRows('readyToOpen')
};
