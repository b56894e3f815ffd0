import { describe, expect, test } from 'vitest';
import { readAct } from '../../src/lib/core/bench/read-act';
import { workableS } from '../../src/lib/core/laws/mass-effect';
import { curingMaterial } from '../../src/lib/core/plan/curing-material';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import type { Coat, Plan } from '../../src/lib/core/plan/plan';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { cupLife } from '../../src/lib/core/process/cup-mass';
import { addSeconds } from '../../src/lib/core/process/instant';
import { contextOf } from '../../src/lib/core/process/job';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { testInputs, testSheet } from '../fixtures/materials';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const of = (massG: number) => ({
	massesG: { A: (massG * 80) / 180, B: (massG * 100) / 180 },
	lots: { A: 'a1', B: 'b1' }
});
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const noted = (log: BenchLog) => contextOf(log.state).deviations.map(({ what }) => what);
const LIVES = [
	{ massG: 180, workingS: 18 * MIN, peakC: 40 },
	{ massG: 720, workingS: 8 * MIN, peakC: 80 },
	{ massG: 2880, workingS: 4 * MIN, peakC: 120 }
];

/** Each coat with a table of what larger cups work for; the largest cup of the shop holds 2.5 L. */
function bench(): BenchLog {
	const plan = handPlan();
	plan.coats = plan.coats.map((coat): Coat => ({ ...coat, cupLives: LIVES }));
	return new BenchLog(plan).toCoats();
}
const asked = (log: BenchLog, massG: number) => {
	const form = new FormData();
	form.set('type', 'cup.weighed');
	for (const [part, mass] of Object.entries(of(massG).massesG)) {
		form.set(`massesG.${part}`, mass.toFixed(1));
		form.set(`lots.${part}`, 'l1');
	}
	const texts = { lang: 'en' as const, steps: {}, briefings: {}, troubles: {} };
	const read = readAct(form, { state: log.state, by: MAKER, at: log.at, texts });
	return read.ok ? 'taken' : read.notDone.question;
};

describe('a cup that no cup of the shop holds', () => {
	test('is not entered: both parts together take up more than the largest to its brim', () => {
		const log = bench();
		const said = why(log.try('cup.weighed', of(10_000)));
		expect(said).toMatch(/10000 g take up \d+ mL, and the largest cup of this shop holds 2500 mL/);
		const { mixedDensityGPerMl } = testSheet('brush-80');
		const brimG = 2500 * mixedDensityGPerMl;
		expect(why(log.try('cup.weighed', of(0.8 * brimG)))).toBe('taken');
		expect(why(log.try('cup.weighed', of(1.2 * brimG)))).toContain('to its brim');
	});

	test('is taken under version 5, whose logs fold as they did', () => {
		const log = new BenchLog(handPlan({ processVersion: 5 })).toCoats();
		expect(why(log.try('cup.weighed', of(10_000)))).toBe('taken');
	});
});

// A larger mass of a reacting resin heats more and sets sooner (exotherm): the plan's table is checked below.
describe('a cup much larger than planned', () => {
	test('is asked about once, with what it works for and how hot it may get', () => {
		const log = bench();
		expect(asked(log, 200)).toBe('taken');
		// The machine refuses it, in other words.
		expect(asked(log, 10_000)).toBe('taken');
		expect(asked(log, 720)).toMatch(
			/It is 720 g; the plan has 180 g.* works for 8 min and, forgotten, may reach about 80 °C/
		);
	});

	test('counts with what is really in it, on the clock, in the record and as a deviation', () => {
		const log = bench();
		const metAt = log.at;
		log.do('cup.weighed', of(720));
		const at = { by: MAKER, at: log.at };
		expect(benchStep(log.state, at).mixing?.closesAt).toBe(addSeconds(metAt, 9 * MIN));
		log.do('cup.mixed');
		expect(benchStep(log.state, at).window?.closesAt).toBe(addSeconds(metAt, 9 * MIN));
		log.wait(10 * MIN).do('cup.applied');
		expect(noted(log)).toEqual([
			'A cup of 720 g was mixed; planned 180 g. It heats more and turns sooner.',
			'A cup was laid 12 min after its parts met; its pot life is 9 min.'
		]);
		expect(asBuilt(log.state, log.log).sections[0]?.cups[0]).toMatchObject({
			workingS: 8 * MIN,
			isLate: true
		});
	});

	test('is read from the table over the logarithm of the mass, and never longer than planned', () => {
		const [coat] = bench().plan.coats;
		if (!coat) throw new Error('no coat');
		expect(cupLife(coat, 90)).toEqual({ workingS: 18 * MIN, peakC: 40 });
		expect(cupLife(coat, 360)).toEqual({ workingS: 13 * MIN, peakC: 60 });
		expect(cupLife(coat, 9000)).toEqual({ workingS: 4 * MIN, peakC: 120 });
		const before = handPlan().coats[0] ?? coat;
		expect(cupLife(before, 9000)).toEqual({ workingS: 18 * MIN, peakC: null });
	});
});

describe('the table of a plan', () => {
	const plan: Plan = makePlan(testInputs());
	const batches = [...plan.coats, ...plan.shell.rounds];

	test('goes from the planned cup, or the mass of the sheet, to the largest cup full', () => {
		expect(batches.length).toBeGreaterThan(2);
		for (const { cupLives = [], cups, workingS, materialId } of batches) {
			const sheet = Object.values(plan.inputs.materials).find(({ id }) => id === materialId);
			const leastG = Math.max(cups[0]?.massG ?? 0, sheet?.potLife?.massG ?? 0);
			expect(cupLives[0]).toMatchObject({ massG: leastG, workingS });
			const brimG = 2500 * (sheet?.mixedDensityGPerMl ?? NaN);
			expect(cupLives.at(-1)?.massG).toBeCloseTo(brimG, 0);
			for (const [i, row] of cupLives.slice(1).entries()) {
				expect(row.workingS).toBeLessThanOrEqual(cupLives[i]?.workingS ?? 0);
				expect(row.peakC).toBeGreaterThanOrEqual(cupLives[i]?.peakC ?? 999);
			}
		}
	});

	test('is the planned pot life in the proportion of the law of mass', () => {
		const [round] = plan.shell.rounds;
		const sheet = plan.inputs.materials.shell;
		const material = curingMaterial(sheet)?.material;
		const [first, ...rows] = round?.cupLives ?? [];
		if (!material || !first || !round) throw new Error('no heat');
		const life = (massG: number) =>
			workableS(material, { kind: 'cup', massG }, plan.roomTemperatureC);
		for (const { massG, workingS } of rows) {
			const potS = (life(massG) / life(first.massG)) * (round.mixS + round.workingS);
			expect(Math.abs(workingS - (potS - round.mixS))).toBeLessThan(1.5);
		}
	});

	test('is left out for a material of which no heat is known', () => {
		const inputs = testInputs();
		const build = { ...inputs.materials.build, family: 'latex' as const };
		const without = makePlan({ ...inputs, materials: { ...inputs.materials, build } });
		expect(without.coats.length).toBeGreaterThan(1);
		expect(without.coats.every(({ cupLives }) => cupLives === undefined)).toBe(true);
	});
});
