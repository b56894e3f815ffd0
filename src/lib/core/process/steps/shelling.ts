import { batchTitle, endLine, laidLine, layersLine, materialName, whoDecides } from './batch-words';
import { holdRows } from './hold-rows';
import { row, type StepRow } from './row';

/** From the cured glove to the hard shell. */
export const SHELLING: Readonly<Record<string, StepRow>> = {
	gloveCure: row(
		'glove-cure',
		'Glove cure',
		'Leave it alone, warm and dry. Then test before anything touches it.',
		'glove.tested'
	),
	trim: row(
		'trim',
		'Trim the glove',
		'Free the glove from the frame with a thin blade, lift the frame, trim the edge square and clean.',
		'glove.trimmed'
	),
	'shellRelease.waxing': row(
		'shell-release',
		'Wax the back of the glove',
		'Cover all of it. No buffing: coverage matters, gloss does not.',
		'glove.waxed'
	),
	'shellRelease.refitting': row(
		'shell-release',
		'Refit the frame',
		'Set the frame back and screw it down. A tight fit shows low shrinkage.',
		'frame.refitted'
	),
	...holdRows('readyForShell'),
	'shell.weighing': row(
		'weigh-and-mix',
		batchTitle,
		(c) =>
			laidLine(c) +
			(endLine(c, 'round') || `Weigh a small cup of ${materialName(c)}; it sets fast.`),
		'cup.weighed',
		'coat.finished'
	),
	'shell.weighed': row(
		'weigh-and-mix',
		batchTitle,
		'On ratio? Mix it briskly, sides and bottom.',
		'cup.mixed',
		'cup.weighed',
		'cup.discarded'
	),
	'shell.mixed': row(
		'shell',
		batchTitle,
		(c) => `The pot life runs. Press it on, keep corners and walls thick. ${layersLine(c)}`,
		'cup.applied',
		'cup.weighed',
		'cup.mixed',
		'cup.discarded'
	),
	'shell.missed': row(
		'abrade',
		'Shell: the last round is hard',
		(c) => `Abrade where the next round goes, wipe it, let it dry. ${whoDecides(c, 'shell')}`,
		'surface.abraded'
	),
	'shell.deciding': row(
		'abrade',
		'Shell: a decision is needed',
		'The deviation waits for a supervisor. Do not lay more.',
		'deviation.decided'
	),
	'shell.finishing': row(
		'shell',
		'Finish the shell',
		'Gauge the thinnest place, fill the corners, build the feet level.',
		'shell.finished',
		'coat.added'
	),
	shellCure: row('shell-cure', 'Shell cure', 'Leave it until it is cold and hard.', 'shell.tested'),
	...holdRows('readyToOpen')
};
