import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_TIME_S } from '../quantity/limits';

export const arrheniusLaw: Law = {
	id: 'arrhenius',
	name: 'Cure speed and temperature, from two times',
	formula: 't_2 = t_1 · exp[(E_a / R) · (1/T_2 − 1/T_1)]',
	source: 'Arrhenius 1889 (textbook form, from memory); R: CODATA 2018, exact',
	validity:
		'−10 to 80 °C and inside the data sheet’s range; one reaction governs; two data-sheet times at least 3 K apart'
};

export const q10Law: Law = {
	id: 'q10',
	name: 'Cure speed and temperature, by rule',
	formula: 't_2 = t_1 · Q10^((T_1 − T_2) / 10 K)',
	source:
		'textbook rule (from memory); Q10 = 2 unless the data sheet says: common practice, no source',
	validity: 'within 15 K of the data-sheet temperature; a rule of thumb, end every wait in a test'
};

/** Cure speed doubles with ten kelvin; common practice, no source. */
export const DEFAULT_Q10 = 2;
/** kJ/(mol·K); CODATA 2018, exact: N_A · k. */
export const GAS_CONSTANT_KJ = 0.008_314_462_618;
/** Zero of the Celsius scale in kelvin; exact by definition, SI Brochure, 9th ed. */
export const KELVIN_OFFSET = 273.15;
/** Where any of this may be used, in °C; common practice, no source. */
export const CURE_RANGE_C = { min: -10, max: 80 } as const;

export type CureRate =
	{ kind: 'arrhenius'; activationEnergyKjPerMol: number } | { kind: 'q10'; factor: number };

export interface TimeAt {
	timeS: number;
	temperatureC: number;
}

function assertTimeAt({ timeS, temperatureC }: TimeAt): void {
	assertWithin(timeS, 1, MAX_TIME_S, 'timeS');
	assertWithin(temperatureC, CURE_RANGE_C.min, CURE_RANGE_C.max, 'temperatureC');
}

/** @throws RangeError for an activation energy outside 1 to 300 kJ/mol or a Q10 outside 1 to 6 */
export function assertCureRate(rate: CureRate): void {
	if (rate.kind === 'q10') assertWithin(rate.factor, 1, 6, 'Q10 factor');
	else assertWithin(rate.activationEnergyKjPerMol, 1, 300, 'activationEnergyKjPerMol');
}

/**
 * Apparent activation energy from two times of the same material, in kJ/mol.
 *
 * @throws RangeError when the temperatures are less than 3 K apart, or when the warmer time is not
 *   clearly the shorter one
 */
export function activationEnergyKjPerMol(points: readonly [TimeAt, TimeAt]): number {
	points.forEach(assertTimeAt);
	const [cold, warm] =
		points[0].temperatureC < points[1].temperatureC ? points : [points[1], points[0]];
	assertWithin(warm.temperatureC - cold.temperatureC, 3, 90, 'difference of temperatures');
	const inverseK =
		1 / (cold.temperatureC + KELVIN_OFFSET) - 1 / (warm.temperatureC + KELVIN_OFFSET);
	const energy = (GAS_CONSTANT_KJ * Math.log(cold.timeS / warm.timeS)) / inverseK;
	assertWithin(energy, 1, 300, 'activation energy from the two times, in kJ/mol');
	return energy;
}

/** The rate that a data sheet supports: Arrhenius from two times, else Q10 with its default. */
export function cureRateFrom(points: readonly TimeAt[], factor = DEFAULT_Q10): CureRate {
	const [first, second] = points;
	return first && second
		? { kind: 'arrhenius', activationEnergyKjPerMol: activationEnergyKjPerMol([first, second]) }
		: { kind: 'q10', factor };
}

/** Speed of cure at any temperature against that at the reference, without a range check. */
export function rawSpeedFactor(temperatureC: number, referenceC: number, rate: CureRate): number {
	if (rate.kind === 'q10') return rate.factor ** ((temperatureC - referenceC) / 10);
	const inverseK = 1 / (referenceC + KELVIN_OFFSET) - 1 / (temperatureC + KELVIN_OFFSET);
	return Math.exp((rate.activationEnergyKjPerMol / GAS_CONSTANT_KJ) * inverseK);
}

/**
 * How much faster it cures than at the reference temperature: 2 is twice as fast.
 *
 * @throws RangeError for a temperature outside −10 to 80 °C or a rate out of range
 */
export function speedFactor(given: {
	temperatureC: number;
	referenceC: number;
	rate: CureRate;
}): number {
	const { temperatureC, referenceC, rate } = given;
	assertWithin(temperatureC, CURE_RANGE_C.min, CURE_RANGE_C.max, 'temperatureC');
	assertWithin(referenceC, CURE_RANGE_C.min, CURE_RANGE_C.max, 'referenceC');
	assertCureRate(rate);
	return rawSpeedFactor(temperatureC, referenceC, rate);
}

/**
 * A data-sheet time at another temperature, in seconds.
 *
 * @param sheet - time and the temperature it holds for
 * @throws RangeError for a time or temperature out of range
 */
export function timeAtTemperatureS(sheet: TimeAt, temperatureC: number, rate: CureRate): number {
	assertTimeAt(sheet);
	return sheet.timeS / speedFactor({ temperatureC, referenceC: sheet.temperatureC, rate });
}
