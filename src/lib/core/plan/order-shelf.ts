import { shelfLife, shelfLifeLaw } from '../laws/shelf-life';
import type { Sheet } from '../materials/sheet';
import type { Plan } from './plan';
import { assumed, computed, entered, fromSheet, traced, warn, type Draft } from './trace';

const DAY_S = 86_400;

/** What is left of a lot's shelf life on the day the job ends, with its warning. */
export function shelfOf(
	draft: Draft,
	{ id, name, shelfLifeDays }: Sheet,
	finishAt: string,
	path: string
): Pick<Plan['order'][number], 'shelf'> {
	if (!shelfLifeDays) return {};
	const { lots, startAt } = draft.inputs;
	const lot = lots?.find(({ materialId }) => materialId === id);
	const madeAt = lot?.madeAt ?? startAt;
	const { leftS, state } = shelfLife({
		madeAt,
		shelfLifeS: shelfLifeDays * DAY_S,
		usedAt: finishAt
	});
	traced(draft, `${path}.shelf.leftS`, {
		label: `${name}: shelf life left when the job ends`,
		value: leftS,
		unit: 's',
		law: shelfLifeLaw,
		inputs: [
			lot
				? entered('made', 'lot made', madeAt, 'text')
				: assumed(
						'made',
						'lot taken as made on the day the job begins (common practice, no source)',
						madeAt,
						'text'
					),
			fromSheet('shelf life', 'unopened', shelfLifeDays * DAY_S, 's'),
			computed('use', 'job ends, days after it begins', daysBetween(startAt, finishAt), 'count')
		]
	});
	if (state === 'over') {
		const text = lot
			? `${name}: this lot is past its ${shelfLifeDays} days before the job ends. Take a fresh lot.`
			: `${name} keeps ${shelfLifeDays} days, less than the job takes: buy it when it is needed.`;
		warn(draft, lot ? 'refuse' : 'warn', 'shelf-life', 'order', text);
	} else if (state === 'ending' && lot) {
		const text = `${name}: this lot has ${Math.floor(leftS / DAY_S)} days left when the job ends; mix a test cup first.`;
		warn(draft, 'warn', 'shelf-life', 'order', text);
	}
	return { shelf: { leftS, state, isAssumedFresh: !lot } };
}

const daysBetween = (fromAt: string, toAt: string): number =>
	(Date.parse(toAt) - Date.parse(fromAt)) / 1000 / DAY_S;
