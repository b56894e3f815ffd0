/** What counts as one place where parts of a mesh meet, in the mesh's unit. */
export interface Nearness {
	/** A triangle this near to another's plane lies in it: beyond what single precision in files rounds off. */
	flat: number;
	/** Points this near to each other are one. */
	same: number;
	/** Beside a surface by this much there is no doubt on which side of it a point lies. */
	beside: number;
	/** Joining parts may fold their surface by this much: where corners are sought farthest. */
	shallow: number;
	/** Parts this near to each other touch. */
	touch: number;
}

/** Parts of the box's diagonal: parts apart by less than a ten-thousandth of it touch, 0.03 mm at 300 mm. Choices. */
export function nearnessOf(diagonal: number): Nearness {
	return {
		flat: 1e-6 * diagonal,
		same: 3e-6 * diagonal,
		beside: 1e-5 * diagonal,
		shallow: 5e-5 * diagonal,
		touch: 1e-4 * diagonal
	};
}
