import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_AREA_CM2, MAX_LENGTH_MM } from '../quantity/limits';

export const flangeLaw: Law = {
	id: 'flange-volume',
	name: 'Glove lying flat on the board',
	formula: 'V = [A_outer − (A_foot + P·t + π·t²)] · t_flange',
	source: 'Steiner 1840, parallel curve of a convex plane figure',
	validity: 'convex foot; the flange begins where the coat on the wall ends; thickness 0 to 100 mm'
};

export const filletLaw: Law = {
	id: 'fillet-volume',
	name: 'Fillet in an inside edge',
	formula: 'V = L · r² · [tan(φ/2) − φ/2], φ the turn of the edge; 0.2146 · L · r² at 90°',
	source: 'area between two tangents and their arc (plane geometry)',
	validity: 'radius 0 to 100 mm, turn above 0 to 150°'
};

/**
 * Volume of the flange in mL, without the ring that already belongs to the coat on the wall.
 *
 * @returns 0 when the coat on the wall reaches the frame
 * @throws RangeError for a size out of range or a foot larger than the frame's inside
 */
export function flangeVolumeMl(given: {
	/** Inside of the frame. */
	outerAreaCm2: number;
	footAreaCm2: number;
	footPerimeterMm: number;
	coatThicknessMm: number;
	flangeThicknessMm: number;
}): number {
	assertWithin(given.outerAreaCm2, 0, MAX_AREA_CM2, 'outerAreaCm2');
	assertWithin(given.footAreaCm2, 0, given.outerAreaCm2, 'footAreaCm2');
	assertWithin(given.footPerimeterMm, 0, 100 * MAX_LENGTH_MM, 'footPerimeterMm');
	assertWithin(given.coatThicknessMm, 0, 100, 'coatThicknessMm');
	assertWithin(given.flangeThicknessMm, 0, 100, 'flangeThicknessMm');

	const t = given.coatThicknessMm;
	const ringCm2 = (given.footPerimeterMm * t + Math.PI * t ** 2) / 100;
	const areaCm2 = Math.max(0, given.outerAreaCm2 - given.footAreaCm2 - ringCm2);
	return (areaCm2 * given.flangeThicknessMm) / 10;
}

/**
 * Volume of a fillet of the given radius along an inside edge, in mL.
 *
 * @throws RangeError for a length, radius or turn out of range
 */
export function filletVolumeMl(given: {
	lengthMm: number;
	radiusMm: number;
	turnDeg: number;
}): number {
	assertWithin(given.lengthMm, 0, 100 * MAX_LENGTH_MM, 'lengthMm');
	assertWithin(given.radiusMm, 0, 100, 'radiusMm');
	assertWithin(given.turnDeg, 0, 150, 'turnDeg');
	const turn = (given.turnDeg * Math.PI) / 180;
	return (given.lengthMm * given.radiusMm ** 2 * (Math.tan(turn / 2) - turn / 2)) / 1000;
}
