import { describe, expect, test } from 'vitest';
import { waitsKept } from '../../src/lib/core/process/as-built-waits';
import { secondsBetween } from '../../src/lib/core/process/instant';
import { contextOf } from '../../src/lib/core/process/job';
import { statePath } from '../../src/lib/core/process/state-path';
import { windowAt } from '../../src/lib/core/process/windows';
import { BenchLog, GOOD_CUP, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const bench = () => new BenchLog(handPlan());
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const noted = (log: BenchLog) => contextOf(log.state).deviations.map(({ what }) => what);
const ON_RATIO = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const ABRADED = { grit: '120', wiped: true, dried: true, reason: 'window' };
const THIN = ['wall', 'corner', 'top'].map((place) => ({ place, thicknessMm: 3 }));

// What a coat does once it lies there does not wait for the keyboard: common practice, no source.
describe('a recoat window', () => {
	test('runs from when the last cup was laid, however late the end of the coat is entered', () => {
		const log = bench().toCoats().cup(180);
		const { laidAt } = contextOf(log.state);
		log.wait(40 * MIN).do('coat.finished');
		const { windowClosesAt, coats } = contextOf(log.state);
		expect(secondsBetween(laidAt ?? '', windowClosesAt ?? '')).toBe(coats[0]?.windowClosesS);
	});

	test('of the shell is not opened again by entering the end of the round', () => {
		const log = bench().toShell().readRoom();
		const [round] = log.plan.shell.rounds;
		log
			.cup(round?.massG ?? 0)
			.wait(60 * MIN)
			.do('coat.finished');
		log.do('cup.weighed', ON_RATIO);
		expect(why(log.try('cup.mixed'))).toContain('the recoat window closed');
	});

	test('that closes between mixing and laying is written down', () => {
		const log = bench().toCoats().coat(180);
		const closesAt = contextOf(log.state).windowClosesAt ?? '';
		log.wait(secondsBetween(log.at, closesAt) - 2 * MIN);
		log.do('cup.weighed', ON_RATIO).do('cup.mixed');
		log.wait(3 * MIN).do('cup.applied');
		expect(noted(log)[0]).toContain('after it had closed');
	});

	test('in which a thin coat is brushed back shuts by the soonest that it may be tack-free', () => {
		const [first] = handPlan().coats;
		if (!first) throw new Error('no coat');
		const windowOf = (soonest: { tackSoonestS?: number }) => {
			const coat = { ...first, kind: 'detail' as const, brushBackS: 20 * MIN, ...soonest };
			const log = new BenchLog({ ...handPlan(), coats: [coat, ...handPlan().coats.slice(1)] });
			log.toCoats().cup(180).do('coat.finished');
			const c = contextOf(log.state);
			const brushing = windowAt('coating.brushing', c);
			return secondsBetween(c.finishedAt ?? '', brushing?.closesAt ?? '');
		};
		expect(windowOf({ tackSoonestS: 32 * MIN })).toBe(24 * MIN);
		// A plan of before has no soonest.
		expect(windowOf({})).toBe(0.75 * first.tackTestS);
	});

	test('is not held against the first round of a shell that is laid again', () => {
		const log = bench().toShell().readRoom().cup(100);
		log.do('trouble.reported', { trouble: 'sag', note: 'slid' }).wait(90 * MIN);
		log.do('trouble.mended', { how: 'scraped off', wayBack: 'shellRelease' });
		log.do('glove.waxed', { wholeBack: true, coats: 1 }).do('frame.refitted', { tight: true });
		log.sign('readyForShell').do('cup.weighed', ON_RATIO).do('cup.mixed');
	});
});

describe('a fingertip test', () => {
	test('that found the last coat hard lets nothing be added without abrading', () => {
		const log = bench().toCoats().coat(180).coat(360).cup(540).do('coat.finished');
		log.wait(46 * MIN).do('tack.tested', { result: 'hard' });
		expect(waitsKept(log.state).at(-1)?.what).toContain('fingertip test');
		log.do('thickness.measured', { points: THIN }).do('coat.added', { reason: 'thin' });
		log.do('cup.weighed', ON_RATIO);
		expect(why(log.try('cup.mixed'))).toContain('has not passed its fingertip test');
		log.do('tack.tested', { result: 'hard' });
		expect(pathOf(log)).toBe('coating.missed');
	});

	test('taken again is held against the coat below, not the one to come', () => {
		const log = bench().toCoats().coat(180);
		log.do('tack.tested', { result: 'almost tack-free' });
		expect(noted(log)).toEqual([]);
	});
});

describe('an abraded surface that was accepted', () => {
	const abraded = (processVersion?: number) => {
		const log = new BenchLog(handPlan(processVersion ? { processVersion } : {})).toCoats();
		log
			.coat(180)
			.wait(5 * 60 * MIN)
			.do('surface.abraded', ABRADED);
		log.do('deviation.decided', { accepted: true, note: 'well keyed' }, SUPERVISOR);
		return log.do('tack.tested', { result: 'hard' });
	};

	test('takes the next coat without a print: it is hard by nature', () => {
		const log = abraded();
		expect(pathOf(log)).toBe('coating.weighing');
		log.readRoom().do('cup.weighed', ON_RATIO);
		log.do('tack.tested', { result: 'hard' }).do('cup.mixed').do('cup.applied');
		expect(contextOf(log.state).laidG).toBe(180);
	});

	test('is trusted for one coat: the next window counts again', () => {
		const log = abraded()
			.readRoom()
			.coat(360)
			.wait(5 * 60 * MIN);
		log.do('tack.tested', { result: 'hard' });
		expect(pathOf(log)).toBe('coating.missed');
	});

	test('is to be abraded again in a job opened under the first version, whose log must fold', () => {
		expect(pathOf(abraded(1))).toBe('coating.missed');
	});
});

describe('abrading that a supervisor ordered', () => {
	const orderedBuild = () => {
		const log = bench().toGloveCure();
		log.wait(log.plan.gloveCure.testS).do('glove.tested', { result: 'cured' });
		log.do('glove.trimmed', { edgeSquare: true, frameClean: true });
		log.do('glove.waxed', { wholeBack: true, coats: 1 }).do('frame.refitted', { tight: true });
		log.do('hold.requested', { hold: 'readyForShell' });
		const order = { hold: 'readyForShell', to: 'build', reason: 'thin wall' };
		return log.do('hold.sentBack', order, SUPERVISOR);
	};

	test('needs no second word, but the next missed window does', () => {
		const log = orderedBuild().do('surface.abraded', ABRADED);
		expect(pathOf(log)).toBe('coating.weighing');
		log.readRoom().coat(540).do('thickness.measured', { points: THIN });
		log.do('coat.added', { reason: 'still thin' }).do('tack.tested', { result: 'hard' });
		log.do('surface.abraded', ABRADED);
		expect(pathOf(log)).toBe('coating.deciding');
	});

	test('is no longer ordered when the glove is stripped and begun anew', () => {
		const log = orderedBuild().do('trouble.reported', { trouble: 'bubbles', note: 'foam' });
		log.do('test.judged', GOOD_CUP).do('trouble.mended', { how: 'stripped', wayBack: 'release' });
		expect(contextOf(log.state).sentBack).toBeNull();
	});
});
