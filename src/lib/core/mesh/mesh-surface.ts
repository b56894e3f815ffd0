import type { Surface } from '../geometry/pattern';
import { edgesOf, headOf, tailOf } from './edges';
import { exposedOf } from './exposed';
import { measuresOf } from './measures';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { sectionOf, uprightPlane, type Outline } from './section';
import { lyingTriangles } from './standing';
import { unitNormals } from './triangle-normals';
import { cross, dot, lengthOf, subtract } from './vector';

/**
 * What the plan needs to know of a placed mesh, in place of solids described by hand.
 *
 * Turns of edges and corners are those of Steiner's formula: exact for convex patterns; where the
 * pattern is hollowed out they count negative, as for thin coats they should.
 */
export function meshSurface(mesh: Mesh): Surface {
	const { bounds, signedVolume } = measuresOf(mesh);
	const { exposedAreaCm2, footprintCm2, steepestWallDeg } = exposedOf(mesh);
	const lying = lyingTriangles(mesh);
	const { edgeTurnMm, footLengthMm } = edgeTurns(mesh, lying);
	const middle = sectionOf(mesh, uprightPlane({ xMm: 0, yMm: 0.01, turnDeg: 0 }));
	return {
		exposedAreaCm2,
		volumeMl: signedVolume / 1000,
		footprintCm2,
		lengthMm: bounds.max[0] - bounds.min[0],
		widthMm: bounds.max[1] - bounds.min[1],
		heightMm: bounds.max[2],
		steepestWallDeg,
		edgeTurnMm,
		cornerTurnSr: cornerTurns(mesh, lying),
		footLengthMm,
		enclosedBoardCm2: enclosedBoardCm2(mesh),
		profile: upperProfile(middle)
	};
}

function edgeTurns(mesh: Mesh, lying: Uint8Array): { edgeTurnMm: number; footLengthMm: number } {
	const normals = unitNormals(mesh);
	const { count, starts, halfEdges } = edgesOf(mesh);
	let [edgeTurnMm, footLengthMm] = [0, 0];
	for (let edge = 0; edge < count; edge += 1) {
		if (starts[edge + 1]! - starts[edge]! !== 2) continue;
		const [one, two] = [halfEdges[starts[edge]!]!, halfEdges[starts[edge]! + 1]!];
		const [s, t] = [Math.floor(one / 3), Math.floor(two / 3)];
		const along = subtract(vertexAt(mesh, headOf(mesh, one)), vertexAt(mesh, tailOf(mesh, one)));
		const lengthMm = lengthOf(along);
		if (lying[s] !== lying[t]) footLengthMm += lengthMm;
		if (lying[s] || lying[t] || lengthMm === 0) continue;
		const [n, m] = [vertexAt({ positions: normals }, s), vertexAt({ positions: normals }, t)];
		edgeTurnMm += lengthMm * Math.atan2(dot(cross(n, m), along) / lengthMm, dot(n, m));
	}
	return { edgeTurnMm, footLengthMm };
}

/** The angle that is missing to a full turn around each vertex above the board, summed. */
function cornerTurns(mesh: Mesh, lying: Uint8Array): number {
	const { positions, triangles } = mesh;
	const angles = new Float64Array(positions.length / 3);
	const isFoot = new Uint8Array(angles.length);
	for (let k = 0; k < triangles.length; k += 1) {
		const t = k - (k % 3);
		const v = triangles[k]!;
		if (lying[t / 3]) isFoot[v] = 1;
		const at = vertexAt(mesh, v);
		const [p, q] = [1, 2].map((step): Vec3 =>
			subtract(vertexAt(mesh, triangles[t + ((k + step) % 3)]!), at)
		) as [Vec3, Vec3];
		angles[v]! += Math.atan2(lengthOf(cross(p, q)), dot(p, q));
	}
	return angles.reduce(
		(sum, angle, v) => (isFoot[v] || angle === 0 ? sum : sum + 2 * Math.PI - angle),
		0
	);
}

/** Board that shows through holes: outlines just above it that run the other way. */
function enclosedBoardCm2(mesh: Mesh): number {
	const outlines = sectionOf(mesh, { normal: [0, 0, 1], offsetMm: 0.2 });
	return outlines.reduce((sum, outline) => sum + Math.max(0, -signedAreaMm2(outline)) / 100, 0);
}

function signedAreaMm2(outline: Outline): number {
	return outline.reduce((sum, p, i) => {
		const q = outline[(i + 1) % outline.length]!;
		return sum + (p.xMm * q.yMm - q.xMm * p.yMm) / 2;
	}, 0);
}

const PROFILE_STEPS = 120;

/** The upper edge of a section from its left foot to its right one. */
function upperProfile(outlines: readonly Outline[]): Surface['profile'] {
	const sides = outlines.flatMap((outline) =>
		outline.map((p, i) => [p, outline[(i + 1) % outline.length]!] as const)
	);
	const xs = sides.map(([p]) => p.xMm);
	if (xs.length === 0) return [];
	const [left, right] = [xs.reduce((a, b) => Math.min(a, b)), xs.reduce((a, b) => Math.max(a, b))];
	const heightAt = (x: number): number =>
		sides.reduce((most, [p, q]) => {
			if (x < Math.min(p.xMm, q.xMm) || x > Math.max(p.xMm, q.xMm)) return most;
			const part = p.xMm === q.xMm ? 0 : (x - p.xMm) / (q.xMm - p.xMm);
			return Math.max(most, p.yMm + (q.yMm - p.yMm) * part, p.xMm === q.xMm ? q.yMm : 0);
		}, 0);
	const top = Array.from({ length: PROFILE_STEPS + 1 }, (_, i) => {
		const inset = (right - left) * 1e-6;
		const xMm = left + inset + ((right - left - 2 * inset) * i) / PROFILE_STEPS;
		return { xMm, yMm: heightAt(xMm) };
	});
	return [{ xMm: left, yMm: 0 }, ...top, { xMm: right, yMm: 0 }];
}
