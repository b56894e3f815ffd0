import type { Law } from '../quantity/figure';
import { KELVIN_OFFSET } from './cure-rate';
import { waterVaporPressurePa, type Air } from './dew-point';
import { GAS_CONSTANT } from './ppm';

export const absoluteHumidityLaw: Law = {
	id: 'absolute-humidity',
	name: 'Water in the air',
	formula: 'ϱ_w = e · M_w / (R · T)',
	source: 'ideal gas law; M_w = 18.01528 g/mol (CIAAW), R: CODATA 2018, exact',
	validity: 'air −20 to 50 °C, humidity 1 to 100%; within 0.5% with the vapor pressure used'
};

export const moistureWarningLaw: Law = {
	id: 'moisture-warning',
	name: 'Air too damp for a urethane',
	formula: 'caution from 50% or 10 g/m³, stop from 75% or 18 g/m³',
	source: 'common practice, no source',
	validity: 'open cups and fresh coats of moisture-sensitive material; a test cup decides'
};

/** Molar mass of water; IUPAC/CIAAW standard atomic weights. */
const WATER_G_PER_MOL = 18.01528;

/** Thresholds at which moisture begins to foam a urethane; common practice, no source. */
export const MOISTURE_LIMITS = {
	caution: { humidityPct: 50, gPerM3: 10 },
	stop: { humidityPct: 75, gPerM3: 18 }
} as const;

/** Water vapor in a cubic meter of this air, in grams. */
export function absoluteHumidityGPerM3(air: Air): number {
	return (
		(waterVaporPressurePa(air) * WATER_G_PER_MOL) /
		(GAS_CONSTANT * (air.temperatureC + KELVIN_OFFSET))
	);
}

/** How fit the air is for a moisture-sensitive material; the stricter of both measures counts. */
export function moistureWarning(air: Air): 'fit' | 'caution' | 'stop' {
	const gPerM3 = absoluteHumidityGPerM3(air);
	const reaches = (limit: { humidityPct: number; gPerM3: number }) =>
		air.humidityPct >= limit.humidityPct || gPerM3 >= limit.gPerM3;
	if (reaches(MOISTURE_LIMITS.stop)) return 'stop';
	return reaches(MOISTURE_LIMITS.caution) ? 'caution' : 'fit';
}
