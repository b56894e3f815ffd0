import { describe, expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { contextOf } from '../../src/lib/core/process/job';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, MAKER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const HOUR = 3600;
const CUP = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const ABRADED = { grit: '120', wiped: true, dried: true, reason: 'hard' };
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const shownTo = (log: BenchLog) => benchStep(log.state, { by: MAKER, at: log.at });

/** Abraded after a missed window, and accepted. */
function accepted(processVersion = 3) {
	const log = new BenchLog(handPlan({ processVersion }))
		.toCoats()
		.coat(180)
		.wait(5 * HOUR);
	log.do('surface.abraded', ABRADED);
	return log.do('deviation.decided', { accepted: true, note: 'seen' }, SUPERVISOR);
}

// The solvent of the wipe has not gone, or the coat is soft below: common practice, no source.
describe('an abraded and accepted surface', () => {
	test('found wet takes no cup till it is tested again', () => {
		const log = accepted().do('tack.tested', { result: 'wet' });
		expect(shownTo(log).slug).toBe('tack-test');
		log.do('cup.weighed', CUP);
		expect(why(log.try('cup.mixed'))).toContain('found wet: wait, then test it again');
		log.wait(20 * MIN).do('tack.tested', { result: 'hard' });
		expect(statePath(log.state.snapshot)).toBe('coating.weighed');
		expect(log.try('cup.mixed').ok).toBe(true);
	});

	test('found dry again takes its coat, and the finding goes with it', () => {
		const log = accepted().do('tack.tested', { result: 'wet' }).do('cup.weighed', CUP);
		log.wait(HOUR).do('tack.tested', { result: 'almost tack-free' }).do('cup.mixed');
		log
			.wait(5 * MIN)
			.do('cup.applied')
			.do('coat.finished', { shortReason: 'enough' });
		expect(contextOf(log.state).isWet).toBe(false);
	});

	test('found wet was mixed for under the version before', () => {
		const log = accepted(2).do('tack.tested', { result: 'wet' }).do('cup.weighed', CUP);
		expect(log.try('cup.mixed').ok).toBe(true);
	});
});

describe('a window reported as missed', () => {
	test('in the shell leads to abrading and a decision, though the clock had time left', () => {
		const log = new BenchLog(handPlan()).toShell().readRoom().cup(360).do('coat.finished');
		log.do('trouble.reported', { trouble: 'recoat-missed', place: 'rim', note: 'set hard' });
		log.do('trouble.mended', { how: 'stopped and looked', wayBack: 'resume' });
		expect(shownTo(log).slug).toBe('abrade');
		log.do('cup.weighed', CUP);
		expect(why(log.try('cup.mixed'))).toContain('the recoat window closed');
		log.do('surface.abraded', ABRADED);
		expect(statePath(log.state.snapshot)).toBe('shell.deciding');
		log.do('deviation.decided', { accepted: true, note: 'dull all over' }, SUPERVISOR);
		log.cup(180);
		expect(contextOf(log.state).abraded).toBe(false);
	});

	test('between coats holds against a clock that says open', () => {
		const log = new BenchLog(handPlan()).toCoats().coat(180);
		log.do('trouble.reported', { trouble: 'recoat-missed', note: 'no print' });
		log.do('trouble.mended', { how: 'stopped', wayBack: 'resume' }).do('cup.weighed', CUP);
		expect(log.try('cup.mixed').ok).toBe(false);
		expect(log.try('surface.abraded', ABRADED).ok).toBe(true);
	});

	test('before anything is laid in the shell shuts nothing', () => {
		const log = new BenchLog(handPlan()).toShell().readRoom();
		log.do('trouble.reported', { trouble: 'recoat-missed', note: 'a slip' });
		log.do('trouble.mended', { how: 'nothing', wayBack: 'resume' }).cup(360);
	});
});
