import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { KELVIN_OFFSET } from './cure-rate';

/** J/(mol·K), exact: SI Brochure, 9th ed., from the fixed Boltzmann and Avogadro constants. */
export const GAS_CONSTANT = 8.314462618;
/** Pa, exact by definition: standard atmosphere, 10th CGPM 1954. */
export const STANDARD_ATMOSPHERE_PA = 101_325;

/**
 * L/mol by which each list of limits turned ppm into mg/m³. One list's mg/m³ must not be turned
 * with the other's.
 */
export const LIST_MOLAR_VOLUME_L = {
	/** 25 °C, 1 atm: OSHA, NIOSH and ACGIH convention. */
	US: 24.45,
	/** 20 °C, 1 atm: Directive 91/322/EEC and EH40. */
	UK: 24.06
} as const;

export const ppmLaw: Law = {
	id: 'ppm',
	name: 'ppm and mg/m³ of a vapor',
	formula: 'mg/m³ = ppm · M / V_m, V_m = R · T / p',
	source: 'Ideal gas law; 24.45 L/mol at 25 °C and 1 atm, 29 CFR 1910.1000 convention',
	validity: 'Vapor, not mist or dust; −20 to 60 °C, 50 to 110 kPa.'
};

export const vaporFlowLaw: Law = {
	id: 'vapor-flow',
	name: 'Volume of vapor from a mass that evaporates',
	formula: 'G = ṁ · R · T / (M · p)',
	source: 'Ideal gas law',
	validity: 'As for ppm.'
};

/** Volume of a mole of ideal gas, liters. */
export function molarVolumeL(temperatureC: number, pressurePa = STANDARD_ATMOSPHERE_PA): number {
	assertWithin(temperatureC, -20, 60, 'temperatureC');
	assertWithin(pressurePa, 50_000, 110_000, 'pressurePa');
	return (1000 * GAS_CONSTANT * (temperatureC + KELVIN_OFFSET)) / pressurePa;
}

function assertMolar(molarMassGPerMol: number, molarVolume: number): void {
	assertWithin(molarMassGPerMol, 2, 2000, 'molarMassGPerMol');
	assertWithin(molarVolume, 15, 60, 'molarVolumeL');
}

interface Molar {
	molarMassGPerMol: number;
	/** L/mol; defaults to the US lists' 24.45. */
	molarVolumeL?: number;
}

/**
 * @throws RangeError outside 0 to 1 000 000 ppm or 2 to 2000 g/mol
 */
export function mgPerM3FromPpm(
	ppm: number,
	{ molarMassGPerMol, molarVolumeL: volumeL = LIST_MOLAR_VOLUME_L.US }: Molar
): number {
	assertWithin(ppm, 0, 1e6, 'ppm');
	assertMolar(molarMassGPerMol, volumeL);
	return (ppm * molarMassGPerMol) / volumeL;
}

/**
 * @throws RangeError when the vapor would be more than all of the air
 */
export function ppmFromMgPerM3(
	mgPerM3: number,
	{ molarMassGPerMol, molarVolumeL: volumeL = LIST_MOLAR_VOLUME_L.US }: Molar
): number {
	assertMolar(molarMassGPerMol, volumeL);
	assertWithin(mgPerM3, 0, (1e6 * molarMassGPerMol) / volumeL, 'mgPerM3');
	return (mgPerM3 * volumeL) / molarMassGPerMol;
}

/**
 * Flow of vapor that `releaseGPerMin` of liquid becomes, m³/h.
 *
 * @throws RangeError outside 0 to 100 kg/min or −20 to 60 °C
 */
export function vaporFlowM3PerH({
	releaseGPerMin,
	molarMassGPerMol,
	temperatureC,
	pressurePa
}: {
	releaseGPerMin: number;
	molarMassGPerMol: number;
	temperatureC: number;
	pressurePa?: number;
}): number {
	assertWithin(releaseGPerMin, 0, 100_000, 'releaseGPerMin');
	assertWithin(molarMassGPerMol, 2, 2000, 'molarMassGPerMol');
	const litersPerMin = (releaseGPerMin / molarMassGPerMol) * molarVolumeL(temperatureC, pressurePa);
	return litersPerMin * 0.06;
}
