import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mixedMassG } from '../../src/lib/core/laws/coat-losses';
import { coatThicknessesMm } from '../../src/lib/core/laws/coat-profile';
import { coatVolumeMl, coatVolumesMl } from '../../src/lib/core/laws/coat-volume';
import { flangeVolumeMl } from '../../src/lib/core/laws/flange';
import { kitsToBuy, type Kit } from '../../src/lib/core/laws/kits';
import { combinedSum, orderQuantity } from '../../src/lib/core/laws/order-quantity';
import { shelfLife } from '../../src/lib/core/laws/shelf-life';

const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('coats on a surface', () => {
	const surface = { areaCm2: 900, edgeTurnMm: 1500, cornerTurnSr: 6.283 };

	test('single coats sum to the whole, and each outer one takes more', () => {
		fc.assert(
			fc.property(real(0.2, 5), fc.integer({ min: 2, max: 8 }), (thicknessMm, coats) => {
				const each = coatVolumesMl(
					surface,
					Array.from({ length: coats }, () => thicknessMm)
				);
				expect(sum(each)).toBeCloseTo(coatVolumeMl(surface, coats * thicknessMm), 6);
				for (let i = 1; i < each.length; i += 1) {
					expect(each[i]).toBeGreaterThan(each[i - 1] ?? Number.NaN);
				}
			})
		);
	});

	test('twice the size and twice the coat is eight times the volume', () => {
		fc.assert(
			fc.property(real(0.1, 10), (t) => {
				const twice = { areaCm2: 3600, edgeTurnMm: 3000, cornerTurnSr: 6.283 };
				expect(coatVolumeMl(twice, 2 * t) / coatVolumeMl(surface, t)).toBeCloseTo(8, 9);
			})
		);
	});

	test('a coat that closes a corner is refused, not clamped', () => {
		const trough = {
			areaCm2: 10,
			edgeTurnMm: 0,
			cornerTurnSr: 0,
			insideEdges: [{ lengthMm: 100, turnDeg: 90 }]
		};
		expect(() => coatVolumeMl(trough, 20)).toThrow(/thickness too large for the surface/);
	});

	test('the flange ends where the frame is', () => {
		const given = {
			outerAreaCm2: 100,
			footAreaCm2: 90,
			footPerimeterMm: 380,
			flangeThicknessMm: 5
		};
		expect(flangeVolumeMl({ ...given, coatThicknessMm: 50 })).toBe(0);
		expect(() => flangeVolumeMl({ ...given, footAreaCm2: 101, coatThicknessMm: 5 })).toThrow(
			RangeError
		);
	});

	test('build coats rise from thin to thick and sum to the target', () => {
		fc.assert(
			fc.property(real(1, 30), fc.integer({ min: 1, max: 10 }), (targetMm, coats) => {
				const thicknessesMm = coatThicknessesMm({ targetMm, coats });
				expect(thicknessesMm).toHaveLength(coats);
				expect(sum(thicknessesMm)).toBeCloseTo(targetMm, 9);
				expect([...thicknessesMm].sort((a, b) => a - b)).toEqual(thicknessesMm);
			})
		);
		const fromOne = coatThicknessesMm({ targetMm: 10, coats: 4, firstMm: 1 });
		[1, 2, 3, 4].forEach((each, i) => expect(fromOne[i]).toBeCloseTo(each, 9));
		expect(() => coatThicknessesMm({ targetMm: 9, coats: 3, firstMm: 4 })).toThrow(/firstMm is 4/);
		expect(() => coatThicknessesMm({ targetMm: 9, coats: 2.5 })).toThrow(RangeError);
	});

	test('cups and brushes take their share', () => {
		expect(mixedMassG({ laidG: 1000, cups: 3, brushes: 1 })).toBe(1051);
	});
});

describe('ordering', () => {
	test('the order covers the range, and more doubt never orders less', () => {
		fc.assert(
			fc.property(real(0, 50_000), real(0, 0.4), real(0, 0.4), (needG, u, more) => {
				const order = orderQuantity({ needG, uncertaintyFraction: u });
				expect(order.lowG).toBeLessThanOrEqual(needG);
				expect(order.orderG).toBeGreaterThanOrEqual(order.highG);
				const doubtful = orderQuantity({ needG, uncertaintyFraction: u + more });
				expect(doubtful.orderG).toBeGreaterThanOrEqual(order.orderG);
			})
		);
		expect(
			combinedSum([
				{ value: 300, fraction: 0.1 },
				{ value: 400, fraction: 0.1 }
			])
		).toBeCloseTo(50, 9);
	});

	/** Every combination up to what one size alone would need. */
	function cheapestByTrying(needG: number, kits: Kit[]): number {
		const [kit, ...others] = kits;
		if (needG <= 0) return 0;
		if (!kit) return Number.POSITIVE_INFINITY;
		const counts = Array.from({ length: Math.ceil(needG / kit.massG) + 1 }, (_, n) => n);
		return Math.min(
			...counts.map((n) => n * kit.price + cheapestByTrying(needG - n * kit.massG, others))
		);
	}

	test('no combination of kits is cheaper', () => {
		const kit = fc.record({
			massG: fc.integer({ min: 400, max: 5000 }),
			price: fc.integer({ min: 1, max: 200 })
		});
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 8000 }),
				fc.array(kit, { minLength: 1, maxLength: 3 }),
				(needG, kits) => {
					const choice = kitsToBuy({ needG, kits });
					expect(choice.massG).toBeGreaterThanOrEqual(needG);
					expect(choice.leftoverG).toBeCloseTo(choice.massG - needG, 9);
					expect(choice.price).toBe(cheapestByTrying(needG, kits));
				}
			)
		);
	});

	test('at one price the lighter choice wins', () => {
		const kits = [
			{ massG: 2000, price: 10 },
			{ massG: 1500, price: 10 }
		];
		expect(kitsToBuy({ needG: 1200, kits }).counts).toEqual([0, 1]);
		expect(kitsToBuy({ needG: 0, kits })).toEqual({
			counts: [0, 0],
			massG: 0,
			price: 0,
			leftoverG: 0
		});
	});

	test('shelf life is judged on the day of use', () => {
		const life = { madeAt: '2026-01-01T00:00:00Z', shelfLifeS: 365 * 86_400 };
		expect(shelfLife({ ...life, usedAt: '2026-06-01T00:00:00Z' }).state).toBe('good');
		expect(shelfLife({ ...life, usedAt: '2026-12-15T00:00:00Z' })).toEqual({
			leftS: 17 * 86_400,
			state: 'ending'
		});
		expect(shelfLife({ ...life, usedAt: '2027-01-02T00:00:00Z' }).state).toBe('over');
		expect(() => shelfLife({ ...life, usedAt: 'soon' })).toThrow(/usedAt is "soon"/);
	});
});
