import { assertWithin } from '../quantity/assert-within';
import { CM2_PER_FT2, G_PER_LB } from '../quantity/customary';
import type { Law } from '../quantity/figure';
import { KELVIN_OFFSET } from './cure-rate';
import { neverAllClear, type AirHazard, type NeverAllClear } from './never-all-clear';
import { GAS_CONSTANT, STANDARD_ATMOSPHERE_PA } from './ppm';

export const saturationLaw: Law = {
	id: 'saturation',
	name: 'Saturated vapor: the most that the air can hold',
	formula: 'ppm = 10⁶ · P / p, C = P · M / (R · T)',
	source: 'Dalton’s and the ideal gas law',
	validity: 'Pure liquid in still closed air; mist, spray and dust go above it.'
};

export const filmReleaseLaw: Law = {
	id: 'film-release',
	name: 'Vapor released by a film or a cup that dries',
	formula: 'ṁ = m · f / t',
	source: 'Mass balance; all solvent counted as evaporated in the time, common practice, no source',
	validity: 'Average over the time; the first minutes release more.'
};

export const poolReleaseLaw: Law = {
	id: 'pool-release',
	name: 'Vapor released by an open surface of liquid',
	formula: 'Q_R = 0.284 · u^0.78 · M^(2/3) · A · P / (82.05 · T), lb/min, m/s, ft², mmHg, K',
	source:
		'US EPA 1999, Risk Management Program Guidance for Offsite Consequence Analysis, appendix D (from memory)',
	validity:
		'Pool at air temperature, 0.5 to 5 m/s; in stiller air take 0.5, the safe side. Within a factor of two.'
};

/** How far off the release of a pool may be either way; stated with the law, from memory. */
export const POOL_RELEASE_FACTOR = 2;

/** Conventional millimeter of mercury; NIST SP 811 (2008), appendix B. */
export const PA_PER_MMHG = 133.322387;

/**
 * Concentration over the liquid when nothing more evaporates.
 *
 * @throws RangeError for a vapor pressure outside 0 to 1 atm
 */
export function saturatedVapor({
	vaporPressurePa,
	molarMassGPerMol,
	temperatureC,
	...hazard
}: AirHazard & {
	vaporPressurePa: number;
	molarMassGPerMol: number;
	temperatureC: number;
}): NeverAllClear & { ppm: number; mgPerM3: number } {
	assertWithin(vaporPressurePa, 0, STANDARD_ATMOSPHERE_PA, 'vaporPressurePa');
	assertWithin(molarMassGPerMol, 2, 2000, 'molarMassGPerMol');
	assertWithin(temperatureC, -20, 60, 'temperatureC');
	return {
		ppm: (1e6 * vaporPressurePa) / STANDARD_ATMOSPHERE_PA,
		mgPerM3:
			(1000 * vaporPressurePa * molarMassGPerMol) / (GAS_CONSTANT * (temperatureC + KELVIN_OFFSET)),
		...neverAllClear([hazard])
	};
}

/**
 * Average release while `appliedG` of a material dries, g/min.
 *
 * @param volatileFraction - share that evaporates, 0 to 1
 * @throws RangeError for impossible input
 */
export function filmReleaseGPerMin({
	appliedG,
	volatileFraction,
	overS
}: {
	appliedG: number;
	volatileFraction: number;
	overS: number;
}): number {
	assertWithin(appliedG, 0, 1e6, 'appliedG');
	assertWithin(volatileFraction, 0, 1, 'volatileFraction');
	assertWithin(overS, 1, 1e6, 'overS');
	return (appliedG * volatileFraction * 60) / overS;
}

/**
 * Release of an open cup, tray or wet surface, g/min.
 *
 * @throws RangeError outside 0.5 to 5 m/s, −20 to 60 °C or 0 to 1 atm
 */
export function poolReleaseGPerMin({
	areaCm2,
	airMPerS,
	vaporPressurePa,
	molarMassGPerMol,
	temperatureC
}: {
	areaCm2: number;
	airMPerS: number;
	vaporPressurePa: number;
	molarMassGPerMol: number;
	temperatureC: number;
}): number {
	assertWithin(areaCm2, 0, 1e6, 'areaCm2');
	assertWithin(airMPerS, 0.5, 5, 'airMPerS');
	assertWithin(vaporPressurePa, 0, STANDARD_ATMOSPHERE_PA, 'vaporPressurePa');
	assertWithin(molarMassGPerMol, 2, 2000, 'molarMassGPerMol');
	assertWithin(temperatureC, -20, 60, 'temperatureC');
	const lbPerMin =
		(0.284 *
			airMPerS ** 0.78 *
			Math.cbrt(molarMassGPerMol) ** 2 *
			(areaCm2 / CM2_PER_FT2) *
			(vaporPressurePa / PA_PER_MMHG)) /
		(82.05 * (temperatureC + KELVIN_OFFSET));
	return lbPerMin * G_PER_LB;
}
