import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stackCentroid, turnedOver } from '../../src/lib/core/laws/centroid';
import { liftAdvice, teamLimitG } from '../../src/lib/core/laws/lifting-advice';
import { frequencyMultiplier } from '../../src/lib/core/laws/lifting-frequency';
import { liftingIndex, liftingLimit, type Lift } from '../../src/lib/core/laws/lifting';

const lift: Lift = {
	horizontalMm: 400,
	originHeightMm: 800,
	travelMm: 300,
	twistDeg: 0,
	liftsPerMin: 0.2,
	duration: 'up to 1 h',
	coupling: 'fair'
};
const duration = fc.constantFrom<Lift['duration']>('up to 1 h', '1 to 2 h', '2 to 8 h');
const lifts: fc.Arbitrary<Lift> = fc.record({
	horizontalMm: fc.double({ min: 0, max: 900, noNaN: true }),
	originHeightMm: fc.double({ min: 0, max: 2000, noNaN: true }),
	travelMm: fc.double({ min: 0, max: 2000, noNaN: true }),
	twistDeg: fc.double({ min: 0, max: 180, noNaN: true }),
	liftsPerMin: fc.double({ min: 0, max: 20, noNaN: true }),
	duration,
	coupling: fc.constantFrom<Lift['coupling']>('good', 'fair', 'poor')
});

describe('lifting limit', () => {
	test('is between nothing and 23 kg, and is nothing exactly when a reason is given', () => {
		fc.assert(
			fc.property(lifts, (each) => {
				const { rwlG, forbidden } = liftingLimit(each);
				expect(rwlG).toBeGreaterThanOrEqual(0);
				expect(rwlG).toBeLessThanOrEqual(23_000);
				expect(rwlG === 0).toBe(forbidden.length > 0);
			})
		);
	});

	test('never grows with reach, twist or frequency', () => {
		fc.assert(
			fc.property(lifts, fc.double({ min: 0, max: 1, noNaN: true }), (each, more) => {
				const here = liftingLimit(each).rwlG;
				const worse: Partial<Lift>[] = [
					{ horizontalMm: each.horizontalMm + 300 * more },
					{ twistDeg: Math.min(180, each.twistDeg + 90 * more) },
					{ liftsPerMin: each.liftsPerMin + 5 * more }
				];
				for (const change of worse) {
					expect(liftingLimit({ ...each, ...change }).rwlG).toBeLessThanOrEqual(here + 1e-9);
				}
			})
		);
	});

	test('longer work never has a higher multiplier', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0, max: 20, noNaN: true }),
				fc.boolean(),
				(liftsPerMin, fromKnuckleHeight) => {
					const of = (each: Lift['duration']) =>
						frequencyMultiplier({ liftsPerMin, duration: each, fromKnuckleHeight });
					expect(of('1 to 2 h')).toBeLessThanOrEqual(of('up to 1 h'));
					expect(of('2 to 8 h')).toBeLessThanOrEqual(of('1 to 2 h'));
				}
			)
		);
	});

	test('between 8 and 9 low lifts a minute over a shift, nothing is allowed', () => {
		expect(
			frequencyMultiplier({
				liftsPerMin: 8.5,
				duration: '2 to 8 h',
				fromKnuckleHeight: false
			})
		).toBe(0);
	});

	test('there is no index when nothing may be lifted', () => {
		const { rwlG, forbidden } = liftingLimit({ ...lift, horizontalMm: 700 });
		expect(rwlG).toBe(0);
		expect(forbidden).toEqual(['hands more than 630 mm ahead of the ankles']);
		expect(liftingIndex({ massG: 5000, rwlG })).toBeNull();
	});
});

describe('advice', () => {
	const limit = liftingLimit(lift);

	test.each([
		[1, 'one person'],
		[1.01, 'two people'],
		[4 / 3, 'two people'],
		[1.4, 'three people'],
		[1.51, 'hoist or pallet truck']
	])('%s times the limit: %s', (share, way) => {
		const advice = liftAdvice({ massG: limit.rwlG * share * 0.9999, limit, holdsLiquid: false });
		expect(advice.way).toBe(way);
		expect(advice.caution).toContain('safety shoes');
	});

	test('a mold with liquid in it is not lifted by hand, however light', () => {
		expect(liftAdvice({ massG: 1000, limit, holdsLiquid: true }).way).toBe('hoist or pallet truck');
	});

	test('a team can lift less than the sum of its members', () => {
		for (const people of [2, 3] as const) {
			expect(teamLimitG({ rwlG: 10_000, people })).toBeLessThan(10_000 * people);
		}
	});
});

describe('center of mass', () => {
	const part = fc.record({
		massG: fc.double({ min: 1, max: 1e5, noNaN: true }),
		xMm: fc.double({ min: 0, max: 500, noNaN: true }),
		yMm: fc.double({ min: 0, max: 500, noNaN: true }),
		zMm: fc.double({ min: 0, max: 500, noNaN: true })
	});
	const stack = { depthMm: 500, heightMm: 500 };

	test('turning over twice changes nothing', () => {
		fc.assert(
			fc.property(part, (each) => {
				const back = turnedOver(turnedOver(each, stack), stack);
				expect(back.yMm).toBeCloseTo(each.yMm, 9);
				expect(back.zMm).toBeCloseTo(each.zMm, 9);
			})
		);
	});

	test('the parts can be joined in any grouping', () => {
		fc.assert(
			fc.property(fc.array(part, { minLength: 2, maxLength: 6 }), (parts) => {
				const [first, ...rest] = parts;
				if (!first) return;
				const joined = stackCentroid([first, stackCentroid(rest)]);
				const all = stackCentroid(parts);
				expect(joined.massG).toBeCloseTo(all.massG, 6);
				expect(joined.zMm).toBeCloseTo(all.zMm, 6);
			})
		);
	});
});
