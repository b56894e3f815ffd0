/** What fingers, or a mouse, ask of the view by moving. */
export interface Moved {
	/** Pixels. */
	right: number;
	up: number;
	/** By which the distance to the pattern changes. */
	zoom: number;
}

/** Follows the pointers on the picture: one turns it, two turn it together and come closer by spreading. */
export class SpaceFingers {
	readonly #at = new Map<number, { x: number; y: number }>();

	down(id: number, x: number, y: number): void {
		// A third finger would make no move plainer.
		if (this.#at.size < 2) this.#at.set(id, { x, y });
	}

	up(id: number): void {
		this.#at.delete(id);
	}

	/** Null for a pointer that is not down on the picture. */
	move(id: number, x: number, y: number): Moved | null {
		const before = this.#at.get(id);
		if (!before) return null;
		const other = [...this.#at].find(([key]) => key !== id)?.[1];
		this.#at.set(id, { x, y });
		// Of two fingers each moves their middle by half.
		const share = other ? 0.5 : 1;
		const apart = (point: { x: number; y: number }): number =>
			other ? Math.max(1, Math.hypot(point.x - other.x, point.y - other.y)) : 1;
		return {
			right: share * (x - before.x),
			up: share * (before.y - y),
			zoom: apart(before) / apart({ x, y })
		};
	}
}
