import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const centroidLaw: Law = {
	id: 'centroid',
	name: 'Weight and center of mass of stacked parts',
	formula: 'm = Σ m_i, r = Σ m_i · r_i / m',
	source: 'Statics; any text of mechanics',
	validity: 'Rigid parts, each with its own mass and center of mass in the same axes.'
};

export const turnOverLaw: Law = {
	id: 'turn-over',
	name: 'Center of mass after turning over',
	formula: 'x′ = x, y′ = b − y, z′ = h − z',
	source: 'Half a turn about the x axis; any text of mechanics',
	validity: 'Stack of height h and depth b that holds together while it is turned.'
};

export const tippingLaw: Law = {
	id: 'tipping',
	name: 'Angle at which a mold tips over',
	formula: 'θ = atan(d / z)',
	source: 'Statics; any text of mechanics',
	validity: 'Rigid level floor; d is the distance from the center of mass to the nearest edge.'
};

/** A part and its center of mass, from one corner of the board; z upward from the board. */
export interface MassPart {
	massG: number;
	xMm: number;
	yMm: number;
	zMm: number;
}

/**
 * Mass and center of mass of all parts together.
 *
 * @throws RangeError for no parts, a mass outside 0 to 100 t, a place beyond ±20 m, or no mass
 */
export function stackCentroid(parts: readonly MassPart[]): MassPart {
	const sum = { massG: 0, xMm: 0, yMm: 0, zMm: 0 };
	for (const { massG, xMm, yMm, zMm } of parts) {
		assertWithin(massG, 0, 1e8, 'massG');
		assertWithin(xMm, -20_000, 20_000, 'xMm');
		assertWithin(yMm, -20_000, 20_000, 'yMm');
		assertWithin(zMm, -20_000, 20_000, 'zMm');
		sum.massG += massG;
		sum.xMm += massG * xMm;
		sum.yMm += massG * yMm;
		sum.zMm += massG * zMm;
	}
	assertWithin(sum.massG, 0.001, 1e9, 'mass of all parts (g)');
	return {
		massG: sum.massG,
		xMm: sum.xMm / sum.massG,
		yMm: sum.yMm / sum.massG,
		zMm: sum.zMm / sum.massG
	};
}

/**
 * The same body after half a turn about the x axis, standing on what was its top.
 *
 * @throws RangeError when the center of mass is outside the stack
 */
export function turnedOver(
	part: MassPart,
	{ depthMm, heightMm }: { depthMm: number; heightMm: number }
): MassPart {
	assertWithin(part.yMm, 0, depthMm, 'yMm');
	assertWithin(part.zMm, 0, heightMm, 'zMm');
	return { ...part, yMm: depthMm - part.yMm, zMm: heightMm - part.zMm };
}

/**
 * How far a mold may lean before it goes over, degrees.
 *
 * @throws RangeError for a distance outside 0 to 20 m or a height outside 1 mm to 20 m
 */
export function tippingDeg({ edgeMm, heightMm }: { edgeMm: number; heightMm: number }): number {
	assertWithin(edgeMm, 0, 20_000, 'edgeMm');
	assertWithin(heightMm, 1, 20_000, 'heightMm');
	return (Math.atan2(edgeMm, heightMm) * 180) / Math.PI;
}
