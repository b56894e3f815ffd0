import { describe, expect, test } from 'vitest';
import { coarserMesh, keepsVolume, simplifiedCopy } from '../../src/lib/core/mesh/coarser';
import { layerVolumes } from '../../src/lib/core/mesh/coat-volumes';
import { heightBlock } from '../../src/lib/core/mesh/demo/height-block';
import { healthOf } from '../../src/lib/core/mesh/health';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import { refinedMesh } from '../../src/lib/core/mesh/refine';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { box, frustum, mapped, sphere, together } from '../fixtures/mesh-solids';

describe('a mesh made coarser', () => {
	test('is as it was when it is coarse enough', () => {
		const mesh = box(3, 4, 5);
		expect(coarserMesh(mesh, 12)).toEqual({ mesh, movedMm: 0, cornerOf: null });
	});

	test('keeps the sharp edges of a box: area and volume are those of the school book', () => {
		const { mesh } = refinedMesh(box(30, 20, 10), 0.4);
		const { mesh: coarse, movedMm } = coarserMesh(mesh, 4000);
		expect(coarse.triangles.length / 3).toBeLessThanOrEqual(4000);
		expect(movedMm).toBeLessThan(3);
		const { area, signedVolume } = measuresOf(coarse);
		expect(Math.abs(area / 2200 - 1)).toBeLessThan(1e-3);
		expect(Math.abs(signedVolume / 6000 - 1)).toBeLessThan(1e-3);
		expect(healthOf(coarse).isWatertight).toBe(true);
	});

	test('stays near a ball: no corner farther away than it says, the volume off by no more than chords sag', () => {
		const fine = sphere(20, 6);
		const { mesh: coarse, movedMm } = coarserMesh(fine, 6000);
		const surface = new SurfaceDistance(fine);
		for (let i = 0; i < coarse.positions.length; i += 3) {
			const [x, y, z] = coarse.positions.subarray(i, i + 3);
			expect(Math.abs(surface.at(x!, y!, z!))).toBeLessThan(movedMm);
		}
		const [was, is] = [measuresOf(fine).signedVolume, measuresOf(coarse).signedVolume];
		// A chord as long as a cell's side sags by side² / 8 r; so much of a shell is 3 sag / r of the ball.
		const sag = (movedMm / Math.sqrt(3)) ** 2 / (8 * 20);
		expect(Math.abs(is / was - 1)).toBeLessThan((3 * sag) / 20);
	});

	const blockCopy = (heightMm: (x: number) => number) => {
		const whole = heightBlock({ lengthMm: 300, widthMm: 200, cells: [120, 60], heightMm });
		return simplifiedCopy(whole, coarserMesh(whole, 3000));
	};

	test('tells by its volume that fins finer than its cells fell together, and that a block kept all', () => {
		expect(keepsVolume(blockCopy((x) => 60 + (Math.round(x / 2.5) % 2) * 40))).toBe(false);
		expect(keepsVolume(blockCopy((x) => 80 * (1 + 0.2 * Math.sin(x / 7))))).toBe(true);
		expect(keepsVolume(null)).toBe(true);
	});

	test('keeps a sheet apart that is thinner than its cells, closed and of the same volume', () => {
		const copy = blockCopy((x) => 2 * (1 + 0.2 * Math.sin(x / 20)));
		expect(copy!.movedMm).toBeGreaterThan(6);
		expect(keepsVolume(copy)).toBe(true);
		const can = refinedMesh(frustum(40, 40, 60, 90), 1).mesh;
		const hollow = mapped(can, ([x, y, z]) => [0.975 * x, 0.975 * y, 1 + (58 / 60) * z]);
		const shell = together(can, { ...hollow, triangles: hollow.triangles.toReversed() });
		const { mesh: coarse, movedMm } = coarserMesh(shell, 6000);
		expect(movedMm).toBeGreaterThan(4);
		expect(healthOf(coarse).isWatertight).toBe(true);
		const [was, is] = [measuresOf(shell).signedVolume, measuresOf(coarse).signedVolume];
		expect(Math.abs(is / was - 1)).toBeLessThan(0.03);
	});

	test('has the coats of the fine one within 0.5 %', () => {
		const fine = heightBlock({
			lengthMm: 60,
			widthMm: 40,
			cells: [120, 120],
			heightMm: (x, y) => 15 + 3 * Math.sin(x / 4) * Math.cos(y / 5)
		});
		const { mesh: coarse } = coarserMesh(fine, 20_000);
		const coats = [fine, coarse].map((mesh) =>
			layerVolumes(mesh, [2, 3]).layers.map(({ volumeMl }) => volumeMl)
		);
		coats[0]!.forEach((ml, i) => expect(Math.abs(coats[1]![i]! / ml - 1)).toBeLessThan(5e-3));
	});
});
