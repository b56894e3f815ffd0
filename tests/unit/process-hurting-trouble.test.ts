import { describe, expect, test } from 'vitest';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { contextOf } from '../../src/lib/core/process/job';
import { statePath } from '../../src/lib/core/process/state-path';
import { unfitToEnd } from '../../src/lib/core/process/unfit-to-sign';
import { BenchLog, HELPED, MAKER, SMOKE_OVER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const HALF = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const resume = { how: 'done', wayBack: 'resume' };
const ASIDE = { reason: 'set down outside' };
const bench = (given: Parameters<typeof handPlan>[0] = {}) =>
	new BenchLog(handPlan(given)).toCoats();
const mixed = (given: Parameters<typeof handPlan>[0] = {}) =>
	bench(given).coat(180).do('cup.weighed', HALF).do('cup.mixed');
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const stepOf = (log: BenchLog) => benchStep(log.state, { by: MAKER, at: log.at });
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);

// Common practice, no source: people before things, and a cup in hand is put down first.
describe('a trouble that hurts, met with a mixed cup in hand', () => {
	test('sets the clock aside for what helps, and offers to set the cup aside', () => {
		const log = mixed();
		const { window } = stepOf(log);
		log.do('trouble.reported', { trouble: 'skin-contact' });
		expect(stepOf(log)).toMatchObject({ window: null, windowBeside: window });
		const main = stepOf(log).acts.find(({ primary }) => primary);
		expect(main).toMatchObject({ type: 'cup.discarded', blocked: null, irreversible: true });
		// The reason is there already: nobody types while somebody is hurt.
		expect(main?.fields.find(({ name }) => name === 'reason')?.preset).toBe(
			'On skin or in the eyes'
		);
	});

	test('leaves the cup to the waste: work goes on with a new one', () => {
		const log = mixed().do('trouble.reported', { trouble: 'cup-smoke' }).do('cup.discarded', ASIDE);
		expect(contextOf(log.state)).toMatchObject({ cup: null, isCupAside: true });
		expect(stepOf(log).acts.map(({ type }) => type)).not.toContain('cup.discarded');
		expect(why(log.try('cup.discarded', ASIDE))).toContain('no cup in hand');
		log.do('trouble.decided', { ...resume, ...SMOKE_OVER }, SUPERVISOR);
		expect(pathOf(log)).toBe('coating.weighing');
		expect(contextOf(log.state)).toMatchObject({ isCupAside: false, tackPassed: true, laidG: 0 });
		log.cup(180);
	});

	test('brings the next cup to hand, as it was prepared', () => {
		const log = new BenchLog(handPlan({ people: 2 })).toCoats().brief('amir').coat(180);
		log.do('cup.weighed', HALF).do('cup.mixed').do('cup.weighed', HALF);
		log
			.do('trouble.reported', { trouble: 'cut' })
			.do('cup.discarded', { ...ASIDE, cup: 'in hand' });
		log.do('trouble.decided', { ...resume, ...HELPED }, SUPERVISOR);
		expect(pathOf(log)).toBe('coating.weighed');
		log.do('cup.mixed').do('cup.applied');
	});

	test('goes on in the shell where it was met', () => {
		const log = new BenchLog(handPlan()).toShell().readRoom().do('cup.weighed', HALF);
		log.do('cup.mixed').do('trouble.reported', { trouble: 'burn' }).do('cup.discarded', ASIDE);
		log.do('trouble.decided', { ...resume, ...HELPED }, SUPERVISOR);
		expect(pathOf(log)).toBe('shell.weighing');
	});

	test('goes on with the cup where nobody set it aside', () => {
		const log = mixed().do('trouble.reported', { trouble: 'skin-contact' });
		log.do('trouble.decided', { ...resume, ...HELPED }, SUPERVISOR);
		expect(pathOf(log)).toBe('coating.mixed');
	});

	test('is not ended while the cup that smokes still counts as in hand', () => {
		const log = mixed().do('trouble.reported', { trouble: 'cup-smoke' });
		expect(unfitToEnd(contextOf(log.state))).toContain('set aside');
		const over = { ...resume, ...SMOKE_OVER };
		expect(why(log.try('trouble.decided', over, SUPERVISOR))).toContain('set aside');
		log.do('cup.discarded', ASIDE);
		expect(unfitToEnd(contextOf(log.state))).toBeNull();
	});

	test('is left to whoever has the mold in hand, who then has worked on it', () => {
		const log = mixed().do('trouble.reported', { trouble: 'skin-contact' });
		expect(why(log.try('cup.discarded', ASIDE, 'amir'))).toContain('take it over');
		log.do('job.takenOver', {}, 'amir').do('cup.discarded', ASIDE, 'amir');
		expect(contextOf(log.state).workers).toContain('amir');
	});
});

describe('of two troubles', () => {
	test('the one about a body stays first, whichever came later', () => {
		for (const pair of [
			['skin-contact', 'waste-smoke'],
			['waste-smoke', 'skin-contact']
		]) {
			const log = bench().coat(180);
			for (const trouble of pair) log.do('trouble.reported', { trouble, note: 'x' });
			expect(stepOf(log).title).toBe('On skin or in the eyes');
			expect(why(log.try('trouble.decided', { ...resume, ...SMOKE_OVER }, SUPERVISOR))).toContain(
				'first aid'
			);
			log.do('trouble.decided', { ...resume, ...HELPED }, SUPERVISOR);
			expect(contextOf(log.state).trouble?.id).toBe('waste-smoke');
			log.do('trouble.decided', { ...resume, ...SMOKE_OVER }, SUPERVISOR);
			expect(contextOf(log.state).trouble).toBeNull();
		}
	});

	test('of the same kind the later one comes first', () => {
		const log = bench().coat(180).do('trouble.reported', { trouble: 'sag', note: 'x' });
		log.do('trouble.reported', { trouble: 'voids', note: 'x' });
		expect(contextOf(log.state).trouble?.id).toBe('voids');
	});
});

describe('the word that ends it', () => {
	test.each([
		['skin-contact', HELPED],
		['cup-smoke', SMOKE_OVER]
	])('answers each question about %s', (trouble, answers) => {
		const log = bench().coat(180).do('trouble.reported', { trouble });
		for (const left of Object.keys(answers)) {
			const some = Object.fromEntries(Object.entries(answers).filter(([name]) => name !== left));
			expect(why(log.try('trouble.decided', { ...resume, ...some }, SUPERVISOR)), left).toContain(
				'say first'
			);
		}
		log.do('trouble.decided', { ...resume, ...answers }, SUPERVISOR);
		expect(asBuilt(log.state, log.log).troubles[0]?.mended?.answers).toEqual(answers);
	});

	test('of a version before needs a note alone', () => {
		const log = bench({ processVersion: 5 }).coat(180);
		log.do('trouble.reported', { trouble: 'breathing' }).do('trouble.decided', resume, SUPERVISOR);
		expect(contextOf(log.state).trouble).toBeNull();
	});
});
