import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { plateBending, plateCoefficients, PLATE_POISSON, type Plate } from './plate';

export const shellThicknessLaw: Law = {
	id: 'shell-thickness',
	name: 'Shell thickness against the head of the casting',
	formula: 't = max( ∛(12 · (1 − ν²) · α · q · a⁴ / (E · w)), √(6 · β · q · a² / σ) )',
	source:
		'Timoshenko & Woinowsky-Krieger 1959, Theory of Plates and Shells, solved for the thickness',
	validity: 'Flat unribbed wall; a curved or ribbed wall is stiffer. w below t / 2, t below a / 10.'
};

export interface ShellThickness {
	thicknessMm: number;
	governedBy: 'deflection' | 'stress';
	/** Limits of the theory that the answer oversteps, in words. */
	warnings: string[];
}

/**
 * Least thickness that keeps a flat wall of the shell within its allowed deflection (a share of the
 * casting's tolerance) and, when given, its allowed stress, millimeters, not rounded.
 *
 * @throws RangeError for impossible input, beyond the tables, or when more than 1000 mm is needed
 */
export function shellThickness({
	modulusPa,
	allowedDeflectionMm,
	allowedStressPa,
	...plate
}: Plate & {
	modulusPa: number;
	allowedDeflectionMm: number;
	allowedStressPa?: number;
}): ShellThickness {
	assertWithin(plate.pressurePa, 0.001, 1e6, 'pressurePa');
	assertWithin(modulusPa, 1e6, 1e12, 'modulusPa');
	assertWithin(allowedDeflectionMm, 0.001, 100, 'allowedDeflectionMm');
	if (allowedStressPa !== undefined) assertWithin(allowedStressPa, 1e3, 1e10, 'allowedStressPa');
	const { alpha, beta } = plateCoefficients(plate);
	const { pressurePa, shortMm } = plate;
	const forDeflectionMm = Math.cbrt(
		(12 * (1 - PLATE_POISSON ** 2) * alpha * pressurePa * shortMm ** 4) /
			(modulusPa * allowedDeflectionMm)
	);
	const forStressMm =
		allowedStressPa === undefined
			? 0
			: Math.sqrt((6 * beta * pressurePa * shortMm ** 2) / allowedStressPa);
	const thicknessMm = Math.max(forDeflectionMm, forStressMm);
	assertWithin(thicknessMm, 0, 1000, 'needed thicknessMm');
	// Below 0.1 mm any wall will do; the check is made on the thinnest one the theory takes.
	const checkedMm = Math.max(thicknessMm, 0.1);
	return {
		thicknessMm,
		governedBy: forStressMm > forDeflectionMm ? 'stress' : 'deflection',
		warnings: plateBending({ ...plate, thicknessMm: checkedMm, modulusPa }).warnings
	};
}
