import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layerVolumes } from '../../src/lib/core/mesh/coat-volumes';
import { cubeFraction } from '../../src/lib/core/mesh/cube-cut';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { bunnyMesh } from '../fixtures/mesh-bunny';
import { blocks, box, frustum, mapped, sphere } from '../fixtures/mesh-solids';

const coordinate = fc.double({ min: -20, max: 30, noNaN: true });

describe('distance from a surface', () => {
	const surface = new SurfaceDistance(box(10, 8, 6));

	test('of a box is the formula of the box, inside negative', () => {
		fc.assert(
			fc.property(coordinate, coordinate, coordinate, (x, y, z) => {
				const q = [Math.abs(x - 5) - 5, Math.abs(y - 4) - 4, Math.abs(z - 3) - 3];
				const outside = Math.hypot(...q.map((value) => Math.max(value, 0)));
				const formula = outside + Math.min(Math.max(...q), 0);
				expect(surface.at(x, y, z)).toBeCloseTo(formula, 9);
			}),
			{ numRuns: 500 }
		);
	});

	test('grows along the direction it gives', () => {
		surface.at(14, 11, 3);
		expect([surface.footX, surface.footY, surface.footZ]).toEqual([10, 8, 3]);
		expect([surface.dirX, surface.dirY, surface.dirZ].map((v) => v.toFixed(6))).toEqual([
			'0.800000',
			'0.600000',
			'0.000000'
		]);
	});

	test('to the board counts where the board is nearer', () => {
		const withBoard = surface.withBoard(true);
		expect(withBoard.at(20, 4, 3)).toBe(3);
		expect(withBoard.triangle).toBe(-1);
		expect(withBoard.at(20, 4, 30)).toBeCloseTo(Math.hypot(10, 24), 9);
	});

	test('is the same by search through the tree as by looking at every triangle', () => {
		const mesh = bunnyMesh();
		const quick = new SurfaceDistance(mesh);
		const { positions } = mesh;
		fc.assert(
			fc.property(
				fc.double({ min: -6, max: 6, noNaN: true }),
				fc.double({ min: -2, max: 11, noNaN: true }),
				fc.double({ min: -5, max: 5, noNaN: true }),
				(x, y, z) => {
					const d = Math.abs(quick.at(x, y, z));
					let nearestVertex = Infinity;
					for (let i = 0; i < positions.length; i += 3) {
						nearestVertex = Math.min(
							nearestVertex,
							Math.hypot(positions[i]! - x, positions[i + 1]! - y, positions[i + 2]! - z)
						);
					}
					// No vertex is nearer, and one is near: the bunny's triangles are no longer than 0.9.
					expect(d).toBeLessThanOrEqual(nearestVertex + 1e-12);
					expect(nearestVertex).toBeLessThan(d + 0.9);
				}
			),
			{ numRuns: 100 }
		);
	});
});

describe('a cube cut by a plane', () => {
	test('has the part counted by points', () => {
		fc.assert(
			fc.property(
				fc.double({ min: -1, max: 1, noNaN: true }),
				fc.double({ min: -1, max: 1, noNaN: true }),
				fc.double({ min: -1, max: 1, noNaN: true }),
				fc.double({ min: -0.9, max: 0.9, noNaN: true }),
				(a, b, c, offset) => {
					const length = Math.hypot(a, b, c);
					fc.pre(length > 0.1);
					const [x, y, z] = [a / length, b / length, c / length];
					let count = 0;
					const n = 24;
					for (let i = 0; i < n ** 3; i += 1) {
						const [u, v, w] = [i % n, Math.floor(i / n) % n, Math.floor(i / n / n)].map(
							(k) => (k + 0.5) / n - 0.5
						);
						if (x * u! + y * v! + z * w! <= offset) count += 1;
					}
					expect(Math.abs(cubeFraction(x, y, z, offset) - count / n ** 3)).toBeLessThan(0.045);
					expect(cubeFraction(x, y, z, offset) + cubeFraction(-x, -y, -z, -offset)).toBeCloseTo(
						1,
						9
					);
				}
			),
			{ numRuns: 60 }
		);
	});
});

const total = (mesh: Parameters<typeof layerVolumes>[0], ...thicknesses: number[]): number =>
	layerVolumes(mesh, thicknesses).layers.reduce((sum, { volumeMl }) => sum + volumeMl, 0);
const within = (got: number, exact: number, fraction: number): void =>
	expect(Math.abs(got / exact - 1)).toBeLessThan(fraction);

