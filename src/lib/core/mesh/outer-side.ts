import { holds, piecesAlong, type Flat } from './flat-pieces';
import type { Mesh } from './mesh';
import type { Nearness } from './nearness';
import type { TriangleCut } from './part-cuts';
import { TriangleFrame } from './triangle-frame';
import type { TurnsAround } from './turns-around';
import { dot } from './vector';

/** Shares of the corners: no middle, since a model drawn on a grid has other parts' edges there. */
const SHARES = [0.37, 0.341, 0.289] as const;

function middleOf(polygon: readonly Flat[]): Flat {
	if (polygon.length === 3) {
		return [0, 1].map((k) =>
			polygon.reduce((sum, point, i) => sum + SHARES[i]! * point[k]!, 0)
		) as unknown as Flat;
	}
	return [0, 1].map(
		(k) => polygon.reduce((sum, point) => sum + point[k]!, 0) / polygon.length
	) as unknown as Flat;
}

/** Tells what of parts that meet lies on the outside of all of them. */
export class OuterSide {
	readonly #mesh: Mesh;
	readonly #turns: TurnsAround;
	readonly #partOf: ArrayLike<number>;
	readonly #near: Nearness;

	constructor(mesh: Mesh, turns: TurnsAround, partOf: ArrayLike<number>, near: Nearness) {
		this.#mesh = mesh;
		this.#turns = turns;
		this.#partOf = partOf;
		this.#near = near;
	}

	/** Whether nothing is solid above a triangle that no other part meets. */
	has(triangle: number): boolean {
		const frame = new TriangleFrame(this.#mesh, triangle);
		return this.#isOuter(triangle, frame, middleOf(frame.flatCorners), 0);
	}

	#isOuter(triangle: number, frame: TriangleFrame, at: Flat, raised: number): boolean {
		return this.#turns.above(triangle, frame.at(at, raised), frame.normal) === 0;
	}

	/** The pieces of a cut triangle that lie on the outside of all parts. */
	piecesOf(triangle: number, { frame, lines, flush }: TriangleCut): Flat[][] {
		const covers = flush
			.filter((other) => this.#partOf[other]! < this.#partOf[triangle]!)
			.map((other) => new TriangleFrame(this.#mesh, other))
			.filter(({ normal }) => dot(normal, frame.normal) > 0)
			.map(({ corners }) => corners.map((corner) => frame.flatOf(corner)));
		return piecesAlong(frame.flatCorners, lines, this.#near.same).filter((piece) => {
			const middle = middleOf(piece);
			// Of two faces that lie in one plane and look one way the first part's counts.
			if (covers.some((cover) => holds(cover, middle))) return false;
			return this.#isOuter(triangle, frame, middle, flush.length > 0 ? this.#near.beside : 0);
		});
	}
}
