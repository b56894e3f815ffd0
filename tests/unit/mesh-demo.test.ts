import { expect, test } from 'vitest';
import { DEMO_NAMES, DEMO_PATTERNS, demoPattern } from '../../src/lib/core/mesh/demo-patterns';
import { exposedOf } from '../../src/lib/core/mesh/exposed';
import { healthOf } from '../../src/lib/core/mesh/health';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import { readMesh } from '../../src/lib/core/mesh/read-mesh';
import { binaryStl } from '../../src/lib/core/mesh/write-stl';

test.each(DEMO_PATTERNS)('%s is a closed body on the board, without any fault', (name) => {
	const mesh = demoPattern(name);
	const { isWatertight, faults, trust, isComplete } = healthOf(mesh);
	expect(faults).toEqual([]);
	expect({ isWatertight, isComplete, ...trust }).toEqual({
		isWatertight: true,
		isComplete: true,
		area: true,
		volume: true,
		distance: true
	});
	const { signedVolume, bounds } = measuresOf(mesh);
	expect(signedVolume).toBeGreaterThan(50_000);
	expect(bounds.min[2]).toBe(0);
});

test('the sheave is the sum of its frustums, and leans out', () => {
	// V = h/3·(R² + R·r + r²)·π for each step, of a 144-sided pyramid stump instead of a round one.
	const steps = [
		[70, 70, 18],
		[70, 58, 2],
		[58, 52, 10],
		[52, 58, 10],
		[58, 58, 8],
		[36, 36, 18],
		[24, 22, 8]
	] as const;
	const polygon = (144 / 2) * Math.sin((2 * Math.PI) / 144);
	const exact = steps.reduce(
		(sum, [R, r, h]) => sum + (polygon * h * (R * R + R * r + r * r)) / 3,
		0
	);
	const mesh = demoPattern('sheave');
	expect(measuresOf(mesh).signedVolume / exact).toBeCloseTo(1, 9);
	expect(exposedOf(mesh).steepestWallDeg).toBeCloseTo(90 + (Math.atan2(6, 10) * 180) / Math.PI, 1);
});

test.each(DEMO_PATTERNS)('%s comes back from its own file as it was', (name) => {
	const mesh = demoPattern(name);
	const read = readMesh(binaryStl(mesh), DEMO_NAMES[name].file);
	if (!read.ok) throw new Error(read.what);
	expect(read.format).toBe('stl');
	expect(read.mesh.triangles.length).toBe(mesh.triangles.length);
	const [a, b] = [measuresOf(mesh), measuresOf(read.mesh)];
	// Single precision has seven digits.
	expect(b.signedVolume / a.signedVolume).toBeCloseTo(1, 6);
	expect(b.area / a.area).toBeCloseTo(1, 6);
});
