import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const autocatalyticLaw: Law = {
	id: 'autocatalytic-cure',
	name: 'Cure that speeds itself up',
	formula: 'dα/dt = k · (α + α_0) · (1 − α)',
	source:
		'Sourour and Kamal 1976, Thermochim. Acta 14, 41–59: (k_1 + k_2·α^m)·(1 − α)^n with m = n = 1, α_0 = k_1/k_2',
	validity:
		'conversion α from 0 to 1; start term 0.001 to 1; fitted to one gel time, not to a calorimeter'
};

/** Start term; makes the speed peak well before the end, as gelling resins do; default, no source. */
export const START_TERM = 0.05;

/** dα/dt in 1/s. */
export function conversionRatePerS(
	conversion: number,
	kPerS: number,
	startTerm = START_TERM
): number {
	return kPerS * (conversion + startTerm) * (1 - conversion);
}

/**
 * Time to reach a conversion at constant temperature, in seconds; the closed form of the rate law.
 *
 * @throws RangeError for a conversion, rate or start term out of range
 */
export function timeToConversionS(given: {
	conversion: number;
	kPerS: number;
	startTerm?: number;
}): number {
	const { conversion, kPerS, startTerm = START_TERM } = given;
	assertWithin(conversion, 0, 0.999_999, 'conversion');
	assertWithin(kPerS, 1e-9, 100, 'kPerS');
	assertWithin(startTerm, 0.001, 1, 'startTerm');
	return (
		Math.log((conversion + startTerm) / (startTerm * (1 - conversion))) / (kPerS * (1 + startTerm))
	);
}
