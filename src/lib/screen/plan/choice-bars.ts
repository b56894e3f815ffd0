import type { Plan } from '$lib/core/plan/plan';
import { displayQuantity, numberText, type UnitSystem } from '$lib/core/quantity/display';
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
	const mass = displayScale(largest, 'g', units);
	const isMass = key === 'rubberG';
	const unit = isMass ? mass.unit : currency;
	const convert = (value: number) => (isMass ? mass.convert(value) : value);
	// All three in the unit of the axis, so that they can be compared as numbers too.
	const text = (value: number) =>
		`${isMass ? numberText(convert(value), 3, 1) : displayQuantity(value, 'currency', units)} ${unit}`;
	const bars = estimates.map((each) => ({
		label: each.process,
		value: convert(each[key]),
		text: text(each[key]),
		isChosen: each.process === 'glove'
	}));
	const what = isMass ? 'Rubber' : 'Materials and labor';
	return {
		bars,
		unit,
		summary: `${what}: ${bars.map((bar) => `${bar.label} ${bar.text}`).join(', ')}.`
	};
}
