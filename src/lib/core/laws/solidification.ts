import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const solidificationLaw: Law = {
	id: 'solidification',
	name: 'Until a melt is solid through',
	formula: 't = ρ · (L + c · (T_pour − T_m)) / (T_m − T_room) · (P · a · R_out + R · a² / k)',
	source:
		'R. Plank 1913, as in the Encyclopaedia of Food Sciences and Nutrition, 2nd ed. 2003, “Freezing”; factors of a box after Plank 1941 (from memory)',
	validity:
		'A box of up to 10 m that gives off heat on all sides; the room at least 1 K below the melting point. What melts over a range of temperatures takes longer.'
};

/** How alike the sides of a box may be before it counts as a cube, where the formula divides by nothing. */
const CUBE = 1.01;

/**
 * Plank's shape factors of a box, both without a unit: 1/2 and 1/8 for a plate, 1/6 and 1/24 for a cube.
 *
 * @param lengthsMm - its three sides in any order, each 0.1 to 10,000 mm
 * @throws RangeError naming the side that is out of range
 */
export function plankFactors(lengthsMm: readonly [number, number, number]): {
	p: number;
	r: number;
} {
	for (const mm of lengthsMm) assertWithin(mm, 0.1, 10_000, 'lengthsMm');
	const [a, b, c] = lengthsMm.toSorted((one, other) => one - other) as [number, number, number];
	const [b1, b2] = [c / a, b / a];
	const p = (b1 * b2) / (2 * (b1 * b2 + b1 + b2));
	if (b1 < CUBE) return { p, r: p / 4 };
	const root = Math.sqrt((b1 - b2) * (b1 - 1) + (b2 - 1) ** 2);
	const term = (x: number): number =>
		x - 1 < 1e-9 ? 0 : (x - 1) * (b1 - x) * (b2 - x) * Math.log(x / (x - 1));
	const m = (b1 + b2 + 1 + root) / 3;
	const n = (b1 + b2 + 1 - root) / 3;
	return { p, r: (term(m) - term(n)) / (8 * root) + (2 * b1 + 2 * b2 - 1) / 72 };
}

/**
 * Seconds until a melt in a box is solid through, its heat above the melting point included.
 *
 * @param resistanceM2KPerW - from its surface to the air of the room, 0 to 10
 * @throws RangeError naming what is out of range
 */
export function solidAfterS(given: {
	lengthsMm: readonly [number, number, number];
	densityGPerMl: number;
	latentJPerG: number;
	specificHeatJPerGK: number;
	conductivityWPerMK: number;
	resistanceM2KPerW: number;
	poursAtC: number;
	meltsAtC: number;
	roomC: number;
}): number {
	const { lengthsMm, densityGPerMl, latentJPerG, specificHeatJPerGK } = given;
	const { conductivityWPerMK, resistanceM2KPerW, poursAtC, meltsAtC, roomC } = given;
	assertWithin(densityGPerMl, 0.3, 4, 'densityGPerMl');
	assertWithin(latentJPerG, 1, 1000, 'latentJPerG');
	assertWithin(specificHeatJPerGK, 0.5, 5, 'specificHeatJPerGK');
	assertWithin(conductivityWPerMK, 0.01, 500, 'conductivityWPerMK');
	assertWithin(resistanceM2KPerW, 0, 10, 'resistanceM2KPerW');
	assertWithin(meltsAtC - roomC, 1, 300, 'meltsAtC − roomC');
	assertWithin(poursAtC - meltsAtC, 0, 300, 'poursAtC − meltsAtC');
	const { p, r } = plankFactors(lengthsMm);
	const a = Math.min(...lengthsMm) / 1000;
	const heatJPerM3 =
		1e6 * densityGPerMl * (latentJPerG + specificHeatJPerGK * (poursAtC - meltsAtC));
	return (
		(heatJPerM3 / (meltsAtC - roomC)) *
		(p * a * resistanceM2KPerW + (r * a ** 2) / conductivityWPerMK)
	);
}
