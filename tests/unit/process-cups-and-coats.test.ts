import { describe, expect, test } from 'vitest';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { addSeconds } from '../../src/lib/core/process/instant';
import { contextOf } from '../../src/lib/core/process/job';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, MAKER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const HOUR = 3600;
const bench = (given?: Parameters<typeof handPlan>[0]) => new BenchLog(handPlan(given));
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const ON_RATIO = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };

describe('a cup', () => {
	test('off ratio is written down but cannot be mixed, and is mixed once corrected', () => {
		const log = bench().toCoats();
		log.do('cup.weighed', { massesG: { A: 88, B: 100 }, lots: {} });
		expect(why(log.try('cup.mixed'))).toContain('the cup is 10.0% off ratio');
		// By weight 80:100, 88 g of A asks for 110 g of B.
		log.do('cup.weighed', { massesG: { A: 88, B: 110 }, lots: {} }).do('cup.mixed');
		expect(pathOf(log)).toBe('coating.mixed');
	});

	test('with a part missing cannot be mixed', () => {
		const log = bench()
			.toCoats()
			.do('cup.weighed', { massesG: { B: 100 }, lots: {} });
		expect(why(log.try('cup.mixed'))).toContain('part A is not in the cup yet');
	});

	test('with a part that the material does not have is refused', () => {
		const answer = bench()
			.toCoats()
			.try('cup.weighed', { massesG: { C: 100 }, lots: {} });
		expect(why(answer)).toContain("this material's parts are: A, B");
	});

	test('laid after its working time is a deviation', () => {
		const log = bench().toCoats().do('cup.weighed', ON_RATIO).do('cup.mixed');
		log.wait(30 * MIN).do('cup.applied');
		expect(contextOf(log.state).deviations[0]?.what).toContain('its pot life is 19 min');
	});

	test('that came short is followed by cups split anew, which add up to the batch', () => {
		const log = bench().toCoats().coat(180);
		log.cup(100);
		const step = benchStep(log.state, { by: MAKER, at: log.at });
		const nextG = step.amounts.reduce((sum, amount) => sum + amount.massG, 0);
		// 260 g are left of 360 g, in cups of 180 g at most: two of 130 g.
		expect(nextG).toBeGreaterThanOrEqual(130);
		expect(nextG).toBeLessThan(135);
	});
});

