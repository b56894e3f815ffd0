import { describe, expect, test } from 'vitest';
import { openDeviations } from '../../src/lib/core/process/changes/deviations';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
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
			.cup(180)
			.cup(180)
			.do('coat.finished')
			.wait(46 * 60);
		log.do('tack.tested', { result: 'almost tack-free' });
		log.do('thickness.measured', { points: THIN }).do('coat.added', { reason: 'wall is thin' });
		const [late, thinness] = noted(log);
		expect(late).toMatchObject({ decided: null });
		expect(late?.what).toContain('its pot life');
		expect(thinness?.decided).toMatchObject({ redone: false, isUnderWay: true, by: MAKER });
		expect(openDeviations(noted(log))).toContain(thinness);
		log.cup(360).do('coat.finished', { shortReason: 'the thin wall only' });
		expect(noted(log)[1]?.decided).toMatchObject({ redone: true, by: MAKER, accepted: false });
		expect(noted(log)[1]?.decided?.note).toBe('Added: Extra coat 4');
		expect(openDeviations(noted(log))).not.toContain(noted(log)[1]);
	});
});

test('one word decides what is waited for; the rest waits for the next signature', () => {
	const log = bench().cup(180).do('coat.finished', { shortReason: 'ran out' });
	log
		.wait(5 * HOUR)
		.do('tack.tested', { result: 'hard' })
		.do('surface.abraded', ABRADED);
	log.do('deviation.decided', { accepted: true, note: 'keyed' }, SUPERVISOR);
	expect(noted(log).map(({ decided }) => decided?.note ?? null)).toEqual([null, null, 'keyed']);
	expect(openDeviations(noted(log))).toHaveLength(2);
});

describe('laying a coat again', () => {
	const redo = (log: BenchLog) =>
		log
			.do('trouble.reported', { trouble: 'sag', note: 'it slid' })
			.do('trouble.mended', { how: 'scraped off', wayBack: 'redo coat' });

	test('closes what waited for a decision once it is laid, and the record says both', () => {
		const log = redo(thin());
		const sent = { redone: false, isUnderWay: true, note: 'To be laid again: scraped off' };
		expect(noted(log)).toMatchObject([{ blocking: true, decided: sent }]);
		expect(openDeviations(noted(log))).toHaveLength(1);
		log.readRoom().do('tack.tested', { result: 'almost tack-free' }).cup(540).do('coat.finished');
		expect(noted(log)[0]).toMatchObject({
			decided: { redone: true, by: MAKER, note: 'Laid again: Build coat 3' },
			earlier: [sent]
		});
		expect(openDeviations(noted(log))).toEqual([]);
	});

	test('asks for the surface below anew, also where that was abraded and accepted', () => {
		const log = deciding().do('deviation.decided', { accepted: true, note: 'keyed' }, SUPERVISOR);
		redo(log.readRoom().cup(360));
		expect(contextOf(log.state)).toMatchObject({ abraded: false, coatIndex: 1 });
		log.do('cup.weighed', ON_RATIO);
		expect(why(log.try('cup.mixed'))).toContain('the recoat window closed');
	});

	test('after its passed test takes off the coat that was laid, not the next one', () => {
		const first = redo(bench().coat(180));
		expect(contextOf(first.state)).toMatchObject({ coatIndex: 0, windowClosesAt: null });
		first.coat(180);
		const log = redo(bench().coat(180).coat(360));
		const { coatIndex, surfaces, windowClosesAt } = contextOf(log.state);
		expect(coatIndex).toBe(1);
		expect(windowClosesAt).toBe(surfaces[0]?.closesAt);
		log.do('cup.weighed', ON_RATIO);
		expect(why(log.try('cup.mixed'))).toContain('has not passed its fingertip test');
		log.do('tack.tested', { result: 'almost tack-free' }).do('cup.mixed');
	});

	test('of a cup under the brush takes off that one only', () => {
		const log = bench().coat(180).do('cup.weighed', ON_RATIO).do('cup.mixed');
		expect(contextOf(redo(log).state).coatIndex).toBe(1);
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
		expect(noted(log).map(({ decided }) => decided?.by ?? null)).toEqual([null, null, SUPERVISOR]);
	});

	test('and stripping close it alike', () => {
		const log = thin().do('trouble.reported', { trouble: 'bubbles', note: 'foam' });
		log.do('test.judged', GOOD_CUP).do('trouble.mended', { how: 'stripped', wayBack: 'release' });
		expect(noted(log)[0]?.decided).toMatchObject({
			redone: false,
			isUnderWay: true,
			note: 'Begun again from "Release": stripped'
		});
	});
});

describe('more than planned on a coat', () => {
	test('is a deviation from 10 percent on', () => {
		const over = bench().cup(200).cup(29).do('coat.finished');
		expect(noted(over).map(({ what, blocking }) => [what, blocking])).toEqual([
			['Build coat 1 took more than planned: 229 g, planned 180 g.', false]
		]);
		expect(noted(bench().cup(195).do('coat.finished'))).toEqual([]);
	});

	test('and in a round of the shell alike', () => {
		const log = new BenchLog(handPlan()).toShell().readRoom().cup(460).do('coat.finished');
		expect(noted(log).at(-1)?.what).toContain('Shell round 1 took more than planned');
	});

	test('is said at the bench, with the one thing left to do', () => {
		const step = benchStep(bench().cup(229).state, { by: MAKER, at: '2026-03-02T18:00:00Z' });
		expect(step.what).toBe('229 g of 180 g is laid. More than planned: finish the coat.');
		expect(step.amounts).toEqual([]);
		const done = benchStep(bench().cup(180).state, { by: MAKER, at: '2026-03-02T18:00:00Z' });
		expect(done.what).toContain('All of it is on: finish the coat.');
	});
});

describe('a frame', () => {
	const fitted = (gapMm: number) =>
		new BenchLog(handPlan()).toFrame().do('frame.fitted', {
			gapMm,
			screwedFromBelow: true,
			cornersTight: true,
			insideReleased: true
		});

	test('that stands farther off than planned is a deviation with both gaps, shown to who signs', () => {
		expect(noted(fitted(76.2))).toMatchObject([
			{
				blocking: false,
				decided: null,
				what: 'The frame stands 76.2 mm clear of the pattern; planned 30 mm, give or take 6 mm.'
			}
		]);
		expect(noted(fitted(20))).toHaveLength(1);
		expect(noted(fitted(35))).toEqual([]);
	});

	test('entered by a slip and taken back stays in the record with what was entered', () => {
		const log = fitted(76.2);
		log.do('act.undone', { undoes: log.log.at(-1)?.id, reason: 'inches' });
		expect(asBuilt(log.state, log.log).undone).toMatchObject([{ said: 'gap 76.2 mm' }]);
	});
});
