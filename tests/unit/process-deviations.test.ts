import { describe, expect, test } from 'vitest';
import { contextOf } from '../../src/lib/core/process/job';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, GOOD_CUP, MAKER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const HOUR = 3600;
const THIN = ['wall', 'corner', 'top'].map((place) => ({ place, thicknessMm: 3 }));
const ABRADED = { grit: '120', wiped: true, dried: true, reason: 'called away' };
const ON_RATIO = { massesG: { A: 80, B: 100 }, lots: {} };
const bench = () => new BenchLog(handPlan()).toCoats();
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const noted = (log: BenchLog) => contextOf(log.state).deviations;
const thin = () => bench().coat(180).coat(360).coat(540).do('thickness.measured', { points: THIN });
const deciding = () =>
	bench()
		.coat(180)
		.wait(5 * HOUR)
		.do('surface.abraded', ABRADED);

describe('a decision on a deviation', () => {
	test('that is taken back by a later one shows in the record as history', () => {
		const log = thin();
		log.do('deviation.decided', { accepted: false, note: 'measure again' }, SUPERVISOR);
		expect(pathOf(log)).toBe('thickness.thin');
		log.do('deviation.decided', { accepted: true, note: 'strong enough there' }, SUPERVISOR);
		expect(pathOf(log)).toBe('gloveCure');
		expect(noted(log)).toMatchObject([
			{
				decided: { accepted: true, note: 'strong enough there' },
				earlier: [{ accepted: false, note: 'measure again' }]
			}
		]);
	});

	test('to refuse stands for an abrading that was done over', () => {
		const log = deciding();
		log.do('deviation.decided', { accepted: false, note: 'still shiny' }, SUPERVISOR);
		log.do('surface.abraded', ABRADED);
		log.do('deviation.decided', { accepted: true, note: 'well keyed' }, SUPERVISOR);
		expect(noted(log).map(({ decided }) => decided?.accepted)).toEqual([false, true]);
	});

	test('is not given by whoever adds a coat: that answers the thinness, by doing, and no more', () => {
		const log = bench().coat(180).coat(360).do('cup.weighed', ON_RATIO).do('cup.mixed');
		log
			.wait(HOUR)
			.do('cup.applied')
			.cup(360)
			.do('coat.finished')
			.wait(46 * 60);
		log.do('tack.tested', { result: 'almost tack-free' });
		log.do('thickness.measured', { points: THIN }).do('coat.added', { reason: 'wall is thin' });
		const [late, thinness] = noted(log);
		expect(late).toMatchObject({ decided: null });
		expect(late?.what).toContain('its working time');
		expect(thinness?.decided).toMatchObject({ redone: true, by: MAKER, accepted: false });
	});
});

describe('laying a coat again', () => {
	const redo = (log: BenchLog) =>
		log
			.do('trouble.reported', { trouble: 'sag', note: 'it slid' })
			.do('trouble.mended', { how: 'scraped off', wayBack: 'redo coat' });

	test('closes what waited for a decision, and the record says by what', () => {
		const log = redo(thin());
		expect(noted(log)).toMatchObject([
			{ blocking: true, decided: { redone: true, by: MAKER, note: 'Laid again: scraped off' } }
		]);
	});

	test('while a decision was waited for is no way round it', () => {
		const log = redo(deciding());
		expect(noted(log).filter(({ blocking, decided }) => blocking && !decided)).toEqual([]);
		log.readRoom().do('cup.weighed', ON_RATIO);
		expect(why(log.try('cup.mixed'))).toContain('the recoat window closed');
		log.do('surface.abraded', ABRADED);
		expect(pathOf(log)).toBe('coating.deciding');
		log.do('deviation.decided', { accepted: true, note: 'well keyed' }, SUPERVISOR);
		log.do('cup.weighed', ON_RATIO).do('cup.mixed');
	});

	test('from a missed window leaves the miss to be decided, by abrading or at the next hold point', () => {
		const log = bench()
			.cup(180)
			.do('coat.finished')
			.wait(5 * HOUR);
		log.do('tack.tested', { result: 'hard' });
		redo(log);
		log.do('tack.tested', { result: 'hard' });
		expect(pathOf(log)).toBe('coating.missed');
		log.do('surface.abraded', ABRADED);
		log.do('deviation.decided', { accepted: true, note: 'well keyed' }, SUPERVISOR);
		expect(noted(log).every(({ decided }) => decided?.by === SUPERVISOR)).toBe(true);
	});

	test('and stripping close it alike', () => {
		const log = thin().do('trouble.reported', { trouble: 'bubbles', note: 'foam' });
		log.do('test.judged', GOOD_CUP).do('trouble.mended', { how: 'stripped', wayBack: 'release' });
		expect(noted(log)[0]?.decided).toMatchObject({
			redone: true,
			note: 'Begun again from "Release": stripped'
		});
	});
});
