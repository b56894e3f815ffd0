import { assertWithin } from './assert-within';

/** What happens to a value that lies exactly between two multiples. */
export type HalfRule = 'half away from zero' | 'half to even';

/** Binary fractions make 12.35 / 0.1 fall just short of 123.5; twelve digits undo that. */
const QUOTIENT_DIGITS = 12;

function quotient(value: number, step: number, name: string): number {
	assertWithin(value, -1e12, 1e12, name);
	assertWithin(step, 1e-6, 1e6, 'step');
	return Number((value / step).toPrecision(QUOTIENT_DIGITS));
}

function multiple(count: number, step: number): number {
	return count === 0 ? 0 : Number((count * step).toPrecision(QUOTIENT_DIGITS));
}

/**
 * The multiple of `step` nearest to `value`.
 *
 * Source: ISO 80000-1:2009, annex B; rule B (half away from zero) unless told otherwise, rule A is
 * half to even. Round once, never in steps.
 *
 * @param step - rounding range, 0.000001 to 1,000,000, in the unit of `value`
 * @throws RangeError for a value beyond ±10¹² or a step out of range
 */
export function roundTo(
	value: number,
	step: number,
	rule: HalfRule = 'half away from zero'
): number {
	const count = quotient(value, step, 'value');
	const magnitude = Math.abs(count);
	const below = Math.floor(magnitude);
	const rest = magnitude - below;
	const goesUp = rest > 0.5 || (rest === 0.5 && (rule !== 'half to even' || below % 2 === 1));
	return multiple(Math.sign(count) * (goesUp ? below + 1 : below), step);
}

/** The smallest multiple of `step` that is not below `value`; for amounts that must suffice. */
export function roundUpTo(value: number, step: number): number {
	return multiple(Math.ceil(quotient(value, step, 'value')), step);
}

/** The largest multiple of `step` that is not above `value`; for limits and closing windows. */
export function roundDownTo(value: number, step: number): number {
	return multiple(Math.floor(quotient(value, step, 'value')), step);
}

/** A mass as a scale of this readability shows it, in grams. */
export function roundToReadability(massG: number, readabilityG: number): number {
	return roundTo(massG, readabilityG);
}

/**
 * Standard uncertainty of a value after it was rounded to `step`, in the unit of both; rounding only
 * ever adds to it.
 *
 * Source: JCGM 100:2008 (GUM), F.2.2.1, a rectangular distribution of width `step`, 0.29 of it.
 */
export function uncertaintyAfterRounding(uncertainty: number, step: number): number {
	assertWithin(uncertainty, 0, 1e12, 'uncertainty');
	assertWithin(step, 1e-6, 1e6, 'step');
	return Math.hypot(uncertainty, step / Math.sqrt(12));
}
