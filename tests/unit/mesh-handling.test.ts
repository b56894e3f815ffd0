import { describe, expect, test } from 'vitest';
import { steppedPulley } from '../../src/lib/core/mesh/demo/stepped-pulley';
import { drainingAreaCm2 } from '../../src/lib/core/mesh/draining';
import { exposedOf } from '../../src/lib/core/mesh/exposed';
import { keyingOf } from '../../src/lib/core/mesh/keying';
import { meshSurface } from '../../src/lib/core/mesh/mesh-surface';
import { peelStart } from '../../src/lib/core/mesh/peel';
import { placedMesh } from '../../src/lib/core/mesh/place';
import { puddlesOf } from '../../src/lib/core/mesh/puddles';
import { refinedMesh } from '../../src/lib/core/mesh/refine';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { measuresOf as solidMeasuresOf } from '../../src/lib/core/geometry/solid-measures';
import { blocks, box, frustum, mapped, sphere } from '../fixtures/mesh-solids';

describe('puddles', () => {
	const pitted = blocks(
		[
			[0, 10, 30, 40],
			[0, 10, 20, 30],
			[0, 12, 20]
		],
		(i, j, k) => !(i === 1 && j === 1 && k === 1)
	);

	test('stand in a pit up to its rim', () => {
		const [puddle, ...others] = puddlesOf(refinedMesh(pitted, 2).mesh);
		expect(others).toEqual([]);
		expect(puddle).toMatchObject({ number: 1, depthMm: 8 });
		expect(puddle!.at[2]).toBe(12);
		expect(Math.abs(puddle!.volumeMl - 1.6)).toBeLessThan(0.35);
	});

	test('do not stand in a slot that is open at its end, nor on a ball', () => {
		const slot = blocks(
			[
				[0, 10, 14, 24],
				[0, 30],
				[0, 12, 20]
			],
			(i, _, k) => !(i === 1 && k === 1)
		);
		expect(puddlesOf(refinedMesh(slot, 2).mesh)).toEqual([]);
		expect(puddlesOf(mapped(sphere(20, 3), ([x, y, z]) => [x, y, z + 20]))).toEqual([]);
	});
});

describe('draining', () => {
	test('is from the walls of a box once the coat is thicker than the sag limit', () => {
		const exposed = exposedOf(box(100, 100, 50));
		// τ / (ρ g) = 20 Pa / (1000 kg/m³ · 9.80665 m/s²) = 2.04 mm on an upright wall.
		const coat = { yieldStressPa: 20, densityGPerMl: 1 };
		expect(drainingAreaCm2(exposed, { ...coat, wetMm: 2 })).toBe(0);
		expect(drainingAreaCm2(exposed, { ...coat, wetMm: 2.1 })).toBeCloseTo(200, 9);
	});
});

describe('keys', () => {
	test('are the corners of a block by themselves', () => {
		expect(keyingOf(new SurfaceDistance(box(80, 60, 30)), 6, 50)).toMatchObject({
			isKeyed: true,
			keysAt: []
		});
	});

	test('are needed where a shell can turn', () => {
		const { slideMm, turnDeg, isKeyed, keysAt } = keyingOf(
			new SurfaceDistance(steppedPulley()),
			6,
			50
		);
		expect(slideMm).toBeLessThan(1);
		expect(turnDeg).toBeGreaterThan(10);
		expect(isKeyed).toBe(false);
		expect(keysAt).toHaveLength(3);
	});
});

describe('peeling', () => {
	test('starts at a corner of a block', () => {
		const placed = placedMesh(box(80, 60, 30), {
			unitMm: 1,
			down: [0, 0, -1],
			turnDeg: 0,
			scale: 1
		});
		const [x, y] = peelStart(new SurfaceDistance(placed))!;
		expect(Math.hypot(x, y)).toBeCloseTo(50, 6);
	});

	test('starts away from the undercut', () => {
		const hooked = blocks(
			[
				[0, 30, 40],
				[0, 30],
				[0, 20, 30]
			],
			(i, _, k) => i === 0 || k === 1
		);
		expect(peelStart(new SurfaceDistance(hooked))![0]).toBeLessThan(15);
	});

	test('starts at the outer edge, not in the bore', () => {
		const [x, y] = peelStart(new SurfaceDistance(steppedPulley()))!;
		expect(Math.hypot(x, y)).toBeGreaterThan(50);
	});
});

describe('the surface for the plan', () => {
	const standing = { id: 's', name: 'S', on: 'board', against: [] };

	test('of a meshed box is that of the box described by hand', () => {
		const placed = placedMesh(box(300, 200, 150), {
			unitMm: 1,
			down: [0, 0, -1],
			turnDeg: 0,
			scale: 1
		});
		const own = meshSurface(placed);
		const hand = solidMeasuresOf({
			...standing,
			shape: 'box',
			lengthMm: 300,
			widthMm: 200,
			heightMm: 150
		});
		expect(own.exposedAreaCm2).toBeCloseTo(hand.sideCm2 + hand.topCm2, 6);
		expect(own.edgeTurnMm).toBeCloseTo(hand.edgeTurnMm, 6);
		expect(own.cornerTurnSr).toBeCloseTo(hand.cornerTurnSr, 6);
		expect(own.footLengthMm).toBeCloseTo(1000, 6);
		expect(own.profile.at(60)).toMatchObject({ yMm: 150 });
	});

	test('of a meshed frustum comes near that described by hand', () => {
		const own = meshSurface(frustum(40, 25, 50, 360));
		const hand = solidMeasuresOf({
			...standing,
			shape: 'frustum',
			bottomDiameterMm: 80,
			topDiameterMm: 50,
			heightMm: 50
		});
		for (const key of ['volumeMl', 'edgeTurnMm', 'cornerTurnSr', 'footLengthMm'] as const) {
			expect(Math.abs(own[key] / hand[key] - 1), key).toBeLessThan(0.001);
		}
		expect(own.steepestWallDeg).toBeCloseTo(hand.steepestWallDeg, 0);
	});

	test('counts the board inside a ring', () => {
		expect(meshSurface(steppedPulley()).enclosedBoardCm2).toBeCloseTo(Math.PI * 0.81, 1);
	});
});
