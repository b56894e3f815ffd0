import { edgesOf, headOf, tailOf } from './edges';
import { vertexAt, type Mesh } from './mesh';
import { lyingTriangles } from './standing';

export interface Foot {
	/** Length of the line where pattern and board meet. */
	footLengthMm: number;
	/** Board that shows through the pattern's own holes. */
	enclosedBoardCm2: number;
}

/** The border of the faces that lie on the board; zeros for a pattern that stands on points or lines. */
export function footOf(mesh: Mesh): Foot {
	const lying = lyingTriangles(mesh);
	const { edgeOf, starts, halfEdges } = edgesOf(mesh);
	const border = new Map<number, number[]>();
	let footLengthMm = 0;
	for (let half = 0; half < mesh.triangles.length; half += 1) {
		if (!lying[Math.floor(half / 3)]) continue;
		const edge = edgeOf[half]!;
		const around = halfEdges.subarray(starts[edge], starts[edge + 1]);
		if (around.some((other) => other !== half && lying[Math.floor(other / 3)])) continue;
		const [tail, head] = [tailOf(mesh, half), headOf(mesh, half)];
		const [a, b] = [vertexAt(mesh, tail), vertexAt(mesh, head)];
		footLengthMm += Math.hypot(b[0] - a[0], b[1] - a[1]);
		const known = border.get(tail);
		if (known) known.push(head);
		else border.set(tail, [head]);
	}
	return { footLengthMm, enclosedBoardCm2: holesMm2(mesh, border) / 100 };
}

/** Seen from above, the outer rings of faces that look down run clockwise and those of holes do not. */
function holesMm2(mesh: Mesh, border: Map<number, number[]>): number {
	let sum = 0;
	for (const [start, heads] of border) {
		while (heads.length > 0) {
			let twice = 0;
			for (let now = start; ;) {
				const next = border.get(now)?.pop();
				if (next === undefined) break;
				const [a, b] = [vertexAt(mesh, now), vertexAt(mesh, next)];
				twice += a[0] * b[1] - a[1] * b[0];
				now = next;
				if (now === start) break;
			}
			sum += Math.max(0, twice / 2);
		}
	}
	return sum;
}
