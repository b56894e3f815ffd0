import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { healthOf, type FaultKind } from '../../src/lib/core/mesh/health';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import type { Mesh } from '../../src/lib/core/mesh/mesh';
import { repairedMesh } from '../../src/lib/core/mesh/repair';
import { bunnyMesh } from '../fixtures/mesh-bunny';
import { blocks, box, frustum, mapped, meshOf, sphere, together } from '../fixtures/mesh-solids';

const shifted = (mesh: Mesh, x: number): Mesh =>
	mapped(mesh, ([a, b, c]) => [a + x, b + x / 7, c + x / 5]);

function without(mesh: Mesh, ...triangles: number[]): Mesh {
	return {
		...mesh,
		triangles: mesh.triangles.filter((_, k) => !triangles.includes(Math.floor(k / 3)))
	};
}

function turned(mesh: Mesh, ...which: number[]): Mesh {
	const triangles = mesh.triangles.slice();
	for (const t of which) triangles.subarray(3 * t, 3 * t + 3).reverse();
	return { ...mesh, triangles };
}

const all = (mesh: Mesh): number[] =>
	Array.from({ length: mesh.triangles.length / 3 }, (_, i) => i);
const cube = box(10, 10, 10);

const ill: [FaultKind, Mesh, number][] = [
	['open edges', without(cube, 3), 3],
	[
		'edges of three or more',
		{ ...cube, triangles: Uint32Array.from([...cube.triangles, 0, 3, 7]) },
		2
	],
	['turned neighbors', turned(cube, 4), 3],
	['inside out', turned(cube, ...all(cube)), 12],
	['loose parts', together(cube, shifted(box(1, 1, 1), 50)), 1],
	[
		'doubled triangles',
		{ ...cube, triangles: Uint32Array.from([...cube.triangles, ...cube.triangles.subarray(0, 3)]) },
		1
	],
	[
		'triangles without area',
		{ ...cube, triangles: Uint32Array.from([...cube.triangles, 0, 0, 1]) },
		1
	],
	[
		'slivers',
		meshOf([
			[0, 0, 0],
			[1000, 0, 0],
			[500, 0.5, 0],
			[0, 0, 0],
			[1000, 0, 0],
			[500, 400, 0]
		]),
		1
	],
	[
		'parts within parts',
		together(
			sphere(10, 3),
			mapped(sphere(4, 3), ([x, y, z]) => [x + 3, y, z])
		),
		1
	],
	['crossing triangles', together(cube, shifted(cube, 5)), 20],
	[
		'no volume',
		meshOf([
			[0, 0, 0],
			[1, 0, 0],
			[0, 1, 0]
		]),
		1
	]
];

describe('a mesh that is well', () => {
	test.each([
		['a box', cube],
		['a cone', frustum(5, 0, 9, 40)],
		['the bunny', bunnyMesh()],
		[
			'a ball with a hollow',
			together(
				sphere(10, 3),
				mapped(sphere(5, 3), ([x, y, z]) => [x, y, -z])
			)
		]
	])('%s has no fault', (_, mesh) => {
		const { isWatertight, faults, trust, isComplete } = healthOf(mesh);
		expect(faults.map(({ kind }) => kind)).toEqual([]);
		expect(isWatertight && isComplete).toBe(true);
		expect(trust).toEqual({ area: true, volume: true, distance: true });
	});
});

describe('of parts on one board', () => {
	const nested = (mesh: Mesh) =>
		healthOf(mesh).faults.filter(({ kind }) => kind === 'parts within parts').length;
	const moved = (mesh: Mesh, [dx, dy, dz]: readonly [number, number, number]) =>
		mapped(mesh, ([x, y, z]) => [x + dx, y + dy, z + dz]);
	const rotated = (mesh: Mesh, angle: number) =>
		mapped(mesh, ([x, y, z]) => [
			x * Math.cos(angle) - y * Math.sin(angle),
			x * Math.sin(angle) + y * Math.cos(angle),
			z
		]);
	const plate = box(40, 40, 10);

	test.each([0, 0.37, 1.1])(
		'one within another on the same foot is found, turned by %d',
		(angle) => {
			const both = together(plate, moved(box(10, 10, 5), [12, 13, 0]));
			expect(nested(rotated(both, angle))).toBe(1);
		}
	);

	test.each([
		[0, 0],
		[5, 5],
		[7, 3],
		[13, 14],
		[20, 20]
	])('one that stands on another at %d, %d is not within it', (x, y) => {
		const both = together(plate, moved(cube, [x, y, 10]));
		for (const angle of [0, 0.37, 1.1]) expect(nested(rotated(both, angle))).toBe(0);
	});
});

