import { describe, expect, test } from 'vitest';
import type { MeshBody, MeshPlace } from '../../src/lib/core/geometry/mesh-body';
import type { MeshHandling } from '../../src/lib/core/geometry/mesh-handling';
import type { Pattern } from '../../src/lib/core/geometry/pattern';
import { surfaceOf } from '../../src/lib/core/geometry/solids';
import { handlingOf } from '../../src/lib/core/mesh/handling';
import { shellOpening } from '../../src/lib/core/mesh/opening';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { lookedUpBridging } from '../../src/lib/core/plan/looked-up-bridging';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planSchema } from '../../src/lib/core/plan/plan';
import { holdsToDeg } from '../../src/lib/core/plan/sheet-reach';
import { testInputs, testSheet } from '../fixtures/materials';
import { meshBodyOf } from '../fixtures/mesh-body';
import { blocks, box } from '../fixtures/mesh-solids';

const onMiddle = box(200, 120, 60);
const base = meshBodyOf({
	...onMiddle,
	positions: onMiddle.positions.map((value, i) => value - [100, 60, 0][i % 3]!)
});

const groove = (number: number, given: Partial<MeshPlace> = {}): MeshPlace => ({
	number,
	kind: 'groove',
	xMm: 10 * number,
	yMm: 0,
	zMm: 55,
	depthMm: 6,
	widthMm: 2.1,
	lengthMm: 40,
	areaCm2: 5,
	airMl: 0.5,
	...given
});
const at = (reachMm: number, places: MeshPlace[]) => ({
	reachMm,
	areaCm2: places.reduce((sum, { areaCm2 }) => sum + areaCm2, 0),
	places,
	unlistedPlaces: 0
});
const bodyWith = (bridgings: MeshBody['bridgings'], handling?: MeshHandling): MeshBody => ({
	...base,
	...(bridgings && { bridgings }),
	...(handling && { handling })
});
const planOf = (body: MeshBody, given: Partial<Pattern> = {}) => {
	const inputs = testInputs();
	return makePlan({
		...inputs,
		materials: { ...inputs.materials, detail: testSheet('flow-urethane') },
		pattern: { ...inputs.pattern, detail: {}, undercutMm: 0, ...given, body }
	});
};
const detailCoats = (plan: ReturnType<typeof planOf>) =>
	plan.coats.filter(({ kind }) => kind === 'detail').length;

describe('detail coats by the mesh', () => {
	const foot = groove(3, { kind: 'foot' });
	const corner = groove(2, { kind: 'inner corner' });

	test('are none where the first build coat spans no groove and no pit', () => {
		const plan = planOf(bodyWith([at(0.5, []), at(2, [corner, foot])]));
		expect(plan.detail.needed).toBe(false);
		expect(detailCoats(plan)).toBe(0);
		expect(plan.detail.why).toContain('bridges nothing but rounded-off corners');
	});

	test('are one where a detail coat wets what a build coat spans, and the plan names the places', () => {
		const plan = planOf(bodyWith([at(0.5, [foot]), at(2, [groove(1), corner])]));
		expect(detailCoats(plan)).toBe(1);
		expect(plan.detail.why).toContain('1 (groove, 2.1 mm wide, 6 mm deep)');
		expect(plan.bridging).toMatchObject({ lookedReachMm: 2, brushTwice: [] });
		expect(planSchema.safeParse(plan).success).toBe(true);
	});

	test('are two where it spans some as well; those are brushed twice, by their number in the list', () => {
		const deep = groove(4, { xMm: 90, lengthMm: 10 });
		const plan = planOf(
			bodyWith([at(0.5, [{ ...deep, number: 1, xMm: 91 }]), at(2, [groove(1), corner, deep])])
		);
		expect(detailCoats(plan)).toBe(2);
		expect(plan.bridging?.brushTwice).toEqual([4]);
		expect(plan.detail.why).toContain('number 4 as well: brush there twice');
	});

	test('a fine line still asks for them, and a recess typed by hand no longer does', () => {
		const none = bodyWith([at(2, [])]);
		expect(detailCoats(planOf(none, { detail: { finestLineMm: 0.3 } }))).toBe(2);
		expect(detailCoats(planOf(none, { detail: { narrowestRecessMm: 1 } }))).toBe(0);
		// A pattern saved before bridging was kept goes by the rule for those described by hand.
		expect(detailCoats(planOf(base, { detail: { narrowestRecessMm: 1 } }))).toBe(2);
	});

	test('the reach follows from the sheet: thickness, or what yields under its own weight', () => {
		const { bridging, figures } = planOf(bodyWith([at(5, [])]));
		// 200 mm long: 6 mm of glove in 3 coats, the first 0.6 of the mean 2 mm; 90 Pa hold 8 mm.
		expect(bridging?.buildReachMm).toBeCloseTo(1.2, 9);
		expect(figures['bridging.buildReachMm']?.law.source).toContain('plain statics');
	});

	test('kept for thinner coats only, the plan says what it does not know', () => {
		const { warnings, bridging } = planOf(bodyWith([at(0.5, [])]));
		expect(bridging?.lookedReachMm).toBe(0.5);
		expect(warnings.find(({ code }) => code === 'bridging-reach')?.text).toContain(
			'reaches 1.2 mm and may bridge more'
		);
	});
});