describe('a coat', () => {
	test('cannot go on before the one below has passed its test', () => {
		const log = bench()
			.toCoats()
			.cup(180)
			.do('coat.finished')
			.wait(60 * MIN);
		expect(why(log.try('cup.weighed', ON_RATIO))).toContain('is not what comes now');
		log.do('tack.tested', { result: 'wet' });
		expect(why(log.try('cup.weighed', ON_RATIO))).toContain('is not what comes now');
		log.do('tack.tested', { result: 'almost tack-free' }).do('cup.weighed', ON_RATIO);
	});

	test('cannot go on after the window without abrading and a decision by another', () => {
		const log = bench()
			.toCoats()
			.coat(180)
			.wait(5 * HOUR)
			.do('cup.weighed', ON_RATIO);
		expect(why(log.try('cup.mixed'))).toContain('the recoat window closed');
		log.do('tack.tested', { result: 'hard' });
		expect(pathOf(log)).toBe('coating.missed');
		expect(log.try('cup.weighed', ON_RATIO).ok).toBe(false);
		log.do('surface.abraded', { grit: '120', wiped: true, dried: true, reason: 'called away' });
		expect(why(log.try('deviation.decided', { accepted: true, note: 'fine' }))).toContain(
			'own work'
		);
		log.do('deviation.decided', { accepted: true, note: 'well keyed' }, SUPERVISOR);
		log.do('cup.weighed', ON_RATIO).do('cup.mixed');
		const { deviations } = contextOf(log.state);
		expect(deviations.length).toBeGreaterThanOrEqual(2);
		expect(deviations.filter((d) => d.blocking).map((d) => d.decided?.by)).toEqual([SUPERVISOR]);
	});

	test('that takes a print after its window by the clock counts as missed all the same', () => {
		const log = bench()
			.toCoats()
			.cup(180)
			.do('coat.finished')
			.wait(5 * HOUR);
		log.do('tack.tested', { result: 'almost tack-free' });
		expect(pathOf(log)).toBe('coating.missed');
	});

	test('that is thin is brushed back after twenty minutes and not before', () => {
		const log = bench({ detail: true }).toCoats().cup(120).do('coat.finished');
		expect(why(log.try('coat.brushedBack'))).toContain('it still runs');
		log.wait(20 * MIN).do('coat.brushedBack');
		expect(pathOf(log)).toBe('coating.curing');
	});

	test('that passes its test sooner than it can have is tested again before the next coat', () => {
		const log = bench().toCoats().cup(180).do('coat.finished');
		log.do('tack.tested', { result: 'almost tack-free' });
		expect(pathOf(log)).toBe('coating.curing');
		expect(contextOf(log.state).deviations.map(({ what }) => what)).toEqual([
			'Build coat 1 was found tack-free after 2 min; its data sheet lets expect that after 45 min at the soonest. The test does not count and is made again.'
		]);
		expect(log.try('cup.weighed', ON_RATIO).ok).toBe(false);
		expect(
			asBuilt(log.state, log.log)
				.waits.map(({ what }) => what)
				.join()
		).not.toContain('Build coat 1');
		log.wait(45 * MIN).do('tack.tested', { result: 'almost tack-free' });
		expect(pathOf(log)).toBe('coating.weighing');
		log.do('cup.weighed', ON_RATIO).do('cup.mixed');
		expect(asBuilt(log.state, log.log).waits.at(-1)?.actualS).toBeGreaterThan(45 * MIN);
	});

	test('may be found good from the soonest instant on that its sheet can mean', () => {
		const plan = handPlan();
		const coats = plan.coats.map((coat) => ({ ...coat, tackSoonestS: 30 * MIN }));
		const log = new BenchLog({ ...plan, coats }).toCoats().cup(180).do('coat.finished');
		const { laidAt } = contextOf(log.state);
		log.at = addSeconds(laidAt ?? '', 30 * MIN - 1);
		log.do('tack.tested', { result: 'almost tack-free' });
		expect(pathOf(log)).toBe('coating.curing');
		log.at = addSeconds(laidAt ?? '', 30 * MIN);
		expect(log.at >= log.state.lastAt).toBe(true);
		log.do('tack.tested', { result: 'almost tack-free' });
		expect(pathOf(log)).toBe('coating.weighing');
	});

	test('laid last is not measured on a test that came too soon, hard or tacky', () => {
		for (const result of ['hard', 'almost tack-free']) {
			const log = bench().toCoats().coat(180).coat(360).cup(540).do('coat.finished');
			log.do('tack.tested', { result });
			expect(pathOf(log), result).toBe('coating.curing');
			log.wait(45 * MIN).do('tack.tested', { result });
			expect(pathOf(log), result).toBe('thickness.measuring');
		}
	});

	test('found hard is shut, however soon: nothing goes on it before a supervisor has looked', () => {
		const log = bench()
			.toCoats()
			.cup(180)
			.do('coat.finished')
			.do('tack.tested', { result: 'hard' });
		expect(pathOf(log)).toBe('coating.missed');
	});

	test('of a job opened before counts by its test, which is noted when far too early', () => {
		const log = bench({ processVersion: 5 })
			.toCoats()
			.cup(180)
			.do('coat.finished')
			.wait(10 * MIN);
		log.do('tack.tested', { result: 'almost tack-free' });
		expect(contextOf(log.state).deviations[0]?.what).toContain('lets expect 45 min');
		expect(pathOf(log)).toBe('coating.weighing');
	});

	test('measured thin is answered by one more coat, or by a supervisor', () => {
		const thin = ['wall', 'corner', 'top'].map((place) => ({ place, thicknessMm: 3 }));
		const log = bench().toCoats().coat(180).coat(360).coat(540);
		log.do('thickness.measured', { points: thin });
		expect(pathOf(log)).toBe('thickness.thin');
		expect(why(log.try('deviation.decided', { accepted: true, note: 'x' }))).toContain('own work');
		log.do('coat.added', { reason: 'wall is thin' });
		expect(contextOf(log.state).coats).toHaveLength(4);
		log.coat(540);
		expect(pathOf(log)).toBe('thickness.measuring');
	});
});

describe('the shell', () => {
	test('cannot start on an unwaxed glove', () => {
		const log = bench()
			.toGloveCure()
			.wait(16 * HOUR)
			.do('glove.tested', { result: 'cured' });
		log.do('glove.trimmed', { edgeSquare: true, frameClean: true });
		expect(log.try('cup.weighed', ON_RATIO).ok).toBe(false);
		expect(log.try('frame.refitted', { tight: true }).ok).toBe(false);
		expect(log.try('hold.requested', { hold: 'readyForShell' }).ok).toBe(false);
	});

	test('takes no fresh cup on a round that has set, without abrading', () => {
		const log = bench()
			.toShell()
			.readRoom()
			.cup(180)
			.wait(60 * MIN)
			.do('cup.weighed', ON_RATIO);
		expect(why(log.try('cup.mixed'))).toContain('the recoat window closed');
		log.do('surface.abraded', { grit: '80', wiped: true, dried: true, reason: 'fire drill' });
		log.do('deviation.decided', { accepted: true, note: 'keyed' }, SUPERVISOR);
		log.do('cup.weighed', ON_RATIO).do('cup.mixed');
	});

	test('is not complete while its thinnest place is too thin', () => {
		const log = bench().toShell().readRoom();
		for (const round of log.plan.shell.rounds) log.cup(round.massG).do('coat.finished');
		const feet = { cornersFull: true, feetLevel: true };
		expect(why(log.try('shell.finished', { thicknessMm: 6, ...feet }))).toContain('must reach');
		log
			.do('coat.added', { reason: 'thin corner' })
			.cup(180)
			.do('coat.finished', { shortReason: 'corner only' });
		log.do('shell.finished', { thicknessMm: 11, ...feet });
		expect(pathOf(log)).toBe('shellCure');
	});
});