describe('each fault is found, counted and shown', () => {
	test.each(ill)('%s', (kind, mesh, count) => {
		const fault = healthOf(mesh).faults.find((found) => found.kind === kind);
		expect(fault?.triangles.length).toBeGreaterThan(0);
		if (kind === 'crossing triangles') expect(fault!.count).toBeGreaterThanOrEqual(6);
		else expect(fault!.count).toBe(count);
	});

	test.each([
		['one within another', together(sphere(10, 3), sphere(4, 3))],
		['two that cut through each other', together(cube, shifted(cube, 5))]
	])('of parts that overlap nothing is trusted: %s', (_, mesh) => {
		expect(healthOf(mesh).trust).toEqual({ area: false, volume: false, distance: false });
	});

	test('a body within the hollow of another, and one in the hole of a ring, overlap nothing', () => {
		const hollow = together(
			sphere(10, 3),
			mapped(sphere(8, 3), ([x, y, z]) => [x, y, -z]),
			sphere(4, 3)
		);
		const lines = [0, 4, 6, 10];
		const ring = blocks([lines, lines, [0, 3]], (i, j) => i !== 1 || j !== 1);
		const inHole = mapped(box(1, 1, 1), ([x, y, z]) => [x + 4.5, y + 4.5, z + 1]);
		for (const mesh of [hollow, together(ring, inHole)]) {
			expect(healthOf(mesh).trust).toEqual({ area: true, volume: true, distance: true });
		}
	});

	test('an open mesh is not trusted for volume', () => {
		expect(healthOf(without(cube, 3)).trust).toEqual({
			area: true,
			volume: false,
			distance: false
		});
	});

	test('a hundred thousand loose parts end in a bounded time', () => {
		const count = 100_000;
		const corners = Float64Array.from(
			{ length: 9 * count },
			(_, k) => Math.floor(k / 9) * 3 + [0, 0, 0, 1, 0, 0, 0, 1, 0][k % 9]!
		);
		const mesh = {
			positions: corners,
			triangles: Uint32Array.from({ length: 3 * count }, (_, i) => i)
		};
		expect(healthOf(mesh).faults.find(({ kind }) => kind === 'loose parts')?.count).toBe(count - 1);
	});
});

describe('repairs', () => {
	test('turn everything outward whichever triangles were turned', () => {
		const whole = sphere(5, 2);
		fc.assert(
			fc.property(
				fc.uniqueArray(fc.integer({ min: 0, max: whole.triangles.length / 3 - 1 })),
				(which) => {
					const { mesh, repairs } = repairedMesh(turned(whole, ...which));
					expect(mesh.triangles.length).toBe(whole.triangles.length);
					expect(measuresOf(mesh).signedVolume).toBeCloseTo(measuresOf(whole).signedVolume, 9);
					expect(repairs.turnedTriangles).toBe(which.length);
				}
			),
			{ numRuns: 30 }
		);
	});

	test('join vertices, drop doubles and points, and leave the shape', () => {
		const split: Mesh = {
			positions: Float64Array.from(
				[...cube.triangles].flatMap((i) => [...cube.positions.subarray(3 * i, 3 * i + 3)])
			),
			triangles: Uint32Array.from([...cube.triangles.keys(), 0, 1, 2, 5, 5, 6])
		};
		const { mesh, repairs } = repairedMesh(split);
		expect(repairs).toEqual({
			joinedVertices: 28,
			droppedTriangles: 2,
			turnedTriangles: 0,
			hiddenFraction: 0
		});
		expect(healthOf(mesh).faults).toEqual([]);
		expect(measuresOf(mesh).signedVolume).toBeCloseTo(1000, 9);
	});

	test('keep a hollow a hollow and leave a hole open', () => {
		const hollow = together(
			sphere(10, 2),
			mapped(sphere(5, 2), ([x, y, z]) => [x, y, -z])
		);
		expect(repairedMesh(hollow).repairs.turnedTriangles).toBe(0);
		expect(healthOf(repairedMesh(without(cube, 0)).mesh).isWatertight).toBe(false);
	});
});
