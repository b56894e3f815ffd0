import { describe, expect, test } from 'vitest';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { contextOf } from '../../src/lib/core/process/job';
import { statePath } from '../../src/lib/core/process/state-path';
import { troublesIn } from '../../src/lib/core/process/troubles';
import { BenchLog, HELPED, MAKER, SMOKE_OVER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const HALF = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const bench = () => new BenchLog(handPlan());
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const stepOf = (log: BenchLog) => benchStep(log.state, { by: MAKER, at: log.at });
const resume = { how: 'done', wayBack: 'resume' };

// Common practice, no source.
describe('a trouble', () => {
	test('that hurts or burns stands first in the list, and needs no words', () => {
		const hurting = [
			'skin-contact',
			'breathing',
			'burn',
			'cut',
			'cup-smoke',
			'waste-smoke',
			'spill'
		];
		expect(troublesIn('build').slice(0, 7)).toEqual(hurting);
		for (const trouble of hurting) bench().toCoats().do('trouble.reported', { trouble });
		const log = bench().toCoats();
		expect(why(log.try('trouble.reported', { trouble: 'sag' }))).toContain('a few words');
	});

	test('of the mold leaves the clocks running: of the cup in hand, and of the surface below', () => {
		const log = bench().toCoats().coat(180).do('cup.weighed', HALF).do('cup.mixed');
		const { window, windowBeside } = stepOf(log);
		log.do('trouble.reported', { trouble: 'frame-leak', note: 'part B' });
		expect(stepOf(log)).toMatchObject({ window, windowBeside });
		expect(windowBeside?.label).toBe('Recoat window');
	});

	test('lets a second one be reported, and both are ended before work goes on', () => {
		const log = bench().toCoats().cup(180).do('trouble.reported', { trouble: 'spill', note: 'B' });
		expect(stepOf(log).acts.map(({ type }) => type)).toContain('trouble.reported');
		expect(why(log.try('trouble.reported', { trouble: 'spill', note: 'B' }))).toContain('already');
		log.do('trouble.reported', { trouble: 'skin-contact' });
		expect(why(log.try('trouble.mended', resume))).toContain('with a PIN');
		log.do('trouble.decided', { ...resume, ...HELPED, how: 'rinsed' }, SUPERVISOR);
		expect(contextOf(log.state).trouble?.id).toBe('spill');
		expect(statePath(log.state.snapshot)).toBe('troubled');
		log.do('trouble.mended', { ...resume, how: 'swept' });
		expect(statePath(log.state.snapshot)).toBe('coating.weighing');
		expect(asBuilt(log.state, log.log).troubles.map(({ id, mended }) => [id, mended?.how])).toEqual(
			[
				['spill', 'swept'],
				['skin-contact', 'rinsed']
			]
		);
	});

	test('that sends the coat back leads there once the other one is ended', () => {
		const log = bench().toCoats().coat(180).cup(180);
		log.do('trouble.reported', { trouble: 'frame-leak', note: 'B' });
		log.do('trouble.reported', { trouble: 'sag', note: 'slid' });
		log.do('trouble.mended', { how: 'scraped off', wayBack: 'redo coat' });
		expect(statePath(log.state.snapshot)).toBe('troubled');
		log.do('trouble.mended', resume);
		expect(statePath(log.state.snapshot)).toBe('coating.weighing');
		expect(contextOf(log.state)).toMatchObject({ coatIndex: 1, laidG: 0, trouble: null });
	});

	test.each([
		['skin-contact', HELPED],
		['breathing', { ...HELPED, aired: true }],
		['burn', HELPED],
		['cut', HELPED],
		['no-cure', {}],
		['cup-smoke', SMOKE_OVER],
		['waste-smoke', SMOKE_OVER]
	])('%s is ended by a supervisor alone', (trouble, answers) => {
		const log = bench().toCoats().do('trouble.reported', { trouble, note: 'x' });
		if (trouble === 'no-cure') log.do('test.judged', { kind: 'test patch', result: 'good' });
		expect(why(log.try('trouble.mended', resume))).toContain('on the signing page');
		expect(why(log.try('trouble.decided', resume))).toContain('nobody signs their own work');
		log.do('trouble.decided', { ...resume, ...answers }, SUPERVISOR);
	});

	test('work goes on after somebody fell ill only where the air is clear', () => {
		const log = bench().toCoats().do('trouble.reported', { trouble: 'breathing' });
		const helped = { ...resume, ...HELPED };
		expect(why(log.try('trouble.decided', helped, SUPERVISOR))).toContain('the area is aired');
	});

	test('who cannot breathe well comes before a burn and a cut, whatever was reported last', () => {
		const log = bench().toCoats();
		for (const trouble of ['cut', 'breathing', 'burn']) log.do('trouble.reported', { trouble });
		expect(contextOf(log.state).trouble?.id).toBe('breathing');
	});

	test('that the crew can end may be ended by a supervisor too, after its test', () => {
		const log = bench().toCoats().do('trouble.reported', { trouble: 'bubbles', note: 'foam' });
		expect(why(log.try('trouble.decided', resume, SUPERVISOR))).toContain('test cup');
		log.do('test.judged', { kind: 'test cup', result: 'good' });
		log.do('trouble.decided', resume, SUPERVISOR);
		expect(contextOf(log.state).workers).not.toContain(SUPERVISOR);
	});
});
