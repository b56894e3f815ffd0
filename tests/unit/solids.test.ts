import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solidSchema, type Body, type Solid } from '../../src/lib/core/geometry/pattern';
import { bodyProblems, surfaceOf } from '../../src/lib/core/geometry/solids';

const base = { id: 'one', name: 'One', on: 'board', against: [] };
const body = (...solids: Solid[]): Body => ({ kind: 'solids', solids });
const surface = (...solids: Solid[]) => surfaceOf(body(...solids));
const box = (over: Partial<Extract<Solid, { shape: 'box' }>> = {}): Solid => ({
	...base,
	shape: 'box',
	lengthMm: 200,
	widthMm: 300,
	heightMm: 400,
	...over
});
const cylinder = (over: Partial<Extract<Solid, { shape: 'cylinder' }>> = {}): Solid => ({
	...base,
	shape: 'cylinder',
	diameterMm: 200,
	heightMm: 200,
	...over
});

// Steiner: what a coat of thickness t adds round the exposed part of an upright convex body.
const coatMl = (s: ReturnType<typeof surfaceOf>, t: number) =>
	s.exposedAreaCm2 * t * 0.1 + ((s.edgeTurnMm * t ** 2) / 2 + (s.cornerTurnSr * t ** 3) / 3) / 1000;

describe('one solid on the board, against elementary mensuration (CRC Standard Mathematical Tables)', () => {
	test('box 20 × 30 × 40 cm: closed area 5200 cm² less the foot, volume 24 L', () => {
		const s = surface(box());
		expect(s.exposedAreaCm2).toBeCloseTo(5200 - 600, 9);
		expect(s.volumeMl).toBeCloseTo(24_000, 9);
		expect(s.footprintCm2).toBeCloseTo(600, 9);
		expect([s.lengthMm, s.widthMm, s.heightMm]).toEqual([200, 300, 400]);
	});

	test('cylinder r 1 h 2: V 6.2831853, A 18.8495559 less the foot', () => {
		const s = surface(cylinder());
		expect(s.volumeMl / 1000).toBeCloseTo(6.2831853, 6);
		expect(s.exposedAreaCm2 / 100 + Math.PI).toBeCloseTo(18.8495559, 6);
	});

	test('cone r 1 h 2 by its slant: V 2.0943951, A 10.1664074 less the foot', () => {
		const s = surface({
			...base,
			shape: 'frustum',
			bottomDiameterMm: 200,
			topDiameterMm: 0,
			heightMm: 200
		});
		expect(s.volumeMl / 1000).toBeCloseTo(2.0943951, 6);
		expect(s.exposedAreaCm2 / 100 + Math.PI).toBeCloseTo(10.1664074, 6);
		expect(s.steepestWallDeg).toBeCloseTo(63.4349, 3);
	});

	test('frustum R 2 r 1 h 3: V 21.9911486, lateral 29.8037648', () => {
		const s = surface({
			...base,
			shape: 'frustum',
			bottomDiameterMm: 400,
			topDiameterMm: 200,
			heightMm: 300
		});
		expect(s.volumeMl / 1000).toBeCloseTo(21.9911486, 6);
		expect(s.exposedAreaCm2 / 100 - Math.PI).toBeCloseTo(29.8037648, 6);
	});

	test('spherical cap of R 5 h 2: V 54.4542727, curved 62.8318531', () => {
		const s = surface({ ...base, shape: 'dome', diameterMm: 800, heightMm: 200 });
		expect(s.volumeMl / 1000).toBeCloseTo(54.4542727, 6);
		expect(s.exposedAreaCm2 / 100).toBeCloseTo(62.8318531, 6);
	});

	test('a hemisphere meets the board upright; more than half a sphere is undercut', () => {
		const half = surface({ ...base, shape: 'dome', diameterMm: 100, heightMm: 50 });
		expect(half.steepestWallDeg).toBeCloseTo(90, 9);
		expect(half.exposedAreaCm2).toBeCloseTo(2 * Math.PI * 25, 9);
		const more = surface({ ...base, shape: 'dome', diameterMm: 60, heightMm: 90 });
		expect(more.steepestWallDeg).toBeGreaterThan(90);
		expect(more.lengthMm).toBeCloseTo(100, 9);
	});

	test('hollow ring 200/100 × 50: π/4 (D² − d²) h, both walls and the top exposed', () => {
		const s = surface({
			...base,
			shape: 'ring',
			outerDiameterMm: 200,
			innerDiameterMm: 100,
			heightMm: 50
		});
		expect(s.volumeMl).toBeCloseTo(1178.0972, 3);
		expect(s.exposedAreaCm2).toBeCloseTo(Math.PI * 30 * 5 + 235.6194, 3);
		expect(s.enclosedBoardCm2).toBeCloseTo(78.5398, 3);
	});

	test('wedge 3-4-5: slope 5 wide, back 3, two right triangles', () => {
		const s = surface({ ...base, shape: 'wedge', lengthMm: 400, heightMm: 300, widthMm: 100 });
		expect(s.exposedAreaCm2).toBeCloseTo(500 + 300 + 2 * 600, 9);
		expect(s.volumeMl).toBeCloseTo(6000, 9);
	});
});

