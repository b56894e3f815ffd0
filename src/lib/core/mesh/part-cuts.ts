import type { Bvh } from './bvh';
import { edgesOf, type Edges } from './edges';
import { within, type Flat, type FlatLine } from './flat-pieces';
import { forMeetingPairs } from './meeting-pairs';
import type { Vec3 } from './mesh';
import type { Nearness } from './nearness';
import { TriangleFrame } from './triangle-frame';
import { dot } from './vector';

/** What other parts do to one triangle. */
export interface TriangleCut {
	frame: TriangleFrame;
	/** Where they pass through it, and the rims of what lies flat on it. */
	lines: FlatLine[];
	/** Triangles of other parts that lie flat on it. */
	flush: number[];
}

/** More pairs than this belong to no pattern that somebody has put together of parts. A choice. */
const MOST_PAIRS = 10_000_000;
const MOST_CUT = 100_000;

/**
 * Where the parts of a mesh meet each other, by triangle; those of one part are taken not to cross.
 *
 * @param partOf - the part of each triangle
 * @returns null when there is too much of it to go through
 */
export function partCuts(
	bvh: Bvh,
	partOf: ArrayLike<number>,
	near: Nearness
): Map<number, TriangleCut> | null {
	const cuts = new Map<number, TriangleCut>();
	const finder = new CutFinder(bvh, near);
	const isComplete = forMeetingPairs(bvh, { reach: near.same, mostPairs: MOST_PAIRS }, (s, t) => {
		if (partOf[s] !== partOf[t]) {
			finder.cut(s, t, cuts);
			finder.cut(t, s, cuts);
		}
		return cuts.size < MOST_CUT;
	});
	return isComplete ? cuts : null;
}

class CutFinder {
	readonly #bvh: Bvh;
	readonly #near: Nearness;
	readonly #edges: Edges;
	readonly #frames = new Map<number, TriangleFrame>();

	constructor(bvh: Bvh, near: Nearness) {
		this.#bvh = bvh;
		this.#near = near;
		this.#edges = edgesOf(bvh.mesh);
	}

	/** Notes what triangle t does to s. */
	cut(s: number, t: number, cuts: Map<number, TriangleCut>): void {
		const own = this.#frameOf(s);
		const isFlush = this.#isFlush(s, t);
		const corners = own.flatCorners;
		const lines = (isFlush ? this.#rimOf(s, t) : this.#passageOf(s, t)).filter(
			(line) => within(line, corners, -this.#near.same, this.#near.same) > 2 * this.#near.same
		);
		const isCovered = isFlush && this.#overlaps(s, t);
		if (lines.length === 0 && !isCovered) return;
		const known = cuts.get(s) ?? { frame: own, lines: [], flush: [] };
		known.lines.push(...lines);
		if (isCovered) known.flush.push(t);
		cuts.set(s, known);
	}

	#frameOf(triangle: number): TriangleFrame {
		const known = this.#frames.get(triangle);
		if (known) return known;
		const frame = new TriangleFrame(this.#bvh.mesh, triangle);
		this.#frames.set(triangle, frame);
		return frame;
	}

	/** Whether one lies in the other's plane. */
	#isFlush(s: number, t: number): boolean {
		const [own, other] = [this.#frameOf(s), this.#frameOf(t)];
		if (Math.abs(dot(own.normal, other.normal)) < 0.9) return false;
		const liesIn = (frame: TriangleFrame, corners: readonly Vec3[]): boolean =>
			corners.every((corner) => Math.abs(frame.heightOf(corner)) <= this.#near.flat);
		return liesIn(own, other.corners) || liesIn(other, own.corners);
	}

	/** Whether two flush triangles have more than a line in common. */
	#overlaps(s: number, t: number): boolean {
		const { same } = this.#near;
		const own = this.#frameOf(s);
		const [a, b] = [own.flatCorners, this.#frameOf(t).corners.map((corner) => own.flatOf(corner))];
		if (dot(own.normal, this.#frameOf(t).normal) < 0) b.reverse();
		const sides = (polygon: readonly Flat[]): FlatLine[] =>
			polygon.map((point, i) => [point, polygon[(i + 1) % polygon.length]!]);
		const isMiddleIn = (inner: readonly Flat[], outer: readonly Flat[]): boolean => {
			const [x, y] = [0, 1].map((k) => inner.reduce((sum, point) => sum + point[k]!, 0) / 3);
			const stub: FlatLine = [
				[x! - 2 * same, y!],
				[x! + 2 * same, y!]
			];
			return within(stub, outer, same, same) > same;
		};
		return (
			isMiddleIn(a, b) ||
			isMiddleIn(b, a) ||
			sides(a).some((side) => within(side, b, same, same) > same) ||
			sides(b).some((side) => within(side, a, same, same) > same)
		);
	}

	/** Sides of t beyond which its part no longer lies on s. */
	#rimOf(s: number, t: number): FlatLine[] {
		const own = this.#frameOf(s);
		const { edgeOf, starts, halfEdges } = this.#edges;
		const points = this.#frameOf(t).corners.map((corner) => own.flatOf(corner));
		return [0, 1, 2].flatMap((k): FlatLine[] => {
			const edge = edgeOf[3 * t + k]!;
			const around = halfEdges.subarray(starts[edge]!, starts[edge + 1]!);
			const goesOn =
				around.length === 2 &&
				around.every(
					(half) => Math.floor(half / 3) === t || this.#isFlush(s, Math.floor(half / 3))
				);
			return goesOn ? [] : [[points[k]!, points[(k + 1) % 3]!]];
		});
	}

	/** The line in which t meets the plane of s; empty when it only touches it in a point. */
	#passageOf(s: number, t: number): FlatLine[] {
		const own = this.#frameOf(s);
		const { corners } = this.#frameOf(t);
		const heights = corners.map((corner) => {
			const height = own.heightOf(corner);
			return Math.abs(height) <= this.#near.flat ? 0 : height;
		});
		const met = corners.flatMap((corner, k): Flat[] => {
			const next = (k + 1) % 3;
			if (heights[k] === 0) return [own.flatOf(corner)];
			if (heights[k]! * heights[next]! >= 0) return [];
			const part = heights[k]! / (heights[k]! - heights[next]!);
			const [a, b] = [own.flatOf(corner), own.flatOf(corners[next]!)];
			return [[a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part]];
		});
		return met.length === 2 ? [[met[0]!, met[1]!]] : [];
	}
}
