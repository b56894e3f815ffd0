import { describe, expect, test } from 'vitest';
import { DEMO_PATTERNS } from '../../src/lib/core/mesh/demo/demo-patterns';
import { healthOf, type FaultKind, type Health } from '../../src/lib/core/mesh/health';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import type { Mesh } from '../../src/lib/core/mesh/mesh';
import { repairedMesh } from '../../src/lib/core/mesh/repair';
import { bunnyMesh } from '../fixtures/mesh-bunny';
import { slotted } from '../fixtures/mesh-recesses';
import { box, frustum, mapped, sphere, together } from '../fixtures/mesh-solids';
import { CHECKER_VERSION, checkedStl } from '../fixtures/stl-checker';

// Source: ADMesh, Debian's package "admesh"; checked with 0.98.4.
const ifInstalled = test.skipIf(CHECKER_VERSION === null);

const cube = box(10, 10, 10);
const beside = mapped(box(1, 1, 1), ([x, y, z]) => [x + 50, y, z]);

function without(mesh: Mesh, ...left: number[]): Mesh {
	const triangles = mesh.triangles.filter((_, k) => !left.includes(Math.floor(k / 3)));
	return { ...mesh, triangles };
}

function turned(mesh: Mesh, ...which: number[]): Mesh {
	const triangles = mesh.triangles.slice();
	for (const t of which) triangles.subarray(3 * t, 3 * t + 3).reverse();
	return { ...mesh, triangles };
}

const countOf = ({ faults }: Health, kind: FaultKind): number =>
	faults.find((fault) => fault.kind === kind)?.count ?? 0;

describe('a general STL checker and ours agree', () => {
	ifInstalled.each<[string, Mesh]>([
		['a box', cube],
		['a cone', frustum(5, 0, 9, 40)],
		['a ball', sphere(10, 4)],
		['a block with a slot', slotted(1.4, 8, 40)],
		['the bunny', bunnyMesh()],
		['two boxes', together(cube, beside)],
		...DEMO_PATTERNS.map(({ name, mesh }) => [name, mesh()] as [string, Mesh])
	])('that %s is sound, on its parts, its volume and its size [needs admesh]', (_, mesh) => {
		const said = checkedStl(mesh);
		const health = healthOf(mesh);
		const { signedVolume, bounds } = measuresOf(mesh);
		expect(said).toMatchObject({ openEdges: 0, degenerate: 0, reversed: 0, backwardsEdges: 0 });
		expect(health.isWatertight).toBe(true);
		expect(health.faults.filter(({ kind }) => kind !== 'loose parts')).toEqual([]);
		expect(health.shells).toHaveLength(said.parts);
		expect(mesh.triangles.length / 3).toBe(said.facets);
		// An STL file has single precision, seven digits, and the checker sums in it.
		expect(Math.abs(signedVolume / said.volume - 1)).toBeLessThan(2e-4);
		for (const axis of [0, 1, 2]) {
			expect(bounds.min[axis]).toBeCloseTo(said.min[axis]!, 4);
			expect(bounds.max[axis]).toBeCloseTo(said.max[axis]!, 4);
		}
	});

	ifInstalled.each([
		['one triangle', without(cube, 3), 3],
		['two that touch', without(cube, 3, 2), 4],
		['two apart', without(sphere(10, 2), 0, 100), 6]
	])('on the open edges where %s is missing [needs admesh]', (_, mesh, edges) => {
		expect(checkedStl(mesh).openEdges).toBe(edges);
		expect(countOf(healthOf(mesh), 'open edges')).toBe(edges);
	});

	ifInstalled.each([
		['one', turned(cube, 4)],
		['three', turned(sphere(10, 3), 4, 90, 200)],
		['all', turned(cube, ...Array.from({ length: 12 }, (_, t) => t))]
	])('on how many triangles to turn where %s faces inward [needs admesh]', (_, mesh) => {
		const { reversed, volume } = checkedStl(mesh);
		const { mesh: mended, repairs } = repairedMesh(mesh);
		expect(reversed).toBeGreaterThan(0);
		expect(repairs.turnedTriangles).toBe(reversed);
		expect(Math.abs(measuresOf(mended).signedVolume / volume - 1)).toBeLessThan(1e-5);
	});

	ifInstalled('on a triangle without area [needs admesh]', () => {
		const mesh = { ...cube, triangles: Uint32Array.from([...cube.triangles, 0, 0, 1]) };
		expect(checkedStl(mesh).degenerate).toBe(1);
		expect(countOf(healthOf(mesh), 'triangles without area')).toBe(1);
	});
});
