import type { Mesh } from './mesh';

/** Triangles in a leaf; fewer means more boxes to look at, more means more triangles. Measured best from 4 to 8. */
const LEAF_SIZE = 4;
const BINS = 12;

/**
 * A tree of boxes over the triangles of a mesh. Node n has its box at boxes[6n]: three lows, three highs.
 * An inner node has its left child right after it and its right child at `links[n]`; a leaf holds the
 * triangles order[starts[n]] up to `starts[n] + counts[n]`, and an inner node has a count of 0.
 */
export interface Bvh {
	mesh: Mesh;
	boxes: Float64Array;
	links: Int32Array;
	starts: Int32Array;
	counts: Int32Array;
	order: Int32Array;
}

/**
 * Builds the tree, splitting where boxes overlap least by surface.
 * Source: Wald 2007, On fast construction of SAH-based bounding volume hierarchies (from memory).
 */
export function bvhOf(mesh: Mesh): Bvh {
	const count = mesh.triangles.length / 3;
	const nodes = Math.max(1, 2 * count);
	const builder = new Builder(mesh, count, nodes);
	builder.build();
	return builder.tree();
}

class Builder {
	readonly #mesh: Mesh;
	readonly #order: Int32Array;
	readonly #low: Float64Array;
	readonly #high: Float64Array;
	readonly #boxes: Float64Array;
	readonly #links: Int32Array;
	readonly #starts: Int32Array;
	readonly #counts: Int32Array;
	readonly #binBoxes = new Float64Array(6 * BINS);
	readonly #binCounts = new Int32Array(BINS);
	readonly #rightAreas = new Float64Array(BINS);
	#used = 0;

	constructor(mesh: Mesh, count: number, nodes: number) {
		this.#mesh = mesh;
		this.#order = Int32Array.from({ length: count }, (_, i) => i);
		this.#low = new Float64Array(3 * count);
		this.#high = new Float64Array(3 * count);
		this.#boxes = new Float64Array(6 * nodes);
		this.#links = new Int32Array(nodes);
		this.#starts = new Int32Array(nodes);
		this.#counts = new Int32Array(nodes);
		const { positions, triangles } = mesh;
		for (let t = 0; t < count; t += 1) {
			for (let axis = 0; axis < 3; axis += 1) {
				const a = positions[3 * triangles[3 * t]! + axis]!;
				const b = positions[3 * triangles[3 * t + 1]! + axis]!;
				const c = positions[3 * triangles[3 * t + 2]! + axis]!;
				this.#low[3 * t + axis] = Math.min(a, b, c);
				this.#high[3 * t + axis] = Math.max(a, b, c);
			}
		}
	}

	tree(): Bvh {
		return {
			mesh: this.#mesh,
			boxes: this.#boxes.slice(0, 6 * this.#used),
			links: this.#links.slice(0, this.#used),
			starts: this.#starts.slice(0, this.#used),
			counts: this.#counts.slice(0, this.#used),
			order: this.#order
		};
	}

	build(): void {
		// Depth first with an own stack: a mesh of one long strip would overflow the call stack.
		const tasks: [from: number, to: number, parent: number][] = [[0, this.#order.length, -1]];
		for (let task = tasks.pop(); task; task = tasks.pop()) {
			const [from, to, parent] = task;
			const node = this.#used;
			this.#used += 1;
			if (parent >= 0) this.#links[parent] = node;
			this.#bound(node, from, to);
			const middle = to - from <= LEAF_SIZE ? from : this.#split(from, to);
			if (middle === from) {
				this.#starts[node] = from;
				this.#counts[node] = to - from;
			} else {
				// The left part is taken next, so that it lies right after its parent.
				tasks.push([middle, to, node], [from, middle, -1]);
			}
		}
	}

	#bound(node: number, from: number, to: number): void {
		const box = this.#boxes;
		const at = 6 * node;
		box.fill(Infinity, at, at + 3);
		box.fill(-Infinity, at + 3, at + 6);
		for (let i = from; i < to; i += 1) this.#widen(box, at, this.#order[i]!);
	}

	#widen(box: Float64Array, at: number, t: number): void {
		for (let axis = 0; axis < 3; axis += 1) {
			const low = this.#low[3 * t + axis]!;
			const high = this.#high[3 * t + axis]!;
			if (low < box[at + axis]!) box[at + axis] = low;
			if (high > box[at + 3 + axis]!) box[at + 3 + axis] = high;
		}
	}

	#center(t: number, axis: number): number {
		return this.#low[3 * t + axis]! + this.#high[3 * t + axis]!;
	}

	/** Orders the range so that the cheaper halves stand apart; returns where the second begins. */
	#split(from: number, to: number): number {
		let [axis, low, high] = [0, 0, 0];
		for (let k = 0; k < 3; k += 1) {
			let [min, max] = [Infinity, -Infinity];
			for (let i = from; i < to; i += 1) {
				const center = this.#center(this.#order[i]!, k);
				if (center < min) min = center;
				if (center > max) max = center;
			}
			if (max - min > high - low || k === 0) [axis, low, high] = [k, min, max];
		}
		if (!(high > low)) return (from + to) >> 1;
		const scale = BINS / (high - low);
		const binOf = (t: number): number =>
			Math.min(BINS - 1, Math.floor((this.#center(t, axis) - low) * scale));
		this.#fillBins(from, to, binOf);
		const cut = this.#bestCut();
		let [left, right] = [from, to - 1];
		while (left <= right) {
			const t = this.#order[left]!;
			if (binOf(t) < cut) left += 1;
			else {
				this.#order[left] = this.#order[right]!;
				this.#order[right] = t;
				right -= 1;
			}
		}
		return left > from && left < to ? left : (from + to) >> 1;
	}

	#fillBins(from: number, to: number, binOf: (t: number) => number): void {
		this.#binCounts.fill(0);
		for (let bin = 0; bin < BINS; bin += 1) {
			this.#binBoxes.fill(Infinity, 6 * bin, 6 * bin + 3);
			this.#binBoxes.fill(-Infinity, 6 * bin + 3, 6 * bin + 6);
		}
		for (let i = from; i < to; i += 1) {
			const bin = binOf(this.#order[i]!);
			this.#binCounts[bin]! += 1;
			this.#widen(this.#binBoxes, 6 * bin, this.#order[i]!);
		}
	}

	#bestCut(): number {
		const box = new Float64Array(6);
		const sweep = (bins: number[], take: (bin: number, cost: number) => void): void => {
			box.fill(Infinity, 0, 3).fill(-Infinity, 3, 6);
			let count = 0;
			for (const bin of bins) {
				count += this.#binCounts[bin]!;
				for (let k = 0; k < 3; k += 1) {
					box[k] = Math.min(box[k]!, this.#binBoxes[6 * bin + k]!);
					box[k + 3] = Math.max(box[k + 3]!, this.#binBoxes[6 * bin + k + 3]!);
				}
				const [x, y, z] = [box[3]! - box[0]!, box[4]! - box[1]!, box[5]! - box[2]!];
				take(bin, count === 0 ? 0 : count * (x * y + y * z + z * x));
			}
		};
		const bins = Array.from({ length: BINS }, (_, i) => i);
		sweep(bins.toReversed(), (bin, cost) => (this.#rightAreas[bin] = cost));
		let [best, least] = [BINS >> 1, Infinity];
		sweep(bins.slice(0, -1), (bin, cost) => {
			const total = cost + this.#rightAreas[bin + 1]!;
			if (total < least) [best, least] = [bin + 1, total];
		});
		return best;
	}
}
