import { edgesOf, headOf, tailOf } from './edges';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { cutTriangle } from './refine';
import { acrossTo, dot, subtract, unitOf } from './vector';

/**
 * The mesh with each edge that four triangles or more share, as many one way as the other, parted into edges of two:
 * where solids touch along a line each keeps a line of its own. No corner moves.
 */
export function unsharedEdges(mesh: Mesh): Mesh {
	const { count, starts, halfEdges } = edgesOf(mesh);
	const middleOf = new Map<number, number>();
	const added: number[] = [];
	const first = mesh.positions.length / 3;
	for (let edge = 0; edge < count; edge += 1) {
		if (starts[edge + 1]! - starts[edge]! <= 2) continue;
		for (const pair of wedgesOf(mesh, [...halfEdges.subarray(starts[edge]!, starts[edge + 1]!)])) {
			const [a, b] = [vertexAt(mesh, tailOf(mesh, pair[0])), vertexAt(mesh, headOf(mesh, pair[0]))];
			for (const half of pair) middleOf.set(half, first + added.length / 3);
			added.push((a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2);
		}
	}
	if (added.length === 0) return mesh;
	const positions = new Float64Array(mesh.positions.length + added.length);
	positions.set(mesh.positions);
	positions.set(added, mesh.positions.length);
	const triangles: number[] = [];
	for (let t = 0; t < mesh.triangles.length; t += 3) {
		const corners = [...mesh.triangles.subarray(t, t + 3)];
		const middles = [0, 1, 2].map((k) => middleOf.get(t + k) ?? -1);
		for (const piece of cutTriangle(corners, middles)) triangles.push(...piece);
	}
	return { positions, triangles: Uint32Array.from(triangles) };
}

/** Pairs of half-edges between which there is solid; none when as many do not run each way. */
function wedgesOf(mesh: Mesh, around: readonly number[]): [number, number][] {
	const tail = Math.min(tailOf(mesh, around[0]!), headOf(mesh, around[0]!));
	const head = Math.max(tailOf(mesh, around[0]!), headOf(mesh, around[0]!));
	const from = vertexAt(mesh, tail);
	const [right, up] = acrossTo(unitOf(subtract(vertexAt(mesh, head), from)));
	const angleOf = (half: number): number => {
		const across: Vec3 = subtract(vertexAt(mesh, oppositeOf(mesh, half)), from);
		return Math.atan2(dot(up, across), dot(right, across));
	};
	const forth = around.filter((half) => tailOf(mesh, half) === tail);
	const back = around.filter((half) => tailOf(mesh, half) !== tail);
	if (forth.length !== back.length) return [];
	return forth.map((half): [number, number] => {
		const angle = angleOf(half);
		// Of a triangle that runs forth the solid lies clockwise.
		const turnTo = (other: number): number => {
			const turn = (angle - angleOf(other)) % (2 * Math.PI);
			return turn < 0 ? turn + 2 * Math.PI : turn;
		};
		const next = back.reduce((best, other) => (turnTo(other) < turnTo(best) ? other : best));
		back.splice(back.indexOf(next), 1);
		return [half, next];
	});
}

function oppositeOf({ triangles }: Mesh, half: number): number {
	const from = half - (half % 3);
	return triangles[from + ((half + 2) % 3)]!;
}
