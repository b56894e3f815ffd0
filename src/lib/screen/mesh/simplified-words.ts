import { MOST_JUDGED_WHOLE, type SimplifiedCopy } from '../../core/mesh/coarser';

/** Says why nothing can be judged on a copy that has lost too much, and what would help. */
export function lostVolumeWords({
	movedMm,
	volumeOffFraction
}: Pick<SimplifiedCopy, 'movedMm' | 'volumeOffFraction'>): string {
	const most = MOST_JUDGED_WHOLE.toLocaleString('en-US');
	const moved = Number(movedMm.toPrecision(2));
	const off = Number((100 * Math.abs(volumeOffFraction)).toPrecision(2));
	return (
		`So fine a mesh is judged on a coarser copy; this one’s volume is off by ${off}%, more than 0.5%: ` +
		`walls or gaps thinner than about ${moved} mm fell together in it. Area, volume and sizes are of the whole ` +
		`mesh and hold. Reduce the mesh to ${most} triangles or fewer where it was drawn, keeping its thin walls; ` +
		`then it is judged as it is.`
	);
}

/** Says which numbers come from all triangles of a fine mesh and which from its simplified copy. */
export function simplifiedWords({ triangles, movedMm, volumeOffFraction }: SimplifiedCopy): string {
	const count = triangles.toLocaleString('en-US');
	const moved = Number(movedMm.toPrecision(2));
	const off = Number((100 * Math.abs(volumeOffFraction)).toPrecision(2));
	return (
		`Area, volume and sizes are of the whole mesh; coats, bridged places, opening, section and picture of ` +
		`a copy of ${count} triangles, its corners moved by up to ${moved} mm, its volume off by ${off}%: ` +
		`what is finer may be missed.`
	);
}
