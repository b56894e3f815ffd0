import { cupInPreparation, type ProcessContext, type TakenBack } from '../context';
import type { ProcessEvent } from '../events';
import { deviation } from './deviations';
import type { Change } from './work';

/** Tests whose finding is held against one of the same kind that was taken back. */
const TESTS: readonly ProcessEvent['type'][] = [
	'tack.tested',
	'thickness.measured',
	'glove.tested',
	'shell.tested',
	'test.judged'
];

/** What stays of an entry that is taken back, for the same act entered anew; null when nothing does. */
export function keptOf(event: ProcessEvent, c: ProcessContext): TakenBack | null {
	const said = foundBy(event, c);
	const metAt = event.type === 'cup.weighed' ? (cupInPreparation(c)?.metAt ?? null) : null;
	return said === null && metAt === null ? null : { type: event.type, said, metAt };
}

function foundBy(event: ProcessEvent, { plan }: ProcessContext): string | null {
	if (!TESTS.includes(event.type)) return null;
	if (event.type === 'thickness.measured') {
		const thinnestMm = Math.min(...event.points.map((point) => point.thicknessMm));
		return thinnestMm < plan.glove.leastMm ? 'too thin' : 'thick enough';
	}
	return 'result' in event ? event.result : null;
}

/** A test entered once more: found otherwise than the one taken back, it waits for a decision. */
export function enteredAnew(c: ProcessContext, e: ProcessEvent): Change {
	const before = c.takenBack.findLast(({ type, said }) => type === e.type && said !== null);
	if (!before) return {};
	const found = foundBy(e, c) ?? '';
	return {
		takenBack: c.takenBack.filter(({ type }) => type !== e.type),
		...(found === before.said
			? {}
			: {
					deviations: deviation(c, e, {
						key: 'testedAnew',
						given: { before: before.said ?? '', now: found }
					})
				})
	};
}