describe('edges and corners, against exact coated bodies (Steiner)', () => {
	test('half of the parallel body of a doubled box is the coat on the standing box', () => {
		// V(t) − V of the closed box 20 × 30 × 80 is A t + M t² + 4/3 π t³ with M = π (a + b + c); half of it.
		const t = 8;
		const closedMl =
			((2 * (200 * 300 + 200 * 800 + 300 * 800) * t +
				Math.PI * (200 + 300 + 800) * t ** 2 +
				(4 / 3) * Math.PI * t ** 3) /
				1000) *
			0.5;
		expect(coatMl(surface(box()), t)).toBeCloseTo(closedMl, 6);
	});

	test('cylinder: half of the doubled cylinder, M = π h + π² r', () => {
		const t = 10;
		const area = 2 * Math.PI * 100 * (100 + 400);
		const m = Math.PI * 400 + Math.PI ** 2 * 100;
		const halfMl = (area * t + m * t ** 2 + (4 / 3) * Math.PI * t ** 3) / 2000;
		expect(coatMl(surface(cylinder()), t)).toBeCloseTo(halfMl, 6);
	});

	test('hemisphere: half a thicker ball less half the ball', () => {
		const s = surface({ ...base, shape: 'dome', diameterMm: 100, heightMm: 50 });
		expect(coatMl(s, 6)).toBeCloseTo(((2 / 3) * Math.PI * (56 ** 3 - 50 ** 3)) / 1000, 6);
	});

	test('ring: outside grows, hole shrinks, rims are quarter tori (Pappus)', () => {
		const t = 5;
		const s = surface({
			...base,
			shape: 'ring',
			outerDiameterMm: 200,
			innerDiameterMm: 100,
			heightMm: 50
		});
		const walls = Math.PI * 50 * (105 ** 2 - 100 ** 2 + 50 ** 2 - 45 ** 2);
		const top = Math.PI * (100 ** 2 - 50 ** 2) * t;
		const arm = (4 * t) / (3 * Math.PI);
		const rims = ((Math.PI * t ** 2) / 4) * 2 * Math.PI * (100 + arm + (50 - arm));
		expect(coatMl(s, t)).toBeCloseTo((walls + top + rims) / 1000, 6);
	});
});

