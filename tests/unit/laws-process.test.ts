import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moldCost, partCost } from '../../src/lib/core/laws/cost';
import { chooseProcess, PRICE_TIE_FRACTION } from '../../src/lib/core/laws/process-choice';
import {
	processEstimates,
	type ProcessPattern,
	type ProcessTerms
} from '../../src/lib/core/laws/process-estimate';
import { evenScale } from '../../src/lib/core/laws/process-scale';

const terms: ProcessTerms = {
	gloveMm: 8,
	gloveExtraFraction: 0.3,
	shellMm: 10,
	blockGapMm: 20,
	layerMm: 12,
	layerExtraFraction: 0.15,
	brushRubberGPerMl: 1.1,
	pourRubberGPerMl: 1.1,
	shellGPerMl: 1.6,
	brushRubberPricePerKg: 22,
	pourRubberPricePerKg: 18,
	shellPricePerKg: 8,
	ratePricePerH: 40
};
const tile: ProcessPattern = {
	lengthMm: 100,
	widthMm: 80,
	heightMm: 15,
	areaCm2: 134,
	volumeMl: 90
};
const capital: ProcessPattern = {
	lengthMm: 400,
	widthMm: 400,
	heightMm: 600,
	areaCm2: 11_200,
	volumeMl: 60_000
};
const side = fc.double({ min: 20, max: 900, noNaN: true });
const box = fc
	.tuple(side, side, side, fc.double({ min: 0.2, max: 1, noNaN: true }))
	.map(([lengthMm, widthMm, heightMm, share]): ProcessPattern => ({
		lengthMm,
		widthMm,
		heightMm,
		areaCm2: (lengthMm * widthMm + 2 * heightMm * (lengthMm + widthMm)) / 100,
		volumeMl: (share * lengthMm * widthMm * heightMm) / 1000
	}));
const price = fc.double({ min: 0, max: 500, noNaN: true });

describe('choice of process', () => {
	test('a small shallow pattern gets the block, and the sentence says what decided', () => {
		const choice = chooseProcess({ pattern: tile, terms });
		expect(choice.chosen).toBe('solid block');
		expect(choice.reason).toMatch(
			/^The solid block takes .* kg of rubber.*; the glove takes .* costs \d+% more\.$/
		);
		expect(choice.evenScale).toBeGreaterThan(1);
	});

	test('a tall hollowed pattern gets the glove', () => {
		const choice = chooseProcess({ pattern: capital, terms });
		expect(choice.chosen).toBe('glove');
		expect(choice.evenScale).toBeLessThan(1);
	});

	test('a deadline that only the block meets rules the others out, in words', () => {
		const choice = chooseProcess({ pattern: capital, terms, daysAvailable: 2 });
		expect(choice.chosen).toBe('solid block');
		expect(choice.reason).toContain('Ruled out: the glove takes 3 days, there are 2.');
	});

	test('when nothing fits, nothing is chosen and every reason is given', () => {
		const choice = chooseProcess({
			pattern: capital,
			terms,
			daysAvailable: 2,
			handlingLimitG: 20_000
		});
		expect(choice.chosen).toBeNull();
		expect(choice.ruledOut).toHaveLength(3);
		expect(choice.reason).toContain('the solid block weighs 66.0 kg, the limit is 20.0 kg');
	});

	test('nothing cheaper by more than the tie band is passed over', () => {
		fc.assert(
			fc.property(box, price, (pattern, ratePricePerH) => {
				const { chosen, estimates } = chooseProcess({
					pattern,
					terms: { ...terms, ratePricePerH }
				});
				const best = estimates.find((way) => way.process === chosen);
				const least = Math.min(...estimates.map((way) => way.totalPrice));
				expect(best?.totalPrice).toBeLessThanOrEqual(least * (1 + PRICE_TIE_FRACTION));
			})
		);
	});

	test('no estimate is negative', () => {
		fc.assert(
			fc.property(box, (pattern) => {
				for (const way of processEstimates(pattern, terms)) {
					expect(way.rubberG).toBeGreaterThan(0);
					expect(way.shellG).toBeGreaterThanOrEqual(0);
					expect(way.totalPrice).toBeGreaterThan(0);
				}
			})
		);
	});

	test('at the even scale glove and block cost the same', () => {
		fc.assert(
			fc.property(box, (pattern) => {
				const scale = evenScale(pattern, terms);
				fc.pre(scale !== null);
				const [glove, block] = processEstimates(
					{
						lengthMm: pattern.lengthMm * scale,
						widthMm: pattern.widthMm * scale,
						heightMm: pattern.heightMm * scale,
						areaCm2: pattern.areaCm2 * scale ** 2,
						volumeMl: pattern.volumeMl * scale ** 3
					},
					terms
				);
				const gap = (glove?.totalPrice ?? NaN) / (block?.totalPrice ?? NaN) - 1;
				expect(Math.abs(gap)).toBeLessThan(1e-6);
			})
		);
	});

	test('a pattern larger than its own box is refused', () => {
		expect(() => processEstimates({ ...tile, volumeMl: 121 }, terms)).toThrow(/volumeMl is 121/);
	});
});

describe('cost', () => {
	test('labor and overhead are never left out', () => {
		expect(
			moldCost({
				materialPrices: { rubber: 100, shell: 60 },
				laborS: 5 * 3600,
				ratePricePerH: 40,
				overheadFraction: 0.25
			})
		).toEqual({ materialPrice: 160, laborPrice: 200, overheadPrice: 90, totalPrice: 450 });
	});

	test('60 parts with 10 % rejects need 67 pours, three molds of 25, all paid for', () => {
		const cost = partCost({
			partsCount: 60,
			moldPrice: 450,
			moldLifePours: 25,
			materialPricePerPour: 6,
			laborSPerPour: 900,
			ratePricePerH: 40,
			rejectFraction: 0.1
		});
		expect(cost.poursCount).toBe(67);
		expect(cost.moldsCount).toBe(3);
		expect(cost.moldPricePerPart).toBeCloseTo(22.5, 9);
		expect(cost.pourPricePerPart).toBeCloseTo((67 * 16) / 60, 9);
	});

	test('a longer life never makes a part dearer, a higher reject rate never cheaper', () => {
		const count = fc.integer({ min: 1, max: 500 });
		const share = fc.double({ min: 0, max: 0.8, noNaN: true });
		fc.assert(
			fc.property(count, count, share, (partsCount, moldLifePours, rejectFraction) => {
				const cost = (life: number, rejects: number) =>
					partCost({
						partsCount,
						moldPrice: 450,
						moldLifePours: life,
						materialPricePerPour: 6,
						laborSPerPour: 900,
						ratePricePerH: 40,
						rejectFraction: rejects
					}).totalPricePerPart;
				const here = cost(moldLifePours, rejectFraction);
				expect(cost(moldLifePours + 1, rejectFraction)).toBeLessThanOrEqual(here + 1e-9);
				expect(cost(moldLifePours, rejectFraction + 0.1)).toBeGreaterThanOrEqual(here - 1e-9);
			})
		);
	});
});
