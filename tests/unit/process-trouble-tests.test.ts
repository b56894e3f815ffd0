import { describe, expect, test } from 'vitest';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, GOOD_CUP, MAKER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const RESUME = { how: 'a new can', wayBack: 'resume' };
const BAD_CUP = { kind: 'test cup', result: 'bad', note: 'foams on dry plastic' };
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const foam = (processVersion = 3) =>
	new BenchLog(handPlan({ processVersion }))
		.toCoats()
		.do('trouble.reported', { trouble: 'bubbles', place: 'north wall', note: 'foam' });

// A test cup for foam, a test patch for a cure that does not come: common practice, no source.
describe('foam and no cure', () => {
	test('open no way back before a test away from the mold has turned out well', () => {
		const log = foam();
		expect(why(log.try('trouble.mended', RESUME))).toContain('test cup');
		const { acts } = benchStep(log.state, { by: MAKER, at: log.at });
		expect(acts.find(({ primary }) => primary)?.type).toBe('test.judged');
		log.do('test.judged', BAD_CUP);
		for (const wayBack of ['resume', 'redo coat', 'release']) {
			expect(why(log.try('trouble.mended', { how: 'x', wayBack }))).toContain(
				'the last test was bad'
			);
		}
		log.do('test.judged', GOOD_CUP).do('trouble.mended', RESUME);
		expect(statePath(log.state.snapshot)).toBe('coating.weighing');
		expect(asBuilt(log.state, log.log).troubles[0]?.tests).toMatchObject([
			{ result: 'bad', note: 'foams on dry plastic' },
			{ result: 'good' }
		]);
	});

	test('keep the stop when a good test is followed by a bad one', () => {
		const log = foam().do('test.judged', GOOD_CUP).do('test.judged', BAD_CUP);
		expect(log.try('trouble.mended', RESUME).ok).toBe(false);
	});

	test('met anew are tested anew', () => {
		const log = foam().do('test.judged', GOOD_CUP).do('trouble.mended', RESUME);
		log.do('trouble.reported', { trouble: 'no-cure', note: 'soft' });
		expect(why(log.try('trouble.mended', RESUME, SUPERVISOR))).toContain('test patch');
	});

	test('went on without a test under the version before', () => {
		expect(foam(2).try('trouble.mended', RESUME).ok).toBe(true);
	});
});

test('a spill asks for no test', () => {
	const log = new BenchLog(handPlan()).toCoats();
	log.do('trouble.reported', { trouble: 'spill', note: 'a cup of B' });
	expect(why(log.try('test.judged', GOOD_CUP))).toContain('asks for no test');
	expect(log.try('trouble.mended', RESUME).ok).toBe(true);
});
