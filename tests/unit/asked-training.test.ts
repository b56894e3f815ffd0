import { describe, expect, test } from 'vitest';
import { benchView } from '../../src/lib/core/bench/bench-view';
import { contextOf } from '../../src/lib/core/process/job';
import {
	handlesIsocyanate,
	mixesBeside,
	type Expiries
} from '../../src/lib/core/training/asked-training';
import { textsOfBench } from '../../src/lib/server/content';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { testSheet } from '../fixtures/materials';
import { handPlan } from '../fixtures/plan';

const WEIGHED = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const asks = (log: BenchLog, type: Parameters<typeof handlesIsocyanate>[0]) =>
	handlesIsocyanate(type, contextOf(log.state));

describe('training is asked for where hands come to diisocyanates', () => {
	test('at the weighing, of who takes a cup over, and of who mixes beside', () => {
		const log = new BenchLog(handPlan()).toCoats();
		expect(asks(log, 'cup.weighed')).toBe(true);
		expect(asks(log, 'job.takenOver')).toBe(false);
		log.do('cup.weighed', WEIGHED);
		expect(asks(log, 'job.takenOver')).toBe(true);
		expect(asks(log, 'cup.mixed')).toBe(false);
		expect(mixesBeside('cup.mixed', contextOf(log.state))).toBe(false);
		log.do('cup.mixed');
		expect(asks(log, 'cup.mixed')).toBe(false);
		expect(mixesBeside('cup.mixed', contextOf(log.state))).toBe(true);
		log.wait(300).do('cup.applied');
		expect(asks(log, 'job.takenOver')).toBe(false);
	});

	test('in the rounds of a shell by the shell, at the pour by the casting', () => {
		const shell = new BenchLog(handPlan()).toShell();
		expect(asks(shell, 'cup.weighed')).toBe(true);
		const plan = structuredClone(handPlan());
		plan.inputs.materials.casting = testSheet('brush-80');
		const pour = new BenchLog(plan).inspected().sign('moldAccepted');
		expect(asks(pour, 'part.poured')).toBe(true);
		plan.inputs.materials.casting = testSheet('casting-polyester');
		expect(asks(pour, 'part.poured')).toBe(false);
	});
});

describe('the bench', () => {
	const log = new BenchLog(handPlan()).toCoats();
	const weighing = (training: Expiries | null) =>
		benchView(
			{ id: 'job-1', plan: log.plan, headSeq: log.log.length, state: log.state },
			{
				viewer: { id: MAKER, name: 'Ines', role: 'mold maker' },
				names: {},
				at: log.at,
				zone: 'UTC',
				system: 'SI',
				texts: textsOfBench,
				training,
				actId: 'none'
			}
		).step.acts.find(({ type }) => type === 'cup.weighed');

	test('says beforehand why somebody does not weigh, and lets those in date', () => {
		expect(weighing({})?.blocked).toContain('there is no training on isocyanates on record');
		expect(weighing({ [MAKER]: log.at })?.blocked).toContain('ran out');
		expect(weighing({ [MAKER]: '2031-03-02T14:00:00.000Z' })?.blocked).toBeNull();
		expect(weighing(null)?.blocked).toBeNull();
	});
});
