import type { Plan } from '$lib/core/plan/plan';
import { displayQuantity, type UnitSystem } from '$lib/core/quantity/display';
import { displayScale } from '$lib/core/quantity/display-scales';
import type { Bar } from '../plot/bar-layout';

type Estimate = NonNullable<Plan['choice']>['estimates'][number];

export interface BarSet {
	bars: Bar[];
	unit: string;
	summary: string;
}

/** One quantity of the three ways to build, on one scale; the glove is what this plan builds. */
export function choiceBars(
	estimates: readonly Estimate[],
	key: 'rubberG' | 'totalPrice',
	{ units, currency }: { units: UnitSystem; currency: string }
): BarSet {
	const largest = Math.max(...estimates.map((each) => each[key]));
	const { convert, unit } =
		key === 'rubberG'
			? displayScale(largest, 'g', units)
			: { convert: (value: number) => value, unit: currency };
	const text = (value: number) =>
		key === 'rubberG'
			? displayQuantity(value, 'g', units)
			: `${displayQuantity(value, 'currency', units)} ${currency}`;
	const bars = estimates.map((each) => ({
		label: each.process,
		value: convert(each[key]),
		text: text(each[key]),
		isChosen: each.process === 'glove'
	}));
	const what = key === 'rubberG' ? 'Rubber' : 'Materials and labor';
	return {
		bars,
		unit,
		summary: `${what}: ${bars.map((bar) => `${bar.label} ${bar.text}`).join(', ')}.`
	};
}
