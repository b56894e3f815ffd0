import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const vaporPressureLaw: Law = {
	id: 'vapor-pressure-of-water',
	name: 'Saturation vapor pressure of water',
	formula: 'e_w = 610.94 Pa · exp[17.625·t / (243.04 + t)]',
	source: 'Alduchov and Eskridge 1996, J. Appl. Meteorol. 35, eq. 21 (Magnus form), within 0.4%',
	validity: 'over water, −40 to 50 °C'
};

export const dewPointLaw: Law = {
	id: 'dew-point',
	name: 'Dew point',
	formula: 'T_d = 243.04·γ / (17.625 − γ), γ = ln(RH) + 17.625·t / (243.04 + t)',
	source: 'Alduchov and Eskridge 1996, J. Appl. Meteorol. 35, eq. 21 solved for the temperature',
	validity: 'air −20 to 50 °C, humidity 1 to 100%'
};

export const surfaceMarginLaw: Law = {
	id: 'surface-margin',
	name: 'Surface above the dew point',
	formula: 'T_surface − T_d ≥ 3 K',
	source: 'working rule quoted with ISO 8502-4:2017, probability of condensation before coating',
	validity: 'surface temperature measured on the coldest place, air measured beside it'
};

const MAGNUS = { aPa: 610.94, b: 17.625, cC: 243.04 } as const;
/** Kelvin above the dew point; working rule quoted with ISO 8502-4:2017. */
export const SURFACE_MARGIN_K = 3;

export interface Air {
	temperatureC: number;
	humidityPct: number;
}

/** @throws RangeError for air outside −20 to 50 °C or a relative humidity outside 1 to 100 % */
export function assertAir({ temperatureC, humidityPct }: Air): void {
	assertWithin(temperatureC, -20, 50, 'temperatureC');
	assertWithin(humidityPct, 1, 100, 'humidityPct');
}

/**
 * Saturation vapor pressure over water, in pascals.
 *
 * @throws RangeError outside −40 to 50 °C
 */
export function saturationPressurePa(temperatureC: number): number {
	assertWithin(temperatureC, -40, 50, 'temperatureC');
	return MAGNUS.aPa * Math.exp((MAGNUS.b * temperatureC) / (MAGNUS.cC + temperatureC));
}

/** Partial pressure of water in this air, in pascals. */
export function waterVaporPressurePa(air: Air): number {
	assertAir(air);
	return (saturationPressurePa(air.temperatureC) * air.humidityPct) / 100;
}

/**
 * Temperature at which this air begins to leave dew, in °C; never above the air's own.
 *
 * @throws RangeError for air out of range
 */
export function dewPointC(air: Air): number {
	const gamma = Math.log(waterVaporPressurePa(air) / MAGNUS.aPa);
	return (MAGNUS.cC * gamma) / (MAGNUS.b - gamma);
}

/** Lowest surface temperature that keeps the margin above the dew point, in °C. */
export function lowestSurfaceC(air: Air): number {
	return dewPointC(air) + SURFACE_MARGIN_K;
}

/** How far the surface lies above the dew point, in kelvin, and whether that is enough. */
export function surfaceMargin(air: Air, surfaceC: number): { marginK: number; isEnough: boolean } {
	assertWithin(surfaceC, -40, 80, 'surfaceC');
	const marginK = surfaceC - dewPointC(air);
	return { marginK, isEnough: marginK >= SURFACE_MARGIN_K };
}
