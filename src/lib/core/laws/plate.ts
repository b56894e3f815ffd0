import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { PLATE_TABLES, type PlateLoad, type PlateSupport } from './plate-coefficients';

/** Poisson's ratio that the coefficients are tabulated for. */
export const PLATE_POISSON = 0.3;

export const plateDeflectionLaw: Law = {
	id: 'plate-deflection',
	name: 'Deflection of a flat wall of the shell',
	formula: 'w = α · q · a⁴ / D, D = E · t³ / (12 · (1 − ν²))',
	source: 'Timoshenko & Woinowsky-Krieger 1959, Theory of Plates and Shells, ch. 5 and 6',
	validity: 'w below t / 2, t below a / 10, one even material, ν = 0.3.'
};

export const plateStressLaw: Law = {
	id: 'plate-stress',
	name: 'Bending stress in a flat wall of the shell',
	formula: 'σ = 6 · β · q · a² / t²',
	source: 'Timoshenko & Woinowsky-Krieger 1959, Theory of Plates and Shells, ch. 5 and 6',
	validity: 'As for the deflection.'
};

export interface Plate {
	support: PlateSupport;
	load: PlateLoad;
	/** Uniform pressure, or the pressure at the foot of a rising load. */
	pressurePa: number;
	shortMm: number;
	longMm: number;
}

/**
 * Coefficients for a plate, interpolated in short / long between the tabulated rows.
 *
 * @throws RangeError beyond the table; a load that rises along the long side is tabulated up to
 *   long = 5 · short, above which the uniform load is the safe choice
 */
export function plateCoefficients({ support, load, shortMm, longMm }: Omit<Plate, 'pressurePa'>): {
	alpha: number;
	beta: number;
} {
	assertWithin(shortMm, 1, 10_000, 'shortMm');
	assertWithin(longMm, shortMm, 1e6, 'longMm');
	const rows = PLATE_TABLES[support][load];
	const x = shortMm / longMm;
	const after = rows.findIndex((row) => row.x <= x);
	const high = rows[after];
	if (!high) {
		const longest = Math.round(1 / (rows.at(-1)?.x ?? 1));
		throw new RangeError(
			`longMm / shortMm is ${longMm / shortMm}; accepted: 1 to ${longest} for a load ${load}`
		);
	}
	const low = rows[Math.max(0, after - 1)] ?? high;
	const share = low.x === high.x ? 0 : (low.x - x) / (low.x - high.x);
	return {
		alpha: low.alpha + share * (high.alpha - low.alpha),
		beta: low.beta + share * (high.beta - low.beta)
	};
}

export interface PlateBending {
	deflectionMm: number;
	stressPa: number;
	/** Limits of the theory that this plate oversteps, in words; empty when it is valid. */
	warnings: string[];
}

/**
 * Greatest deflection and bending stress of a flat rectangular wall.
 *
 * @param modulusPa - Young's modulus, 1 MPa to 1 TPa
 * @throws RangeError for impossible input or beyond the tables
 */
export function plateBending({
	thicknessMm,
	modulusPa,
	...plate
}: Plate & { thicknessMm: number; modulusPa: number }): PlateBending {
	assertWithin(plate.pressurePa, 0, 1e6, 'pressurePa');
	assertWithin(thicknessMm, 0.1, 1000, 'thicknessMm');
	assertWithin(modulusPa, 1e6, 1e12, 'modulusPa');
	const { alpha, beta } = plateCoefficients(plate);
	const { pressurePa, shortMm } = plate;
	const stiffness = (modulusPa * thicknessMm ** 3) / (12 * (1 - PLATE_POISSON ** 2));
	const deflectionMm = (alpha * pressurePa * shortMm ** 4) / stiffness;
	const warnings: string[] = [];
	if (deflectionMm > thicknessMm / 2) {
		warnings.push('Deflection is above half the thickness: plate theory overstates it here.');
	}
	if (thicknessMm > shortMm / 10) {
		warnings.push('The wall is thicker than a tenth of its span: shear adds to the deflection.');
	}
	return {
		deflectionMm,
		stressPa: (6 * beta * pressurePa * shortMm ** 2) / thicknessMm ** 2,
		warnings
	};
}
