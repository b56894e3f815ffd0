import { expect, test } from 'vitest';
import { readAct } from '../../src/lib/core/bench/read-act';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const bench = (release = true) => new BenchLog(handPlan({ release }));
const stepOf = (log: BenchLog) => benchStep(log.state, { by: MAKER, at: log.at });
const CUP = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const ABRADED = { grit: '120', wiped: true, dried: true, reason: 'late' };

test('what comes then after a missed window is the coat that it was missed for', () => {
	const log = bench()
		.toCoats()
		.cup(180)
		.do('coat.finished')
		.wait(5 * 3600);
	expect(stepOf(log).next).toEqual(['Build coat 2', 'Build coat 3']);
	log.do('tack.tested', { result: 'hard' });
	expect(stepOf(log)).toMatchObject({
		title: 'Build coat 1: window missed',
		next: ['Build coat 2', 'Build coat 3']
	});
	log.do('surface.abraded', ABRADED);
	expect(stepOf(log)).toMatchObject({
		title: 'Build coat 1: a decision is needed',
		next: ['Build coat 2', 'Build coat 3']
	});
	log.do('deviation.decided', { accepted: true, note: 'keyed' }, 'okoro');
	expect(stepOf(log)).toMatchObject({
		title: 'Build coat 2',
		next: ['Cup 2 of 2', 'Build coat 2: fingertip test']
	});
});

test('a window that shut unseen, with the next cup on the scale, skips no coat either', () => {
	const log = bench()
		.toCoats()
		.coat(180)
		.wait(5 * 3600)
		.do('cup.weighed', CUP);
	expect(stepOf(log)).toMatchObject({
		title: 'Build coat 1: window missed',
		next: ['Build coat 2', 'Build coat 3']
	});
	const shell = bench().toShell().readRoom().cup(360).do('coat.finished').wait(3600);
	expect(stepOf(shell)).toMatchObject({
		title: 'Shell: the last round is hard',
		next: ['Shell round 2', 'Shell cure']
	});
});

test('the inside of the frame is asked for where the plan has a release, and nowhere else', () => {
	const fitted = { gapMm: 30, screwedFromBelow: true, cornersTight: true };
	const fields = (log: BenchLog) =>
		stepOf(log)
			.acts.find(({ type }) => type === 'frame.fitted')
			?.fields.map(({ name }) => name);
	const none = bench(false).toFrame();
	expect(fields(none)).toEqual(['gapMm', 'screwedFromBelow', 'cornersTight']);
	expect(none.try('frame.fitted', fitted).ok).toBe(true);

	const released = bench().toFrame();
	expect(fields(released)).toContain('insideReleased');
	const answer = released.try('frame.fitted', fitted);
	expect(answer.ok ? '' : answer.reason).toContain('release the inside of the frame');
	const form = new FormData();
	form.set('type', 'frame.fitted');
	for (const [name, value] of Object.entries(fitted)) form.set(name, String(value));
	const texts = { lang: 'en' as const, steps: {}, briefings: {}, troubles: {} };
	const read = readAct(form, { state: released.state, by: MAKER, at: released.at, texts });
	expect(read.ok ? {} : Object.keys(read.notDone.errors)).toEqual(['insideReleased']);
});

test('within a coat the cups that are left and its test come next, and within a release the haze and what follows', () => {
	const log = bench().toRelease();
	const wax = log.state.snapshot.context.plan.release.waxCoats;
	expect(stepOf(log).next).toEqual(['Wax hazes', `Wax, coat 2 of ${wax}`]);
	log.do('wax.applied');
	expect(stepOf(log).next[0]).toBe(`Wax, coat 2 of ${wax}`);
	const coat = bench().toCoats();
	expect(stepOf(coat).next[0]).toBe('Build coat 1: fingertip test');
});
