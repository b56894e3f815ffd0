import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exposedOf } from '../../src/lib/core/mesh/exposed';
import { healthOf } from '../../src/lib/core/mesh/health';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import type { Mesh, Vec3 } from '../../src/lib/core/mesh/mesh';
import { joinedParts, repairedMesh } from '../../src/lib/core/mesh/repair';
import { unitedMesh } from '../../src/lib/core/mesh/united';
import { binaryStl } from '../../src/lib/core/mesh/write-stl';
import { readMesh } from '../../src/lib/core/mesh/read-mesh';
import { box, frustum, mapped, sphere, together } from '../fixtures/mesh-solids';

const moved = (mesh: Mesh, [dx, dy, dz]: Vec3): Mesh =>
	mapped(mesh, ([x, y, z]) => [x + dx, y + dy, z + dz]);
const turned = (mesh: Mesh, angle: number): Mesh =>
	mapped(mesh, ([x, y, z]) => [
		x * Math.cos(angle) - z * Math.sin(angle),
		y,
		x * Math.sin(angle) + z * Math.cos(angle)
	]);
/** As a file keeps it: single precision. */
const filed = (mesh: Mesh): Mesh => {
	const read = readMesh(binaryStl(mesh), 'parts.stl');
	if (!read.ok) throw new Error(read.what);
	return read.mesh;
};
const mended = (...parts: Mesh[]) => joinedParts(repairedMesh(filed(together(...parts))));

const base = box(100, 80, 30);
const stem = box(20, 20, 30);
/** Area of base and stem, mm², less what lies on each other twice. */
const APART = 2 * (100 * 80 + 100 * 30 + 80 * 30) + 2 * (20 * 20) + 4 * 20 * 30;

describe('parts that touch or overlap become one body', () => {
	test.each<[string, Mesh, number, number]>([
		['face to face', moved(stem, [40, 30, 30]), APART - 800, 252_000],
		['sunk by 1 mm', moved(stem, [40, 30, 29]), APART - 800 - 80, 251_600],
		['apart by less than can be seen', moved(stem, [40, 30, 30.005]), APART - 800, 252_000],
		['overlapping by as little', moved(stem, [40, 30, 29.995]), APART - 800, 252_000],
		['with a wall in the same plane', moved(stem, [0, 30, 30]), APART - 800, 252_000],
		['in a corner', moved(stem, [80, 60, 30]), APART - 800, 252_000],
		['half in, walls in the same plane', moved(stem, [-10, 0, 0]), 27_800, 246_000]
	])('%s', (_, other, areaMm2, volumeMm3) => {
		for (const angle of [0, 0.3, 1.1]) {
			const { mesh, repairs } = mended(turned(base, angle), turned(other, angle));
			const { area, signedVolume } = measuresOf(mesh);
			expect(area).toBeCloseTo(areaMm2, -0.5);
			expect(signedVolume).toBeCloseTo(volumeMm3, -1);
			const { isWatertight, shells, trust } = healthOf(mesh);
			expect(shells).toHaveLength(1);
			expect(isWatertight).toBe(true);
			expect(trust).toEqual({ area: true, volume: true, distance: true });
			expect(repairs.hiddenFraction).toBeGreaterThan(0.01);
		}
	});

	test('faces on each other are met by no brush, and hang over nothing', () => {
		const { exposedAreaCm2, footprintCm2, slopeAreasCm2 } = exposedOf(
			mended(base, moved(stem, [40, 30, 30])).mesh
		);
		expect(footprintCm2).toBeCloseTo(80, 3);
		expect(exposedAreaCm2).toBeCloseTo((APART - 800 - 8000) / 100, 3);
		expect(slopeAreasCm2.at(-1)).toBe(0);
	});

	test('faces with the same corners, cut by the same diagonal or by the other one', () => {
		const onTop = moved(base, [0, 0, 30]);
		const swapped = mapped(onTop, ([x, y, z]) => [100 - x, y, z]);
		const mirrored = { ...swapped, triangles: swapped.triangles.toReversed() };
		for (const other of [onTop, mirrored]) {
			const { mesh, repairs } = mended(base, other);
			expect(measuresOf(mesh).area).toBeCloseTo(2 * (8000 + 6000 + 4800), 6);
			expect(healthOf(mesh).faults).toEqual([]);
			expect(repairs.hiddenFraction).toBeCloseTo(16_000 / (2 * 26_800), 6);
		}
	});

	test('one within another is left out, one in a hollow and one beside it stay', () => {
		const within = mended(base, moved(box(5, 5, 5), [10, 10, 10])).mesh;
		expect(measuresOf(within)).toMatchObject({ area: 26_800, signedVolume: 240_000 });
		const hollow = mapped(moved(box(40, 40, 20), [10, 10, 5]), (p) => p);
		const inHollow = together(
			base,
			{ ...hollow, triangles: hollow.triangles.toReversed() },
			moved(box(5, 5, 5), [20, 20, 10])
		);
		expect(unitedMesh(inHollow)).toBeNull();
		expect(unitedMesh(together(base, moved(stem, [200, 0, 0])))).toBeNull();
	});

	test('two that touch along an edge alone are closed, each for itself', () => {
		const { mesh } = mended(stem, moved(stem, [20, 20, 0]));
		expect(healthOf(mesh)).toMatchObject({ isWatertight: true, trust: { distance: true } });
		expect(measuresOf(mesh).area).toBeCloseTo(2 * (800 + 2400), 6);
	});

	test('a sheet given once for each side, and a body given so, are no parts that touch', () => {
		const twoSided = (mesh: Mesh) =>
			together(mesh, { ...mesh, triangles: mesh.triangles.toReversed() });
		expect(measuresOf(repairedMesh(twoSided(base)).mesh).area).toBeCloseTo(26_800, 6);
	});

	test('an open part is not joined: nobody can tell its inside', () => {
		const open = { ...stem, triangles: stem.triangles.subarray(6) };
		expect(unitedMesh(together(base, moved(open, [40, 30, 29])))).toBeNull();
	});
});

