/** Groups of numbers 0 to `count` − 1 that are joined pair by pair. */
export class UnionFind {
	readonly #parents: Int32Array;

	constructor(count: number) {
		this.#parents = Int32Array.from({ length: count }, (_, i) => i);
	}

	/** The number that stands for the group of `i`. */
	rootOf(i: number): number {
		const parents = this.#parents;
		let at = i;
		while (parents[at] !== at) {
			parents[at] = parents[parents[at]!]!;
			at = parents[at]!;
		}
		return at;
	}

	join(a: number, b: number): void {
		const [x, y] = [this.rootOf(a), this.rootOf(b)];
		// The lower number leads, so that groups do not depend on the order of joining.
		if (x < y) this.#parents[y] = x;
		else this.#parents[x] = y;
	}

	/** For each number its group, counted from 0 in order of the lowest member; and how many there are. */
	groups(): { groupOf: Int32Array; count: number } {
		const groupOf = new Int32Array(this.#parents.length);
		let count = 0;
		for (let i = 0; i < groupOf.length; i += 1) {
			const root = this.rootOf(i);
			if (root === i) {
				groupOf[i] = count;
				count += 1;
			} else groupOf[i] = groupOf[root]!;
		}
		return { groupOf, count };
	}
}
