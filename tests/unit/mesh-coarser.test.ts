import { describe, expect, test } from 'vitest';
import { coarserMesh, keepsVolume, simplifiedCopy } from '../../src/lib/core/mesh/coarser';
import { layerVolumes } from '../../src/lib/core/mesh/coat-volumes';
import { heightBlock } from '../../src/lib/core/mesh/demo/height-block';
import { healthOf } from '../../src/lib/core/mesh/health';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import { refinedMesh } from '../../src/lib/core/mesh/refine';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { box, sphere } from '../fixtures/mesh-solids';

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

	test('tells by its volume that a thin sheet fell together, and that a block did not', () => {
		const copyOf = (heightMm: number) => {
			const whole = heightBlock({
				lengthMm: 300,
				widthMm: 200,
				cells: [60, 60],
				heightMm: (x) => heightMm * (1 + 0.2 * Math.sin(x / 7))
			});
			return simplifiedCopy(whole, coarserMesh(whole, 3000));
		};
		expect(keepsVolume(copyOf(2))).toBe(false);
		expect(keepsVolume(copyOf(80))).toBe(true);
		expect(keepsVolume(null)).toBe(true);
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
