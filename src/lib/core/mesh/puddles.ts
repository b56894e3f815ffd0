import { coatedVertices } from './coated-vertices';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { MinHeap } from './min-heap';
import { LYING_MM } from './standing';
import { UnionFind } from './union-find';
import { vertexLinks } from './vertex-links';

/** A low place where thin material runs together and stands, as the pattern lies. */
export interface Puddle {
	/** From 1, the largest first. */
	number: number;
	/** The lowest point, mm. */
	at: Vec3;
	/** How deep it stands before it runs over. */
	depthMm: number;
	areaCm2: number;
	volumeMl: number;
}

const MOST_PUDDLES = 60;

/**
 * Low places of a placed pattern, found by flooding its surface from the board upward.
 * Source: Barnes, Lehman, Mulla 2014, Priority-flood, Computers & Geosciences 62 (from memory).
 *
 * @param leastDepthMm - shallower ones are left out
 */
export function puddlesOf(mesh: Mesh, leastDepthMm = 0.2): Puddle[] {
	const { normals, areasMm2 } = coatedVertices(mesh);
	const levels = floodLevels(mesh, areasMm2);
	const depths = levels.map((level, v) => {
		const depth = level - mesh.positions[3 * v + 2]!;
		return depth > 1e-9 && depth < Infinity ? depth : 0;
	});
	return groupsOf(mesh, depths)
		.map((vertices) => {
			const lowest = vertices.reduce(
				(best, v) => (depths[v]! > depths[best]! ? v : best),
				vertices[0]!
			);
			const sum = (of: (v: number) => number): number =>
				vertices.reduce((total, v) => total + of(v), 0);
			return {
				number: 0,
				at: vertexAt(mesh, lowest),
				depthMm: depths[lowest]!,
				areaCm2: sum((v) => areasMm2[v]!) / 100,
				volumeMl: sum((v) => areasMm2[v]! * Math.max(0, normals[3 * v + 2]!) * depths[v]!) / 1000
			};
		})
		.filter(({ depthMm }) => depthMm >= leastDepthMm)
		.sort((a, b) => b.volumeMl - a.volumeMl)
		.slice(0, MOST_PUDDLES)
		.map((puddle, i) => ({ ...puddle, number: i + 1 }));
}

/** For each vertex the height to which it must fill before it drains to the board. */
function floodLevels(mesh: Mesh, areasMm2: Float64Array): Float64Array {
	const { starts, links } = vertexLinks(mesh);
	const levels = new Float64Array(areasMm2.length).fill(Infinity);
	const heap = new MinHeap();
	for (let v = 0; v < levels.length; v += 1) {
		const z = mesh.positions[3 * v + 2]!;
		if (z > LYING_MM || areasMm2[v] === 0) continue;
		levels[v] = z;
		heap.push(v, z);
	}
	for (let v = heap.pop(); v !== undefined; v = heap.pop()) {
		for (let k = starts[v]!; k < starts[v + 1]!; k += 1) {
			const w = links[k]!;
			const level = Math.max(levels[v]!, mesh.positions[3 * w + 2]!);
			if (areasMm2[w] === 0 || level >= levels[w]!) continue;
			levels[w] = level;
			heap.push(w, level);
		}
	}
	return levels;
}

function groupsOf({ triangles }: Mesh, depths: Float64Array): number[][] {
	const joined = new UnionFind(depths.length);
	for (let t = 0; t < triangles.length; t += 3) {
		const wet = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!].filter((v) => depths[v]! > 0);
		for (let k = 1; k < wet.length; k += 1) joined.join(wet[0]!, wet[k]!);
	}
	const groups = new Map<number, number[]>();
	depths.forEach((depth, v) => {
		if (depth === 0) return;
		const group = groups.get(joined.rootOf(v));
		if (group) group.push(v);
		else groups.set(joined.rootOf(v), [v]);
	});
	return [...groups.values()];
}
