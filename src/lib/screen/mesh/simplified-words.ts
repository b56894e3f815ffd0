import type { SimplifiedCopy } from '../../core/mesh/coarser';

/** Says which numbers come from all triangles of a fine mesh and which from its simplified copy. */
export function simplifiedWords({ triangles, movedMm, volumeOffFraction }: SimplifiedCopy): string {
	const count = triangles.toLocaleString('en-US');
	const moved = Number(movedMm.toPrecision(2));
	const off = Number((100 * Math.abs(volumeOffFraction)).toPrecision(2));
	return (
		`Area, volume and sizes are of the whole mesh; coats, bridged places, opening, section and picture of ` +
		`a copy of ${count} triangles, its corners moved by up to ${moved} mm, its volume off by ${off} %: ` +
		`what is finer may be missed.`
	);
}
