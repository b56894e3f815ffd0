import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_AREA_CM2 } from '../quantity/limits';

export const offsetVolumeLaw: Law = {
	id: 'offset-volume',
	name: 'Volume between true offset surfaces of the mesh',
	formula: 'V = V(t₂) − V(t₁); V(t) / t is a cubic through the distances computed on the mesh',
	source:
		'offset volumes counted on the mesh; on convex bodies V(t) / t is a quadratic (Steiner 1840), which the cubic carries exactly',
	validity:
		'thickness 0 to 100 mm; beyond the largest distance computed, V(t) / t goes on as a quadratic'
};

/** Volume over the board from the pattern's surface out to a distance. */
export interface OffsetVolume {
	outerMm: number;
	volumeMl: number;
}

/**
 * Volume between a pattern and its offset surface, mL, from a table of computed volumes.
 *
 * @param areaCm2 - exposed area: what V(t) / t is at no thickness
 * @param table - three rows or more, distances rising from above 0
 * @throws RangeError for a thickness or area out of range, or too short a table
 */
export function offsetVolumeMl(
	areaCm2: number,
	table: readonly OffsetVolume[],
	thicknessMm: number
): number {
	assertWithin(areaCm2, 0, MAX_AREA_CM2, 'areaCm2');
	assertWithin(thicknessMm, 0, 100, 'thicknessMm');
	assertWithin(table.length, 3, 1000, 'rows of offset volumes');
	const nodes = [
		{ t: 0, mean: areaCm2 / 10 },
		...table.map(({ outerMm, volumeMl }) => ({ t: outerMm, mean: volumeMl / outerMm }))
	];
	const above = nodes.findIndex(({ t }) => t >= thicknessMm);
	const around =
		above === -1
			? nodes.slice(-3)
			: nodes.slice(Math.max(0, Math.min(above - 2, nodes.length - 4))).slice(0, 4);
	return thicknessMm * lagrange(around, thicknessMm);
}

function lagrange(nodes: readonly { t: number; mean: number }[], t: number): number {
	return nodes.reduce((sum, own) => {
		const weight = nodes
			.filter((other) => other !== own)
			.reduce((product, other) => (product * (t - other.t)) / (own.t - other.t), 1);
		return sum + own.mean * weight;
	}, 0);
}