test('the next greater reach is looked up, never a smaller one while there is one', () => {
	const kept = [at(3, []), at(0.5, []), at(1.2, [])];
	expect(lookedUpBridging(kept, 0.4)).toMatchObject({ reachMm: 0.5, isEnough: true });
	expect(lookedUpBridging(kept, 1.2000001)).toMatchObject({ reachMm: 1.2, isEnough: true });
	expect(lookedUpBridging(kept, 1.3)).toMatchObject({ reachMm: 3, isEnough: true });
	expect(lookedUpBridging(kept, 4)).toMatchObject({ reachMm: 3, isEnough: false });
	expect(() => lookedUpBridging([], 1)).toThrow(/0 reaches/);
});

test('the slope on which a coat stays is where the sag limit equals its thickness', () => {
	const unknown = { body: 'thixotropic' as const, mixedDensityGPerMl: 1 };
	const flow = { ...unknown, yieldStressPa: 9.80665 };
	// 1 mm stays upright; 2 mm where the pull along the wall is half of that: sin 30°.
	expect(holdsToDeg(flow, 1)).toBe(90);
	expect(holdsToDeg(flow, 2)).toBeCloseTo(30, 9);
	expect(holdsToDeg(unknown, 2)).toBeNull();
	expect(holdsToDeg({ ...unknown, body: 'free-flowing' }, 2)).toBe(0);
});

describe('how glove and shell come off, in the plan', () => {
	const handled = (mesh: ReturnType<typeof box>, gloveMm: number): MeshBody => {
		const surface = new SurfaceDistance(mesh);
		const opening = shellOpening(mesh, gloveMm, surface);
		return {
			...meshBodyOf(mesh),
			bridgings: [at(20, [])],
			handling: handlingOf(mesh, surface, opening, { gloveMm, flangeMm: 20 })
		};
	};
	// Searching an opening takes seconds on a busy machine: the box's serves two tests.
	const boxBody = handled(box(200, 120, 60), 6);
	const codes = (plan: ReturnType<typeof planOf>) => plan.warnings.map(({ code }) => code);

	test('over a box the shell leaves; a thinner glove than computed is not taken for as good', () => {
		expect(surfaceOf(boxBody).steepestWallDeg).toBeCloseTo(90, 6);
		const plan = planOf(boxBody);
		expect(plan.handling).toMatchObject({ shell: 'leaves', pieces: null, lockedCm2: 0 });
		expect(codes(plan)).not.toContain('shell-lock');
		const inputs = { ...plan.inputs, gloveThicknessMm: 4 };
		expect(makePlan(inputs).handling?.shell).toBe('not computed');
	});

	test('a yield stress beyond the sag law leaves one number out by name; the plan is made all the same', () => {
		const { inputs } = planOf(boxBody);
		const planWith = (yieldStressPa: number) =>
			makePlan({
				...inputs,
				materials: {
					...inputs.materials,
					build: { ...inputs.materials.build, yieldStressPa }
				}
			});
		for (const [yieldStressPa, said] of [
			[0.05, '0.05 Pa'],
			[6000, '6 kPa']
		] as const) {
			const plan = planWith(yieldStressPa);
			expect(plan.handling?.runsOffCm2).toBeNull();
			expect(plan.warnings.filter(({ code }) => code === 'law-limit')).toContainEqual(
				expect.objectContaining({
					text: `Walls from which the thickest coat runs off: no number is given. yield stress is ${said}; accepted: 0.1 Pa to 5 kPa.`
				})
			);
			expect(planSchema.safeParse(plan).success).toBe(true);
		}
		expect(planWith(0.1).handling?.runsOffCm2).toBeGreaterThan(0);
		expect(planWith(5000).handling?.runsOffCm2).toBe(0);
	});

	test(
		'over a mushroom it locks: parts and a thicker glove are proposed instead of one number',
		{ timeout: 90_000 },
		() => {
			const mushroom = blocks(
				[
					[-60, -30, 30, 60],
					[-60, -30, 30, 60],
					[0, 40, 70]
				],
				(i, j, k) => k === 1 || (i === 1 && j === 1)
			);
			const plan = planOf(handled(mushroom, 6));
			expect(plan.handling?.shell).toBe('locks');
			expect(plan.handling?.pieces).toBeGreaterThanOrEqual(2);
			const said = plan.warnings.find(({ code }) => code === 'shell-lock');
			expect(said?.severity).toBe('warn');
			expect(said?.text).toMatch(
				/^A shell in one piece locks over \d+ cm² of the pattern\. Make it in/
			);
			expect(codes(plan)).not.toContain('undercut-unknown');
			// The stem's ring of 240 mm passes the cap's of 480: twice as long; a third of 600 % stands that.
			expect(plan.handling?.stretchFraction).toBeCloseTo(1, 2);
			expect(codes(plan)).not.toContain('undercut-stretch');
		}
	);
});

test('what no brush reaches is warned of with its area and what to do; where all is reached, nothing', () => {
	const codes = (body: MeshBody) =>
		planOf(body).warnings.filter(({ code }) => code === 'out-of-reach');
	const brush = { widthMm: 3, reachMm: 10 };
	const none = { brush, areaCm2: 0, places: [], unlistedPlaces: 0 };
	const place = { number: 1, xMm: 0, yMm: 0, zMm: 20, widthMm: 2, depthMm: 40, areaCm2: 1.9 };
	expect(codes({ ...base, unreached: none })).toEqual([]);
	expect(codes(base)).toEqual([]);
	const [said] = codes({ ...base, unreached: { ...none, areaCm2: 1.9, places: [place] } });
	expect(said).toMatchObject({ severity: 'warn', where: 'pattern' });
	expect(said!.text).toMatch(
		/does not reach 1\.9 cm² of the pattern, in one deep narrow place: plug it flush/
	);
});
