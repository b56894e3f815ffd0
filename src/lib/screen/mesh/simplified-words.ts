import type { SimplifiedCopy } from '../../core/mesh/coarser';

/** Says which numbers come from all triangles of a fine mesh and which from its simplified copy. */
export function simplifiedWords({ triangles, movedMm, volumeOffFraction }: SimplifiedCopy): string {
	const count = triangles.toLocaleString('en-US');
	const moved = Number(movedMm.toPrecision(2));
	const off = Number((100 * Math.abs(volumeOffFraction)).toPrecision(2));
	return (
		`Area, volume and sizes are those of the whole mesh. Coats, bridged places, opening, section and picture ` +
		`are computed on a copy of ${count} triangles, its corners moved by ${moved} mm at most and its volume ` +
		`off by ${off} %: what is finer than that may be missed.`
	);
}
