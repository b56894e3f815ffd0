import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { concentrationAfter, steadyPpm, timeToPpm } from '../../src/lib/core/laws/buildup';
import { additiveDilutionFlow, dilutionFlow } from '../../src/lib/core/laws/dilution';
import { saturatedVapor } from '../../src/lib/core/laws/evaporation';
import { DUST_LIMITS, strictestDustLimit } from '../../src/lib/core/laws/dust-limits';
import { EXPOSURE_LIMITS } from '../../src/lib/core/laws/exposure-limits';
import { fireDilutionFlow, lelFraction } from '../../src/lib/core/laws/fire-dilution';
import {
	liquidMixtureLimitMgPerM3,
	mixtureIndex,
	mixtureLelPct
} from '../../src/lib/core/laws/mixture';
import { mgPerM3FromPpm, ppmFromMgPerM3 } from '../../src/lib/core/laws/ppm';
import { limitPpm, strictestLimit } from '../../src/lib/core/laws/strictest-limit';
import { SUBSTANCES, type SubstanceId } from '../../src/lib/core/laws/substances';
import { vaporPressurePa } from '../../src/lib/core/laws/vapor-pressure';

const ALL = ['OSHA PEL', 'NIOSH REL', 'ACGIH TLV', 'UK WEL'] as const;
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const release = fc.record({
	sensitizer: fc.boolean(),
	releaseGPerMin: double(0.01, 100),
	molarMassGPerMol: double(30, 250),
	limitPpm: double(0.01, 1000),
	mixingFactor: double(1, 10)
});
const room = fc.record({
	sensitizer: fc.constant(false),
	vaporM3PerH: double(0, 1),
	effectiveM3PerH: double(10, 5000),
	roomM3: double(10, 1000)
});

describe('a number is never an all-clear', () => {
	test('whatever the release, and for a sensitizer local exhaust comes first', () => {
		fc.assert(
			fc.property(release, (each) => {
				const flow = dilutionFlow(each, 20);
				expect(flow.allClear).toBe(false);
				expect(flow.cautions.length).toBeGreaterThan(0);
				expect(flow.cautions.join().includes('Local exhaust')).toBe(each.sensitizer);
			})
		);
	});

	test('nor is a mixture below its limit, nor a saturated vapor of MDI', () => {
		const mixture = mixtureIndex([{ sensitizer: true, concentration: 0.001, limit: 0.005 }]);
		expect(mixture).toMatchObject({ exceeded: false, allClear: false });
		const mdi = SUBSTANCES.mdi;
		const ceiling = saturatedVapor({
			sensitizer: mdi.sensitizer,
			vaporPressurePa: mdi.vaporPressurePa?.value ?? NaN,
			molarMassGPerMol: mdi.molarMassGPerMol.value,
			temperatureC: 25
		});
		// Even still air over cold MDI can hold more than its limit of 0.005 ppm.
		expect(ceiling.ppm).toBeGreaterThan(0.005);
		expect(ceiling.allClear).toBe(false);
	});
});

describe('dilution', () => {
	test('flow grows with release and mixing factor, falls with the limit, in proportion', () => {
		fc.assert(
			fc.property(release, (each) => {
				const here = dilutionFlow(each, 20).flowM3PerH;
				const twice = { ...each, releaseGPerMin: 2 * each.releaseGPerMin };
				const halfLimit = { ...each, limitPpm: each.limitPpm / 2 };
				expect(dilutionFlow(twice, 20).flowM3PerH / here).toBeCloseTo(2, 9);
				expect(dilutionFlow(halfLimit, 20).flowM3PerH / here).toBeCloseTo(2, 9);
			})
		);
	});

	test('flows of vapors with like effects add up, in any order', () => {
		fc.assert(
			fc.property(fc.array(release, { minLength: 1, maxLength: 5 }), (releases) => {
				const sum = releases.reduce((total, each) => total + dilutionFlow(each, 20).flowM3PerH, 0);
				const all = additiveDilutionFlow([...releases].reverse(), 20).flowM3PerH;
				expect(all / sum).toBeCloseTo(1, 9);
			})
		);
	});

	test('the flow for a quarter of the explosive limit leaves a quarter', () => {
		const solvent = {
			sensitizer: false,
			releaseGPerMin: 3,
			molarMassGPerMol: 60.1,
			lelPct: 2,
			temperatureC: 20
		};
		const { flowM3PerH } = fireDilutionFlow(solvent);
		expect(lelFraction({ ...solvent, flowM3PerH }).fraction).toBeCloseTo(0.25, 9);
		const oven = fireDilutionFlow({ ...solvent, processC: 150, safetyFactor: 10 });
		expect(oven.flowM3PerH / flowM3PerH).toBeCloseTo(10 / 4 / 0.7, 9);
	});
});

