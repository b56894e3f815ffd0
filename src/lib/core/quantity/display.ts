import { G_PER_LB, G_PER_OZ } from './customary';
import { displayScale, type UnitSystem } from './display-scales';
import { durationStepS, durationText } from './duration-text';
import type { Unit } from './unit';

export type { UnitSystem };

/** A core value as a person reads it. `value` is not rounded; `text` is. */
export interface DisplayValue {
	value: number;
	unit: string;
	text: string;
}

/** Making a formatter costs far more than using one, and a plan words hundreds of numbers. */
const formatters = new Map<number, Intl.NumberFormat>();

function significant(digits: number): Intl.NumberFormat {
	const known = formatters.get(digits);
	if (known) return known;
	const made = new Intl.NumberFormat('en-US', { maximumSignificantDigits: digits });
	formatters.set(digits, made);
	return made;
}

const money = new Intl.NumberFormat('en-US', {
	minimumFractionDigits: 2,
	maximumFractionDigits: 2
});

/**
 * "1,234", "12.3", "0.0205": at least `digits` significant and `decimals` after the point (without
 * trailing zeros); whole numbers are never cut.
 */
export function numberText(value: number, digits = 3, decimals = 0): string {
	if (!Number.isFinite(value)) return '—';
	const wholeDigits = value === 0 ? 1 : Math.floor(Math.log10(Math.abs(value))) + 1;
	const shown = Math.min(15, Math.max(digits, wholeDigits + decimals));
	const text = significant(shown).format(value);
	return text.replace(/^-/, '−').replace(/^−0$/, '0');
}

/** No space before a percent or degree sign, as American English sets them. */
function joined(number: string, unit: string): string {
	if (unit === '') return number;
	return unit === '%' || unit === '°' ? number + unit : `${number} ${unit}`;
}

function moneyText(value: number): string {
	return money.format(value).replace(/^-/, '−');
}

/** Grams as the scale shows them, with the customary mass beside them. */
function massWithOunces(valueG: number, text: string): string {
	const inOunces = Math.abs(valueG) < G_PER_LB;
	const customary = inOunces ? valueG / G_PER_OZ : valueG / G_PER_LB;
	return `${text} (${numberText(customary)} ${inOunces ? 'oz' : 'lb'})`;
}

/**
 * A core value in the unit and with the digits that suit its size.
 *
 * SI or US customary; factors are exact (see `customary.ts`). A mass below 10 kg stays in grams in
 * both systems, because that is what the scale reads. Values that are not finite read "—".
 * `beside`: another value of the sentence, whose unit is taken, so that the two can be compared.
 */
export function displayValue(
	value: number,
	unit: Unit,
	system: UnitSystem,
	beside = value
): DisplayValue {
	if (!Number.isFinite(value)) return { value, unit, text: '—' };
	if (unit === 's') return { value, unit, text: durationText(value) };
	if (unit === 'currency') return { value, unit: '', text: moneyText(value) };
	if (unit === 'currency/h')
		return { value, unit: 'per hour', text: `${moneyText(value)} per hour` };

	const scale = displayScale(beside, unit, system);
	const shown = scale.convert(value);
	const text = joined(numberText(shown, scale.digits, scale.decimals), scale.unit);
	const isGramsInUs = system === 'US' && scale.unit === 'g';
	return { value: shown, unit: scale.unit, text: isGramsInUs ? massWithOunces(value, text) : text };
}

/** The text of `displayValue`: number, space and unit, ready for a screen or a print. */
export function displayQuantity(
	value: number,
	unit: Unit,
	system: UnitSystem,
	beside = value
): string {
	return displayValue(value, unit, system, beside).text;
}

/** A rough temperature in whole degrees of the shop's scale, rounded there and nowhere before. */
export function wholeDegrees(temperatureC: number, system: UnitSystem): string {
	const { convert, unit } = displayScale(temperatureC, 'C', system);
	return joined(numberText(Math.round(convert(temperatureC))), unit);
}

/**
 * A likely range as a person reads it, rounded outward to the digits of `displayValue`: what is shown is
 * never narrower than what was computed.
 */
export function displayRange(
	low: number,
	high: number,
	unit: Unit,
	system: UnitSystem
): { low: string; high: string } {
	return {
		low: displayQuantity(outward(low, unit, system, 'floor'), unit, system),
		high: displayQuantity(outward(high, unit, system, 'ceil'), unit, system)
	};
}

/** The nearest value, downward or upward, that its own text shows exactly. */
function outward(value: number, unit: Unit, system: UnitSystem, way: 'floor' | 'ceil'): number {
	if (!Number.isFinite(value) || value === 0) return value;
	if (unit === 's') return outwardDuration(value, way);
	const scale = displayScale(value, unit, system);
	const shown = scale.convert(value);
	if (shown === 0) return value;
	const wholeDigits = Math.floor(Math.log10(Math.abs(shown))) + 1;
	const digits =
		unit === 'currency' ? wholeDigits + 2 : Math.max(scale.digits, wholeDigits + scale.decimals);
	const step = 10 ** (wholeDigits - Math.min(15, digits));
	// Scales are straight lines, so a step on the scale is this many core units.
	const perStep = step / (scale.convert(1) - scale.convert(0));
	const counted = Number((shown / step).toPrecision(12));
	return value + (Math[way](counted) - counted) * perStep;
}

function outwardDuration(valueS: number, way: 'floor' | 'ceil'): number {
	const step = durationStepS(valueS);
	return Math[way](valueS / step) * step;
}