describe('solids on and against each other', () => {
	const post = cylinder({ id: 'post', on: 'one', diameterMm: 100, heightMm: 100 });

	test('a post on a box hides its own foot and as much of the box', () => {
		const s = surface(box(), post);
		expect(s.exposedAreaCm2).toBeCloseTo(4600 + Math.PI * 10 * 10, 9);
		expect(s.heightMm).toBe(500);
		expect(s.footprintCm2).toBeCloseTo(600, 9);
	});

	test('a slab wider than the post it stands on shows its underside', () => {
		const slab = box({ id: 'slab', on: 'post', lengthMm: 150, widthMm: 150, heightMm: 20 });
		const s = surface(box(), post, slab);
		const under = 225 - Math.PI * 25;
		const sides = 4 * 15 * 2;
		expect(s.exposedAreaCm2).toBeCloseTo(
			4600 - Math.PI * 25 + Math.PI * 100 + sides + 225 + under,
			9
		);
		expect(s.steepestWallDeg).toBe(180);
		expect(bodyProblems(body(box(), post, slab))).toMatchObject([
			{ path: 'solids.2.on', severity: 'note' }
		]);
	});

	test('a dome wider than its box overhangs on two sides, though its area is the smaller', () => {
		// Ø 260 on 300 × 200: each long side cuts off a segment, r² acos(d/r) − d √(r² − d²), d = 100.
		const foot = box({ lengthMm: 300, widthMm: 200, heightMm: 50 });
		const dome: Solid = {
			...base,
			shape: 'dome',
			id: 'dome',
			on: 'one',
			diameterMm: 260,
			heightMm: 80
		};
		const segment = (130 ** 2 * Math.acos(100 / 130) - 100 * Math.sqrt(130 ** 2 - 100 ** 2)) / 100;
		const carried = Math.PI * 169 - 2 * segment;
		const top = Math.PI * (13 ** 2 + 8 ** 2);
		const s = surface(foot, dome);
		expect(s.exposedAreaCm2).toBeCloseTo(2 * 50 * 5 + 600 - carried + top + 2 * segment, 6);
		expect(s.steepestWallDeg).toBe(180);
		expect(bodyProblems(body(foot, dome))).toMatchObject([
			{ path: 'solids.1.on', severity: 'note', message: expect.stringContaining('30 mm') }
		]);
	});

	test('a solid that is carried by less than a third of its foot is refused at the field of its size', () => {
		const foot = box({ lengthMm: 300, widthMm: 200, heightMm: 50 });
		const dome: Solid = {
			...base,
			shape: 'dome',
			id: 'dome',
			on: 'one',
			diameterMm: 700,
			heightMm: 80
		};
		expect(bodyProblems(body(foot, dome))).toMatchObject([
			{
				path: 'solids.1.diameterMm',
				severity: 'refuse',
				message: expect.stringContaining('200 mm')
			}
		]);
		const slab = box({ id: 'slab', on: 'one', lengthMm: 2000, widthMm: 100 });
		expect(bodyProblems(body(foot, slab))).toMatchObject([
			{ path: 'solids.1.lengthMm', message: expect.stringContaining('up to 300 mm') }
		]);
	});

	test('walls pressed together count once, said from one side or from both', () => {
		const left = box({ against: [{ id: 'two', areaCm2: 100 }] });
		const right = box({ id: 'two' });
		const both = box({ id: 'two', against: [{ id: 'one', areaCm2: 100 }] });
		expect(surface(left, right).exposedAreaCm2).toBeCloseTo(9200 - 200, 9);
		expect(surface(left, both).exposedAreaCm2).toBeCloseTo(9200 - 200, 9);
	});

	test('the section runs from foot to foot over the highest point', () => {
		const { profile } = surface(box(), post);
		expect(profile[0]).toEqual({ xMm: -100, yMm: 0 });
		expect(profile.at(-1)).toEqual({ xMm: 100, yMm: 0 });
		expect(Math.max(...profile.map(({ yMm }) => yMm))).toBe(500);
	});
});

describe('bodies that make no sense', () => {
	test.each<[string, Body, string]>([
		['an unknown support', body(box({ on: 'ghost' })), 'solids.0.on'],
		[
			'a circle of supports',
			body(box({ on: 'two' }), box({ id: 'two', on: 'one' })),
			'solids.0.on'
		],
		['two of one name', body(box(), box()), 'solids.1.id'],
		[
			'a ring that is all hole',
			body({ ...base, shape: 'ring', outerDiameterMm: 50, innerDiameterMm: 50, heightMm: 5 }),
			'solids.0.innerDiameterMm'
		],
		[
			'more pressed area than wall',
			body(box({ against: [{ id: 'two', areaCm2: 1e5 }] }), box({ id: 'two' })),
			'solids.0.against.0.areaCm2'
		],
		[
			'more volume than its box holds',
			{
				kind: 'measured',
				exposedAreaCm2: 500,
				volumeMl: 1001,
				lengthMm: 100,
				widthMm: 100,
				heightMm: 100,
				steepestWallDeg: 90
			},
			'volumeMl'
		],
		[
			'less area than a hemisphere of its volume has',
			{
				kind: 'measured',
				exposedAreaCm2: 64.5,
				volumeMl: 164,
				lengthMm: 127,
				widthMm: 127,
				heightMm: 25.4,
				steepestWallDeg: 90
			},
			'exposedAreaCm2'
		]
	])('%s is refused at its field', (_what, wrong, path) => {
		expect(bodyProblems(wrong)).toContainEqual(
			expect.objectContaining({ path, severity: 'refuse' })
		);
	});

	test('less area than its length and width stand on is doubted, a hemisphere is not', () => {
		const flat = { kind: 'measured', heightMm: 25.4, steepestWallDeg: 90 } as const;
		const small = { ...flat, exposedAreaCm2: 64.5, volumeMl: 60, lengthMm: 127, widthMm: 127 };
		expect(bodyProblems(small)).toMatchObject([{ path: 'exposedAreaCm2', severity: 'note' }]);
		// A hemisphere of radius 50 mm: 2π·5² cm² and 2π·5³/3 mL.
		const dome = {
			...flat,
			exposedAreaCm2: 2 * Math.PI * 25,
			volumeMl: (2 * Math.PI * 125) / 3,
			lengthMm: 100,
			widthMm: 100,
			heightMm: 50
		};
		expect(bodyProblems(dome)).toEqual([]);
		expect(bodyProblems({ ...dome, exposedAreaCm2: 157 })).toMatchObject([{ severity: 'refuse' }]);
	});

	test.each([0, -5, NaN, Infinity, 1e308, '', null])(
		'the schema refuses a height of %s',
		(heightMm) => {
			expect(solidSchema.safeParse({ ...box(), heightMm }).success).toBe(false);
		}
	);
});

