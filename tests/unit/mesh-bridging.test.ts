import { describe, expect, test } from 'vitest';
import { bridgingOf } from '../../src/lib/core/mesh/bridging';
import { detailAdvice } from '../../src/lib/core/mesh/detail-advice';
import { healthOf } from '../../src/lib/core/mesh/health';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import { coatReachMm } from '../../src/lib/core/mesh/reach';
import { refinedMesh } from '../../src/lib/core/mesh/refine';
import { blocks, box, frustum, mapped, sphere } from '../fixtures/mesh-solids';
import { grooved, slotted } from '../fixtures/mesh-recesses';

const within = (got: number, exact: number, fraction: number): void =>
	expect(Math.abs(got / exact - 1), `got ${got}, expected ${exact}`).toBeLessThan(fraction);

describe('a finer mesh of the same surface', () => {
	test('stays closed and keeps its measures', () => {
		const { mesh, parentOf } = refinedMesh(box(10, 7, 3), 1);
		expect(healthOf(mesh).faults).toEqual([]);
		expect(measuresOf(mesh).area).toBeCloseTo(242, 9);
		expect(Math.max(...parentOf)).toBe(11);
		const longest = Math.max(
			...Array.from(mesh.triangles, (v, k) => {
				const w = mesh.triangles[k - (k % 3) + ((k + 1) % 3)]!;
				return Math.hypot(
					...[0, 1, 2].map((a) => mesh.positions[3 * v + a]! - mesh.positions[3 * w + a]!)
				);
			})
		);
		expect(longest).toBeLessThanOrEqual(1);
	});

	test('stops before it is too many', () => {
		expect(refinedMesh(box(10, 7, 3), 0.01, 500).mesh.triangles.length / 3).toBeLessThanOrEqual(
			500
		);
	});
});

describe('the reach of a first coat', () => {
	test('is its thickness when it is stiff and less when it slumps', () => {
		expect(coatReachMm({ wetMm: 1, yieldPa: 100, densityGPerMl: 1.1 })).toBe(1);
		// ρ g w = 2 τ with 1000 kg/m³ and 9.80665 Pa: a slot of 2 mm.
		expect(coatReachMm({ wetMm: 3, yieldPa: 9.80665, densityGPerMl: 1 })).toBeCloseTo(1, 12);
		expect(() => coatReachMm({ wetMm: 0, yieldPa: 1, densityGPerMl: 1 })).toThrow('above 0');
	});
});

describe('bridging', () => {
	const r = 1.5;
	const above = (mesh: ReturnType<typeof grooved>, reachMm = r) => {
		const found = bridgingOf(mesh, { reachMm });
		return { ...found, recesses: found.places.filter(({ kind }) => kind !== 'foot') };
	};

	test('of a V-groove is the wedge below the ball that touches both walls', () => {
		const alpha = Math.PI / 6;
		const [short, long] = [above(grooved(alpha, 8, 8)), above(grooved(alpha, 8, 16))];
		expect(long.recesses).toHaveLength(1);
		const place = long.recesses[0]!;

		within(place.depthMm, r / Math.sin(alpha) - r, 0.02);
		const section = r * r * (1 / Math.tan(alpha) - (Math.PI / 2 - alpha));
		within((place.airMl - short.recesses[0]!.airMl) / 8, section / 1000, 0.05);
		expect(place.at[2]).toBeCloseTo(12, 6);
	});

	test('of a slot is all of it but the cap of the ball that rests on its lips', () => {
		const [w, depth] = [2, 6];
		const [short, long] = [above(slotted(w, depth, 8)), above(slotted(w, depth, 16))];
		const place = long.recesses[0]!;
		const rise = Math.sqrt(r * r - (w * w) / 4);
		within(place.depthMm, Math.hypot(w / 2, depth + rise) - r, 0.02);
		within(place.widthMm, w, 0.08);
		const section = w * depth - (r * r * Math.asin(w / 2 / r) - (w / 2) * rise);
		within((place.airMl - short.recesses[0]!.airMl) / 8, section / 1000, 0.05);
	});

	test('leaves a slot wider than the ball but for its inner corners', () => {
		const { recesses } = above(slotted(4, 6, 10), 1);
		expect(recesses.every(({ kind }) => kind === 'inner corner')).toBe(true);
		expect(recesses).toHaveLength(2);
		for (const { depthMm } of recesses) within(depthMm, Math.SQRT2 - 1, 0.02);
	});

	test('finds the line where a wall meets the board', () => {
		const { places } = bridgingOf(box(30, 20, 10), { reachMm: 2 });
		expect(places.map(({ kind }) => kind)).toEqual(['foot']);
		within(places[0]!.depthMm, 2 * (Math.SQRT2 - 1), 0.03);
	});

	test('finds a blind hole as a pit, with its width', () => {
		const pitted = blocks(
			[
				[0, 10, 12, 24],
				[0, 9, 11, 20],
				[0, 6, 10]
			],
			(i, j, k) => !(i === 1 && j === 1 && k === 1)
		);
		const { recesses } = above(pitted, 1.2);
		expect(recesses.map(({ kind }) => kind)).toEqual(['pit']);
		expect(recesses[0]!.at[2]).toBe(6);
		within(recesses[0]!.widthMm, 2, 0.1);
	});

	test('is none on a ball and none on a bore wide enough', () => {
		const ball = mapped(sphere(20, 4), ([x, y, z]) => [x, y, z + 30]);
		expect(bridgingOf(ball, { reachMm: 3 }).places).toEqual([]);
		expect(
			bridgingOf(frustum(20, 10, 15, 64), { reachMm: 2 }).places.filter(
				({ kind }) => kind !== 'foot'
			)
		).toEqual([]);
	});

	test('grows with the reach', () => {
		const mesh = grooved(0.5, 8, 4);
		const depths = [1, 1.5, 2].map((reach) => above(mesh, reach).recesses[0]!.depthMm);
		expect(depths).toEqual(depths.toSorted((a, b) => a - b));
	});

	test('asks for the detail coats that its recesses need', () => {
		const at = (reachMm: number) => bridgingOf(slotted(2, 6, 6), { reachMm });
		expect(detailAdvice(at(0.6), at(0.5)).detailCoats).toBe(0);
		expect(detailAdvice(at(1.5), at(0.6)).detailCoats).toBe(1);
		const { detailCoats, brushTwice } = detailAdvice(at(1.8), at(1.3));
		expect(detailCoats).toBe(2);
		expect(brushTwice).toHaveLength(1);
	});

	test('refuses a reach of nothing', () => {
		expect(() => bridgingOf(box(1, 1, 1), { reachMm: 0 })).toThrow('above 0');
	});
});
