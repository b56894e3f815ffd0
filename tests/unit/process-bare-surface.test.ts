import { describe, expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { addSeconds, secondsBetween } from '../../src/lib/core/process/instant';
import { contextOf } from '../../src/lib/core/process/job';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, MAKER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const HOUR = 3600;
const HALF = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const ABRADED = { grit: '120', wiped: true, dried: true, reason: 'called away' };
const stepOf = (log: BenchLog) => benchStep(log.state, { by: MAKER, at: log.at });
const noted = (log: BenchLog) => contextOf(log.state).deviations.map(({ what }) => what);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
/** Coat 2 takes two cups; the first is on, most of coat 1 is bare. */
const halfCoated = () => new BenchLog(handPlan()).toCoats().coat(180).cup(180);

// Each place cures from when it was laid: common practice, no source.
describe('the window of a coat laid in several cups', () => {
	test('opens from its last cup and shuts from its first', () => {
		const log = halfCoated();
		const firstAt = contextOf(log.state).laidAt ?? '';
		log
			.wait(27 * MIN)
			.cup(180)
			.do('coat.finished')
			.wait(5 * MIN);
		const { laidAt } = contextOf(log.state);
		expect(stepOf(log).window).toMatchObject({
			opensAt: addSeconds(laidAt ?? '', 45 * MIN),
			closesAt: addSeconds(firstAt, 4 * HOUR)
		});
	});
});

describe('the window of the surface below a coat that is being laid', () => {
	test('is shown for what is still bare: between cups, and beside the pot life of a cup', () => {
		const log = halfCoated();
		const closesAt = contextOf(log.state).windowClosesAt;
		expect(stepOf(log).window).toMatchObject({
			label: 'Recoat window, where still bare',
			closesAt
		});
		log.do('cup.weighed', HALF).do('cup.mixed');
		expect(stepOf(log).window?.label).toBe('Working time of this cup');
		expect(stepOf(log).windowBeside).toMatchObject({ closesAt });
		log.do('cup.applied');
		expect(stepOf(log)).toMatchObject({ window: null, windowBeside: null });
	});

	test('past it is a missed window: what is bare is abraded, and a supervisor decides', () => {
		const log = halfCoated();
		log.wait(secondsBetween(log.at, contextOf(log.state).windowClosesAt ?? '') + MIN);
		expect(stepOf(log).what).toContain('Abrade what is still bare');
		log.do('cup.weighed', HALF);
		expect(why(log.try('cup.mixed'))).toContain('the recoat window closed');
		log.do('surface.abraded', ABRADED);
		expect(statePath(log.state.snapshot)).toBe('coating.deciding');
		log.do('deviation.decided', { accepted: true, note: 'go on' }, SUPERVISOR);
		log.readRoom().do('cup.weighed', HALF).do('cup.mixed').do('cup.applied');
		expect(contextOf(log.state).laidG).toBe(360);
		expect(noted(log)).toHaveLength(1);
	});

	test('laid over after it had shut is written down', () => {
		const log = halfCoated();
		log.wait(secondsBetween(log.at, contextOf(log.state).windowClosesAt ?? '') - 3 * MIN);
		log
			.do('cup.weighed', HALF)
			.do('cup.mixed')
			.wait(5 * MIN)
			.do('cup.applied');
		expect(noted(log)).toEqual([expect.stringContaining('what was bare there does not bond')]);
	});

	test('counts for nothing once all of the coat is on', () => {
		const log = halfCoated().cup(180);
		log.wait(secondsBetween(log.at, contextOf(log.state).windowClosesAt ?? '') + MIN);
		expect(stepOf(log).what).toContain('finish the coat');
		log.readRoom().do('cup.weighed', HALF).do('cup.mixed').do('cup.applied').do('coat.finished');
		expect(noted(log)).toEqual([expect.stringContaining('took more than planned')]);
	});
});
