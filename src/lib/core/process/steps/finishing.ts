import type { StepWords } from '../../language/en/steps';
import type { Plan } from '../../plan/plan';
import { durationText } from '../../quantity/duration-text';
import { placesToLookAt } from '../places-to-look-at';
import { holdRows } from './hold-rows';
import { row, type StepRow } from './row';

/** From opening to the handover. */
export const FINISHING: Readonly<Record<string, StepRow>> = {
	open: row('open', ({ steps }) => steps.open, 'mold.opened'),
	mark: row('mark', ({ steps }) => steps.mark, 'mold.marked'),
	peel: row('peel', ({ steps }) => steps.peel, 'glove.peeled'),
	wash: row('wash', ({ steps }) => steps.wash, 'glove.washed'),
	inspect: row(
		'inspect',
		({ steps: { inspect } }, c) => ({
			title: inspect.title,
			what: placesToLookAt(c).length > 0 ? inspect.troubleFirst : inspect.what
		}),
		'mold.inspected'
	),
	...holdRows('moldAccepted'),
	'pour.pouring': row(
		'first-pour',
		({ steps: { pour } }, { plan }) => ({
			title: pour.title,
			what:
				pour.what({ massG: Math.round(plan.pour.massG), material: plan.pour.materialName }) +
				inTime(plan.pour, pour)
		}),
		'part.poured'
	),
	'pour.setting': row(
		'first-pour',
		({ steps: { pour } }, { plan }) => ({
			title: pour.setTitle,
			what: plan.pour.melt ? pour.setMolten(durationText(plan.pour.melt.solidS)) : pour.set
		}),
		'part.released'
	),
	handover: row('hand-over', ({ steps }) => steps.handover, 'mold.handedOver')
};

/** In how many batches the pour is mixed, and until when each is in; nothing for a plan that cannot say. */
function inTime({ batches }: Plan['pour'], said: StepWords['pour']): string {
	if (!batches) return '';
	if (batches.workingS === undefined) {
		return batches.count === 1 ? '' : said.carried(batches.count);
	}
	const within = durationText(batches.workingS);
	return batches.count === 1 ? said.once(within) : said.batches({ n: batches.count, within });
}
