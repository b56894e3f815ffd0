import { describe, expect, test } from 'vitest';
import type { Body } from '../../src/lib/core/geometry/pattern';
import { bodySchema } from '../../src/lib/core/geometry/pattern';
import { bodyProblems, surfaceOf } from '../../src/lib/core/geometry/solids';
import { coatVolumeMl } from '../../src/lib/core/laws/coat-volume';
import { offsetVolumeMl } from '../../src/lib/core/laws/offset-volume';
import type { Mesh } from '../../src/lib/core/mesh/mesh';
import { measuredPattern, patternOffsets } from '../../src/lib/core/mesh/pattern-numbers';
import { steppedPulley } from '../../src/lib/core/mesh/demo/stepped-pulley';
import { placedMesh } from '../../src/lib/core/mesh/place';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { testInputs } from '../fixtures/materials';
import { meshBodyOf } from '../fixtures/mesh-body';
import { blocks, box, frustum, sphere } from '../fixtures/mesh-solids';

const onBoard = (mesh: Mesh): Mesh =>
	placedMesh(mesh, { unitMm: 1, down: [0, 0, -1], turnDeg: 0, scale: 1 });

const BOX = { lengthMm: 200, widthMm: 120, heightMm: 60 };
const boxSolid: Body = {
	kind: 'solids',
	solids: [{ shape: 'box', id: 'box', name: 'Box', on: 'board', against: [], ...BOX }]
};

describe('a box as a mesh and as a solid', () => {
	const body = meshBodyOf(onBoard(box(200, 120, 60)));

	test('has the same surface', () => {
		const [ofMesh, ofSolid] = [surfaceOf(body), surfaceOf(boxSolid)];
		for (const key of [
			'exposedAreaCm2',
			'volumeMl',
			'footprintCm2',
			'footLengthMm',
			'enclosedBoardCm2',
			'lengthMm',
			'widthMm',
			'heightMm',
			'steepestWallDeg'
		] as const) {
			expect(ofMesh[key], key).toBeCloseTo(ofSolid[key], 9);
		}
		expect(ofMesh.profile).toEqual(ofSolid.profile);
	});

	test('takes coats within 0.5 % of Steiner’s formula, at and between the distances computed', () => {
		const solid = surfaceOf(boxSolid);
		for (const t of [0.4, 1, 1.5, 3, 5.5, 9, 13, 20, 30, 45, 54]) {
			const exact = coatVolumeMl(
				{
					areaCm2: solid.exposedAreaCm2,
					edgeTurnMm: solid.edgeTurnMm,
					cornerTurnSr: solid.cornerTurnSr
				},
				t
			);
			const found = offsetVolumeMl(body.exposedAreaCm2, body.offsets, t);
			expect(Math.abs(found / exact - 1), `${t} mm`).toBeLessThan(0.005);
		}
	});

	test('leads to the same plan, and the plan says it is from the mesh', () => {
		const inputs = testInputs();
		const planOf = (shape: Body) =>
			makePlan({ ...inputs, pattern: { ...inputs.pattern, body: shape } });
		const [ofMesh, ofSolid] = [planOf(body), planOf(boxSolid)];
		expect(ofMesh.coats.map(({ thicknessMm }) => thicknessMm)).toEqual(
			ofSolid.coats.map(({ thicknessMm }) => thicknessMm)
		);
		ofMesh.coats.forEach(({ volumeMl }, i) => {
			expect(Math.abs(volumeMl / ofSolid.coats[i]!.volumeMl - 1)).toBeLessThan(0.005);
		});
		expect(Math.abs(ofMesh.weights.shellG / ofSolid.weights.shellG - 1)).toBeLessThan(0.005);
		expect(ofMesh.figures['surface.exposedAreaCm2']?.law.name).toBe('From the mesh');
		expect(ofMesh.figures['surface.exposedAreaCm2']?.inputs[0]?.value).toBe(body.file.name);
		expect(ofMesh.figures['coats.0.volumeMl']?.law.id).toBe('offset-volume');
	});
});

test('an offset table on a convex body is carried exactly between and beyond its rows', () => {
	// Steiner's polynomial of a unit-free body: V = A·t + E·t²/2 + K·t³/3.
	const volume = (t: number) => (50_000 * t + (900 * (t * t)) / 2 + (6.28 * t ** 3) / 3) / 1000;
	const table = [1, 4, 11, 24, 54].map((outerMm) => ({ outerMm, volumeMl: volume(outerMm) }));
	for (const t of [0, 0.3, 1, 2.7, 8, 30, 54, 80]) {
		expect(offsetVolumeMl(500, table, t)).toBeCloseTo(volume(t), 9);
	}
	expect(() => offsetVolumeMl(500, table, 101)).toThrow(/0 to 100/);
	expect(() => offsetVolumeMl(500, table.slice(0, 2), 1)).toThrow(/3 to 1000/);
});