test('of boxes on a grid the outside is that of the cells they fill', () => {
	const SIDE = 6;
	const start = fc.integer({ min: 0, max: SIDE - 2 });
	const one = fc.tuple(
		start,
		start,
		start,
		fc.integer({ min: 1, max: 4 }),
		fc.integer({ min: 1, max: 4 }),
		fc.integer({ min: 1, max: 4 })
	);
	fc.assert(
		fc.property(fc.array(one, { minLength: 2, maxLength: 5 }), (boxes) => {
			const isFull = (x: number, y: number, z: number): boolean =>
				boxes.some(
					([a, b, c, dx, dy, dz]) =>
						x >= a && x < a + dx && y >= b && y < b + dy && z >= c && z < c + dz
				);
			let [cells, faces] = [0, 0];
			for (let n = 0; n < 12 ** 3; n += 1) {
				const [x, y, z] = [n % 12, Math.floor(n / 12) % 12, Math.floor(n / 144)];
				if (!isFull(x, y, z)) continue;
				cells += 1;
				for (const [i, j, k] of [
					[1, 0, 0],
					[-1, 0, 0],
					[0, 1, 0],
					[0, -1, 0],
					[0, 0, 1],
					[0, 0, -1]
				] as const)
					if (!isFull(x + i, y + j, z + k)) faces += 1;
			}
			const { mesh } = mended(
				...boxes.map(([a, b, c, ...sides]) => moved(box(...sides), [a, b, c]))
			);
			expect(measuresOf(mesh).area).toBeCloseTo(faces, 3);
			expect(measuresOf(mesh).signedVolume).toBeCloseTo(cells, 3);
			expect(healthOf(mesh).isWatertight).toBe(true);
		}),
		{ numRuns: 150, seed: 20261201 }
	);
});

test('round parts that pass through each other anyhow', () => {
	fc.assert(
		fc.property(
			fc.double({ min: 0, max: 25, noNaN: true }),
			fc.double({ min: 0, max: Math.PI, noNaN: true }),
			fc.double({ min: -5, max: 25, noNaN: true }),
			(x, angle, z) => {
				const rod = moved(turned(frustum(6, 4, 30, 40), angle), [x, 0.7, z]);
				const { mesh } = mended(sphere(15, 3), rod);
				expect(healthOf(mesh)).toMatchObject({ isWatertight: true });
				expect(healthOf(mesh).trust).toEqual({ area: true, volume: true, distance: true });
			}
		),
		{ numRuns: 25, seed: 20261201 }
	);
});
