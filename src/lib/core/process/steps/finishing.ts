import type { Plan } from '../../plan/plan';
import { durationText } from '../../quantity/duration-text';
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
		({ plan: { pour } }) =>
			`Glove in its shell, level. Pour ${Math.round(pour.massG)} g of ${pour.materialName}.${inTime(pour)}`,
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

/** In how many batches the pour is mixed, and until when each is in; nothing for a plan that cannot say. */
function inTime({ batches }: Plan['pour']): string {
	if (!batches) return '';
	const within = `within ${durationText(batches.workingS)} of its being mixed`;
	return batches.count === 1
		? ` Pour it ${within}.`
		: ` Mix it in ${batches.count} batches, one after another, and pour each ${within}.`;
}