describe('the numbers of a mesh on the board', () => {
	test('a frame has a foot within and board seen through it', () => {
		const frame = blocks(
			[
				[0, 20, 80, 100],
				[0, 20, 40, 60],
				[0, 10]
			],
			(i, j) => i !== 1 || j !== 1
		);
		const { footprintCm2, footLengthMm, enclosedBoardCm2, volumeMl } = measuredPattern(
			onBoard(frame)
		).numbers;
		expect(footprintCm2).toBeCloseTo(60 - 12, 9);
		expect(footLengthMm).toBeCloseTo(320 + 160, 9);
		expect(enclosedBoardCm2).toBeCloseTo(12, 9);
		expect(volumeMl).toBeCloseTo(48, 9);
	});

	test('a ball stands on little more than a point', () => {
		const numbers = measuredPattern(onBoard(sphere(40, 5))).numbers;
		// Within a tenth of a millimeter of the board: a cap of π·(2·R·h) at most.
		expect(numbers.footprintCm2).toBeLessThan((Math.PI * 2 * 40 * 0.1) / 100);
		expect(numbers.footLengthMm).toBeLessThan(2 * Math.PI * Math.sqrt(2 * 40 * 0.1));
		expect(numbers.steepestWallDeg).toBeGreaterThan(170);
		expect(Math.abs(numbers.exposedAreaCm2 / (4 * Math.PI * 16) - 1)).toBeLessThan(0.005);
	});

	test('the profile of a cone is its triangle', () => {
		const { profile } = measuredPattern(onBoard(frustum(50, 0, 80, 128))).numbers;
		const top = profile.reduce((most, { yMm }) => Math.max(most, yMm), 0);
		expect(top).toBeCloseTo(80, 0);
		expect(profile[0]).toEqual({ xMm: profile[0]!.xMm, yMm: 0 });
		expect(profile.at(-1)?.xMm).toBeCloseTo(50, 1);
		for (const { xMm, yMm } of profile)
			expect(yMm).toBeLessThan(80 * (1 - Math.abs(xMm) / 50.2) + 0.5);
	});
});

describe('the outline for drawing', () => {
	test('keeps the undercut: a mushroom is drawn with its stem, not as a block', () => {
		const mushroom = blocks(
			[
				[0, 20, 40, 60],
				[0, 30],
				[0, 20, 30]
			],
			(i, _, k) => i === 1 || k === 1
		);
		expect(measuredPattern(onBoard(mushroom)).numbers.profile).toEqual(
			[
				[-10, 0],
				[-10, 20],
				[-30, 20],
				[-30, 30],
				[30, 30],
				[30, 20],
				[10, 20],
				[10, 0]
			].map(([xMm, yMm]) => ({ xMm, yMm }))
		);
	});

	test('goes on to what stands beside, and stays small for a fine mesh', () => {
		const pair = blocks(
			[
				[0, 20, 40, 60],
				[0, 30],
				[0, 10]
			],
			(i) => i !== 1
		);
		expect(measuredPattern(onBoard(pair)).numbers.profile).toHaveLength(8);
		const { profile, lengthMm } = measuredPattern(onBoard(steppedPulley())).numbers;
		expect(profile.length).toBeLessThanOrEqual(240);
		const xs = profile.map(({ xMm }) => xMm);
		expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(lengthMm, 0);
		// Somewhere the way to the top leads back toward the middle and out again.
		const back = profile.filter(({ xMm }, i) => i > 0 && xMm < profile[i - 1]!.xMm - 1);
		expect(back.length).toBeGreaterThan(0);
	});
});

describe('a mesh body that cannot be', () => {
	const body = meshBodyOf(onBoard(box(20, 10, 5)));

	test('is refused by field', () => {
		expect(bodyProblems(body)).toEqual([]);
		const problem = (change: object) => bodyProblems({ ...body, ...change })[0]?.path;
		expect(problem({ volumeMl: 2 })).toBe('volumeMl');
		expect(problem({ footprintCm2: 3 })).toBe('footprintCm2');
		expect(problem({ offsets: [...body.offsets].reverse() })).toBe('offsets');
	});

	test('does not fit the schema with a hash that is none, or too few volumes', () => {
		expect(bodySchema.safeParse(body).success).toBe(true);
		const fits = (change: object) => bodySchema.safeParse({ ...body, ...change }).success;
		expect(fits({ file: { ...body.file, sha256: 'none' } })).toBe(false);
		expect(fits({ offsets: body.offsets.slice(0, 2) })).toBe(false);
		expect(fits({ exposedAreaCm2: NaN })).toBe(false);
	});
});

test('offsets of a ball over the board are those of the ball', () => {
	const mesh = onBoard(sphere(30, 4));
	const rows = patternOffsets(mesh, new SurfaceDistance(mesh));
	expect(rows.map(({ outerMm }) => outerMm)).toEqual([1, 2, 4, 7, 11, 16, 26, 40]);
	// Below the board the ball's offset is cut off: a cap of height t.
	for (const { outerMm: t, volumeMl } of rows) {
		const whole = (4 / 3) * Math.PI * ((30 + t) ** 3 - 30 ** 3);
		const cap = (Math.PI * t * t * (3 * (30 + t) - t)) / 3;
		expect(Math.abs(volumeMl / ((whole - cap) / 1000) - 1), `${t} mm`).toBeLessThan(0.01);
	}
}, 60_000);