describe('build-up and purging', () => {
	test('a concentration stays between where it starts and where it tends to', () => {
		fc.assert(
			fc.property(room, double(0, 5000), double(0, 36_000), (each, startPpm, afterS) => {
				const { ppm } = concentrationAfter({ ...each, startPpm, afterS });
				const steady = steadyPpm(each);
				expect(ppm).toBeGreaterThanOrEqual(Math.min(startPpm, steady) - 1e-6);
				expect(ppm).toBeLessThanOrEqual(Math.max(startPpm, steady) + 1e-6);
			})
		);
	});

	test('after the waiting time the concentration is the target', () => {
		fc.assert(
			fc.property(room, double(0, 5000), double(1, 5000), (each, startPpm, targetPpm) => {
				const { timeS } = timeToPpm({ ...each, startPpm, targetPpm });
				fc.pre(timeS !== null && timeS < 3e7);
				const { ppm } = concentrationAfter({ ...each, startPpm, afterS: timeS });
				expect(Math.abs(ppm - targetPpm)).toBeLessThan(1e-3);
			})
		);
	});

	test('a target beyond the steady state is never reached, and said so', () => {
		const shop = { sensitizer: false, vaporM3PerH: 0.1, effectiveM3PerH: 200, roomM3: 80 };
		expect(steadyPpm(shop)).toBeCloseTo(500, 9);
		expect(timeToPpm({ ...shop, startPpm: 1000, targetPpm: 400 }).timeS).toBeNull();
		expect(timeToPpm({ ...shop, startPpm: 0, targetPpm: 500 }).timeS).toBeNull();
		expect(timeToPpm({ ...shop, startPpm: 500, targetPpm: 500 }).timeS).toBe(0);
	});
});

describe('lists of limits', () => {
	test('every number stands with a source', () => {
		for (const limit of EXPOSURE_LIMITS) {
			expect(limit.source.length, `${limit.substance} ${limit.set}`).toBeGreaterThan(3);
			expect(limitPpm(limit)).toBeGreaterThan(0);
		}
		for (const substance of Object.values(SUBSTANCES)) {
			for (const value of Object.values(substance)) {
				if (typeof value === 'object') expect(value.source.length).toBeGreaterThan(3);
			}
		}
	});

	test('every isocyanate is a sensitizer', () => {
		for (const { isocyanate, sensitizer } of Object.values(SUBSTANCES)) {
			expect(!isocyanate || sensitizer).toBe(true);
		}
	});

	test('choosing more lists never makes the limit laxer', () => {
		for (const substance of Object.keys(SUBSTANCES) as SubstanceId[]) {
			for (const kind of ['average', 'short', 'ceiling'] as const) {
				const all = strictestLimit({ substance, sets: ALL, kind });
				for (const set of ALL) {
					const one = strictestLimit({ substance, sets: [set], kind });
					if (one) expect(all?.limitPpm).toBeLessThanOrEqual(one.limitPpm);
				}
			}
		}
	});

	test('the UK limit for isocyanate groups becomes 0.0596 mg/m³ of MDI', () => {
		const limit = strictestLimit({ substance: 'mdi', sets: ['UK WEL'], kind: 'average' });
		const mgPerM3 = mgPerM3FromPpm(limit?.limitPpm ?? NaN, {
			molarMassGPerMol: 250.25,
			molarVolumeL: 24.06
		});
		expect(mgPerM3).toBeCloseTo(0.0596, 4);
	});

	test('the stricter list is taken for dust, size fraction by size fraction', () => {
		const silica = { dust: 'crystalline silica', sets: ALL } as const;
		expect(strictestDustLimit({ ...silica, fraction: 'respirable' })?.set).toBe('ACGIH TLV');
		expect(strictestDustLimit({ ...silica, fraction: 'total' })).toBeNull();
		for (const limit of DUST_LIMITS) expect(limit.source.length).toBeGreaterThan(3);
	});

	test('no limit is not zero and not a permission', () => {
		expect(strictestLimit({ substance: 'tdi', sets: ['NIOSH REL'], kind: 'average' })).toBeNull();
	});
});

describe('vapors', () => {
	test('ppm and mg/m³ turn into each other and back', () => {
		fc.assert(
			fc.property(double(0, 1e5), double(20, 300), (ppm, molarMassGPerMol) => {
				const there = mgPerM3FromPpm(ppm, { molarMassGPerMol });
				expect(ppmFromMgPerM3(there, { molarMassGPerMol })).toBeCloseTo(ppm, 6);
			})
		);
	});

	test('a mixture’s limits lie between those of its parts', () => {
		fc.assert(
			fc.property(double(0, 1), double(1, 10), double(1, 10), (share, one, two) => {
				const lel = mixtureLelPct([
					{ moleFraction: share, lelPct: one },
					{ moleFraction: 1 - share, lelPct: two }
				]);
				expect(lel).toBeGreaterThanOrEqual(Math.min(one, two) - 1e-9);
				expect(lel).toBeLessThanOrEqual(Math.max(one, two) + 1e-9);
				const limit = liquidMixtureLimitMgPerM3([
					{ massFraction: share, limitMgPerM3: one },
					{ massFraction: 1 - share, limitMgPerM3: two }
				]);
				expect(limit).toBeCloseTo(lel, 9);
			})
		);
		expect(() => mixtureLelPct([{ moleFraction: 0.5, lelPct: 2 }])).toThrow(/sum of the fractions/);
	});

	test('vapor pressure rises with temperature, and a fit is never left', () => {
		for (const id of Object.keys(SUBSTANCES) as SubstanceId[]) {
			const cool = vaporPressurePa(id, 18);
			if (!cool) continue;
			expect(vaporPressurePa(id, 30)?.pressurePa).toBeGreaterThan(cool.pressurePa);
			expect(() => vaporPressurePa(id, 90)).toThrow(RangeError);
		}
		expect(vaporPressurePa('mdi', 20)).toBeNull();
	});
});
