import { placesToLookAt } from '../places-to-look-at';
import { holdRows } from './hold-rows';
import { row, type StepRow } from './row';

/** From opening to the handover. */
export const FINISHING: Readonly<Record<string, StepRow>> = {
	open: row(
		'open',
		'Open the mold',
		'Unscrew the board, wedge the frame up evenly all round. Never lever on the glove.',
		'mold.opened'
	),
	mark: row(
		'mark',
		'Mark glove and shell',
		'Mark the same side on both, so that they go back the same way round. A plain parting line: add keys.',
		'mold.marked'
	),
	peel: row('peel', 'Peel the glove', 'Start at a corner; slowly, all the way.', 'glove.peeled'),
	wash: row(
		'wash',
		'Wash',
		'Wash the film off with water, let the glove dry flat.',
		'glove.washed'
	),
	inspect: row(
		'inspect',
		'Inspect',
		(c) =>
			`${placesToLookAt(c).length > 0 ? 'Look first where it had trouble. Then all' : 'Look at all'} of it in raking light: voids, bubbles, tears, thin spots. Measure what matters.`,
		'mold.inspected'
	),
	...holdRows('moldAccepted'),
	'pour.pouring': row(
		'first-pour',
		'First pour',
		(c) =>
			`Glove in its shell, level. Pour ${Math.round(c.plan.pour.massG)} g of ${c.plan.pour.materialName}.`,
		'part.poured'
	),
	'pour.setting': row(
		'first-pour',
		'First part',
		'Let it set as its sheet says, then release it and look.',
		'part.released'
	),
	handover: row(
		'hand-over',
		'Hand over',
		'Say how it is stored, repaired, and when it is worn out.',
		'mold.handedOver'
	)
};
