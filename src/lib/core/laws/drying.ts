import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_TIME_S } from '../quantity/limits';
import { assertAir, saturationPressurePa, type Air } from './dew-point';

export const waterEvaporationLaw: Law = {
	id: 'water-evaporation',
	name: 'Evaporation from a wet surface',
	formula: 'w = (p_w − p_a) · (0.089 + 0.0782·v) / Y',
	source:
		'Carrier, as in ASHRAE Transactions 104(1A), 1998: (95 + 0.425·v)·(p_w − p_a)/Y in inch-pound units; latent heat by a linear fit (from memory)',
	validity:
		'free water at room temperature, air speed over it 0 to 3 m/s, pressures in kPa; quiet pools were measured at three quarters of it'
};

export const filmDryingLaw: Law = {
	id: 'film-drying',
	name: 'Drying time of the parting film',
	formula: 't = f_w · ρ_w · d / w, once to three times',
	source:
		'evaporation of its water as lower end; three times that as upper end, because a skin slows the rest: common practice, no source',
	validity: 'thin pass of 10 to 500 µm wet; alcohol in the film only shortens it; end with a touch'
};

/** A skin forms and the rest must diffuse through it; common practice, no source. */
const SKIN_FACTOR = 3;
/** Latent heat of water in kJ/kg at t °C; linear fit (from memory). */
const latentHeatKjPerKg = (temperatureC: number): number => 2501 - 2.361 * temperatureC;
/** Still air over a bench never quite stands; m/s, common practice, no source. */
export const STILL_AIR_M_PER_S = 0.1;

/**
 * Water that a wet surface loses, in g/(m²·h).
 *
 * @returns 0 in saturated air
 * @throws RangeError for air out of range or an air speed outside 0 to 3 m/s
 */
export function waterEvaporationGPerM2H(air: Air, airSpeedMPerS: number): number {
	assertWithin(airSpeedMPerS, 0, 3, 'airSpeedMPerS');
	assertAir(air);
	// Not a difference of two pressures: in saturated air its rounding error would be water lost or gained.
	const missingKPa = (saturationPressurePa(air.temperatureC) * (1 - air.humidityPct / 100)) / 1000;
	const kgPerM2S =
		(missingKPa * (0.089 + 0.0782 * airSpeedMPerS)) / latentHeatKjPerKg(air.temperatureC);
	return kgPerM2S * 3_600_000;
}

/**
 * Drying time of one wet pass of a water-borne film as a band, in seconds; null when the air is so
 * damp that it does not dry within 60 days.
 *
 * @param film - wet thickness 0.01 to 0.5 mm; water 0.3 to 1 of its mass, density taken as 1 g/mL
 */
export function filmDryingS(
	film: { wetMm: number; waterFraction: number },
	air: Air,
	airSpeedMPerS: number = STILL_AIR_M_PER_S
): { lowS: number; highS: number } | null {
	assertWithin(film.wetMm, 0.01, 0.5, 'wetMm');
	assertWithin(film.waterFraction, 0.3, 1, 'waterFraction');
	const waterGPerM2 = film.wetMm * 1000 * film.waterFraction;
	const lossGPerM2H = waterEvaporationGPerM2H(air, airSpeedMPerS);
	const highS = lossGPerM2H > 0 ? (SKIN_FACTOR * waterGPerM2 * 3600) / lossGPerM2H : MAX_TIME_S;
	return highS < MAX_TIME_S ? { lowS: highS / SKIN_FACTOR, highS } : null;
}