describe('layers over the board', () => {
	test('of a box are slabs, quarter cylinders and eighths of a ball, nothing below', () => {
		const [l, w, h] = [120, 80, 50];
		for (const t of [1, 6, 20]) {
			const exact =
				(l * w + 2 * h * (l + w)) * t +
				(Math.PI / 4) * t * t * (4 * h + 2 * (l + w)) +
				((2 * Math.PI) / 3) * t ** 3;
			within(total(box(l, w, h), t), exact / 1000, 0.005);
		}
	});

	test('of a cylinder are a pipe, a disc and a rounded rim', () => {
		const [r, h, t] = [40, 30, 5];
		const exact =
			Math.PI * ((r + t) ** 2 - r * r) * h +
			Math.PI * r * r * t +
			(Math.PI ** 2 / 2) * r * t * t +
			((2 * Math.PI) / 3) * t ** 3;
		within(total(frustum(r, r, h, 360), t), exact / 1000, 0.005);
	});

	test('of a ball above the board are shells, each by itself', () => {
		const ball = mapped(sphere(30, 5), ([x, y, z]) => [x, y, z + 45]);
		const { layers, isWithin } = layerVolumes(ball, [0.8, 1.2, 3, 8]);
		// The inscribed mesh is a ball of the same volume to a thousandth.
		const radius = Math.cbrt((measuresOf(ball).signedVolume * 3) / (4 * Math.PI));
		let inner = radius;
		for (const { outerMm, volumeMl, errorMl } of layers) {
			const outer = radius + outerMm;
			const exact = ((4 * Math.PI) / 3000) * (outer ** 3 - inner ** 3);
			within(volumeMl, exact, 0.005);
			expect(errorMl).toBeLessThan(0.005 * volumeMl);
			inner = outer;
		}
		expect(isWithin).toBe(true);
	});

	test('fill a pit and dip above it', () => {
		const [w, depth, t] = [10, 12, 8];
		const pitted = blocks(
			[
				[0, 35, 35 + w, 80],
				[0, 35, 35 + w, 80],
				[0, 30 - depth, 30]
			],
			(i, j, k) => !(i === 1 && j === 1 && k === 1)
		);
		const flat =
			(80 * 80 + 4 * 80 * 30) * t +
			(Math.PI / 4) * t * t * (4 * 30 + 4 * 80) +
			((2 * Math.PI) / 3) * t ** 3;
		let dip = 0;
		const n = 2000;
		for (let i = 0; i < n; i += 1) {
			const rho = ((i + 0.5) * w) / 2 / n;
			dip += ((t - Math.sqrt(t * t - rho * rho)) * 4 * (w - 2 * rho) * w) / 2 / n;
		}
		within(total(pitted, t), (flat + w * w * depth - dip) / 1000, 0.005);
	});

	test('do not depend on how the pattern is turned or in what order its triangles stand', () => {
		const mesh = mapped(bunnyMesh(), ([x, y, z]) => [10 * x, -10 * z, 10 * (y + 0.01)]);
		const reference = layerVolumes(mesh, [2]).layers[0]!;
		const angle = 0.7;
		const turned = mapped(mesh, ([x, y, z]) => [
			x * Math.cos(angle) - y * Math.sin(angle),
			x * Math.sin(angle) + y * Math.cos(angle),
			z
		]);
		const reversed = {
			...mesh,
			triangles: Uint32Array.from({ length: mesh.triangles.length }, (_, k) =>
				mesh.triangles.at(-3 - (k - (k % 3)) + (k % 3))!
			)
		};
		within(layerVolumes(turned, [2]).layers[0]!.volumeMl, reference.volumeMl, 0.003);
		expect(layerVolumes(reversed, [2]).layers[0]!.volumeMl).toBeCloseTo(reference.volumeMl, 6);
	});

	test('are the same where cells far from any surface are looked at no closer', () => {
		class LooksEverywhere extends SurfaceDistance {
			override comesWithin(): boolean {
				return true;
			}
		}
		// A pit and walls both many cells wide: cells far out, far in, and far within the pit.
		const lines = [0, 40, 110, 150];
		const mesh = blocks([lines, lines, [0, 40, 90]], (i, j, k) => i !== 1 || j !== 1 || k === 0);
		const [quick, slow] = [new SurfaceDistance(mesh), new LooksEverywhere(mesh)].map((surface) =>
			layerVolumes(mesh, [0.5, 1], surface)
		);
		expect(quick).toEqual(slow);
	});

	test('refuse a layer of nothing and a sheet', () => {
		expect(() => layerVolumes(box(1, 1, 1), [1, 0])).toThrow('above 0');
		expect(() =>
			layerVolumes(
				{
					positions: Float64Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0),
					triangles: Uint32Array.of(0, 1, 2)
				},
				[1]
			)
		).toThrow('volume');
	});
});