const size = fc.double({ min: 5, max: 900, noNaN: true });
const solids = fc
	.array(
		fc.record({
			shape: fc.constantFrom('box', 'cylinder', 'frustum', 'dome', 'wedge', 'ring'),
			a: size,
			b: size,
			c: size,
			on: fc.nat(5)
		}),
		{ minLength: 1, maxLength: 8 }
	)
	.map((drafts) =>
		drafts.map(({ shape, a, b, c, on }, index): Solid => {
			const standing = { ...base, id: `s${index}`, on: on < index ? `s${on}` : 'board' };
			const draft = {
				box: { lengthMm: a, widthMm: b, heightMm: c },
				cylinder: { diameterMm: a, heightMm: c },
				frustum: { bottomDiameterMm: a, topDiameterMm: b, heightMm: c },
				dome: { diameterMm: a, heightMm: c },
				wedge: { lengthMm: a, widthMm: b, heightMm: c },
				ring: { outerDiameterMm: a, innerDiameterMm: a / 2, heightMm: c }
			}[shape];
			return solidSchema.parse({ shape, ...standing, ...draft });
		})
	);

const LENGTHS = /Mm$/;
const scaled = (solid: Solid, by: number): Solid =>
	Object.fromEntries(
		Object.entries(solid).map(([key, value]) => [
			key,
			LENGTHS.test(key) ? (value as number) * by : value
		])
	) as unknown as Solid;

describe('properties over random piles', () => {
	test('twice the size: four times the area, eight times the volume', () => {
		fc.assert(
			fc.property(solids, fc.double({ min: 0.3, max: 4, noNaN: true }), (pile, by) => {
				const [one, other] = [
					surfaceOf(body(...pile)),
					surfaceOf(body(...pile.map((s) => scaled(s, by))))
				];
				expect(other.exposedAreaCm2 / one.exposedAreaCm2).toBeCloseTo(by ** 2, 6);
				expect(other.volumeMl / one.volumeMl).toBeCloseTo(by ** 3, 6);
				expect(other.heightMm / one.heightMm).toBeCloseTo(by, 9);
			})
		);
	});

	test('the order in which solids are listed changes nothing', () => {
		fc.assert(
			fc.property(solids, (pile) => {
				expect(surfaceOf(body(...pile.toReversed()))).toEqual(surfaceOf(body(...pile)));
			})
		);
	});

	test('a solid more never lowers volume or height, and nothing is negative or not a number', () => {
		fc.assert(
			fc.property(solids, (pile) => {
				const all = surfaceOf(body(...pile));
				const fewer = pile.slice(0, -1);
				if (fewer.length > 0) {
					const less = surfaceOf(body(...fewer));
					expect(all.volumeMl).toBeGreaterThan(less.volumeMl);
					expect(all.heightMm).toBeGreaterThanOrEqual(less.heightMm);
				}
				for (const [key, value] of Object.entries(all)) {
					if (typeof value === 'number') expect(value >= 0, `${key} is ${value}`).toBe(true);
				}
			})
		);
	});
});
