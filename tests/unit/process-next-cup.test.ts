import { describe, expect, test } from 'vitest';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { addSeconds } from '../../src/lib/core/process/instant';
import { contextOf, fold } from '../../src/lib/core/process/job';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, MAKER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const CUP = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
/** The second one at work, who has read the briefings. */
const BY = { mixedBy: 'amir' };
const NEXT = { massesG: { A: 80, B: 100 }, lots: { A: 'a2', B: 'b2' } };
const OFF = { massesG: { A: 88, B: 100 }, lots: {} };
const noted = (log: BenchLog) => contextOf(log.state).deviations.map(({ what }) => what);

/** The second coat takes two cups of 180 g, and the first of them is being laid. */
function laying(people = 2): BenchLog {
	const log = new BenchLog(handPlan({ people })).toCoats().brief('amir').coat(180);
	return log.do('cup.weighed', CUP).do('cup.mixed', BY);
}
const act = (log: BenchLog, type: string) =>
	benchStep(log.state, { by: MAKER, at: log.at }).acts.find((found) => found.type === type);

// A fresh cup bonds to the last while that is wet, so cups follow one another: common practice, no source.
describe('the next cup, while one is laid', () => {
	test('is weighed and, by a crew of two, mixed; then it is the one under the brush', () => {
		const log = laying().do('cup.weighed', NEXT).do('cup.mixed', BY);
		expect(pathOf(log)).toBe('coating.mixed');
		log.do('cup.applied');
		expect(pathOf(log)).toBe('coating.mixed');
		expect(contextOf(log.state)).toMatchObject({ laidG: 180, cupsLaid: 1, cupAhead: null });
		log.do('cup.applied').do('coat.finished');
		expect(pathOf(log)).toBe('coating.curing');
		expect(noted(log)).toEqual([]);
		expect(contextOf(fold(log.plan, log.log))).toEqual(contextOf(log.state));
	});

	test('is mixed by a second person who is named, briefed, and then signs nothing of this mold', () => {
		const log = laying().do('cup.weighed', NEXT);
		expect(why(log.try('cup.mixed'))).toContain('say who mixes it');
		expect(why(log.try('cup.mixed', { mixedBy: MAKER }))).toContain('say who mixes it');
		expect(why(log.try('cup.mixed', { mixedBy: SUPERVISOR }))).toContain('say who mixes it');
		log.brief(SUPERVISOR).do('cup.mixed', { mixedBy: SUPERVISOR });
		expect(contextOf(log.state)).toMatchObject({
			worker: MAKER,
			workers: [MAKER, 'amir', SUPERVISOR]
		});
		expect(act(laying().do('cup.weighed', NEXT), 'cup.mixed')?.fields).toMatchObject([
			{ name: 'mixedBy', choices: [{ value: 'amir' }] }
		]);
	});

	test('waits for somebody else to have read the briefings', () => {
		const log = new BenchLog(handPlan({ people: 2 })).toCoats().coat(180);
		log.do('cup.weighed', CUP).do('cup.mixed').do('cup.weighed', NEXT);
		expect(act(log, 'cup.mixed')?.blocked).toContain('reads the briefings first');
	});

	test('is weighed but not mixed by one person alone', () => {
		const log = laying(1).do('cup.weighed', NEXT);
		expect(why(log.try('cup.mixed', BY))).toContain('cannot lay and mix at once');
		log.do('cup.applied');
		expect(pathOf(log)).toBe('coating.weighed');
		log.do('cup.mixed', BY).do('cup.applied');
		expect(contextOf(log.state).laidG).toBe(360);
	});

	test('is not mixed off ratio, and is corrected on the scale like any other', () => {
		const log = laying().do('cup.weighed', OFF);
		expect(why(log.try('cup.mixed', BY))).toContain('10.0% off ratio');
		log.do('cup.weighed', { massesG: { A: 88, B: 110 }, lots: {} }).do('cup.mixed', BY);
		expect(why(log.try('cup.mixed', BY))).toContain('mixed already');
		expect(why(log.try('cup.weighed', NEXT))).toContain('mixed already');
	});

	test('is there only while more of this coat is to be laid', () => {
		const log = laying().do('cup.applied').do('cup.weighed', CUP).do('cup.mixed', BY);
		expect(why(log.try('cup.weighed', NEXT))).toContain('the last of this coat');
		expect(act(log, 'cup.weighed')).toBeUndefined();
	});

	test('has a pot life of its own, from when its parts met', () => {
		const log = laying().do('cup.weighed', NEXT).do('cup.mixed', BY);
		const { cup, cupAhead } = contextOf(log.state);
		const step = benchStep(log.state, { by: MAKER, at: log.at });
		// Its parts met when it was weighed: a minute of mixing and eighteen of laying from then.
		expect(step.window?.closesAt).toBe(addSeconds(cup?.weighedAt ?? '', 19 * MIN));
		expect(step.ahead).toMatchObject({
			number: 2,
			of: 2,
			closesAt: addSeconds(cupAhead?.weighedAt ?? '', 19 * MIN)
		});
		log.wait(12 * MIN).do('cup.applied');
		expect(noted(log)).toEqual([]);
		log.wait(8 * MIN).do('cup.applied');
		expect(noted(log)).toEqual([expect.stringContaining('its pot life is 19 min')]);
	});

	test('is set aside alone, or moves up when the one under the brush is set aside', () => {
		const alone = laying().do('cup.weighed', NEXT);
		alone.do('cup.discarded', { reason: 'dust in it', cup: 'next' });
		expect(pathOf(alone)).toBe('coating.mixed');
		expect(contextOf(alone.state)).toMatchObject({ cupAhead: null, cup: { massesG: CUP.massesG } });
		expect(why(alone.try('cup.discarded', { reason: 'x', cup: 'next' }))).toContain(
			'no next cup is prepared'
		);

		const up = laying().do('cup.weighed', NEXT).do('cup.mixed', BY);
		up.do('cup.discarded', { reason: 'it strings' });
		expect(pathOf(up)).toBe('coating.mixed');
		expect(contextOf(up.state).laidG).toBe(0);
	});

	test('is no way round the fingertip test or a window that has shut', () => {
		const log = new BenchLog(handPlan({ people: 2 })).toCoats().brief('amir').coat(180);
		log.do('cup.weighed', CUP);
		expect(why(log.try('cup.weighed', { ...NEXT, massesG: { A: 1, B: 100 } }))).toBe('taken');
		log.wait(5 * 3600);
		expect(why(log.try('cup.mixed', BY))).toContain('the recoat window closed');
	});

	test('is no way round a window that shut while the first cup stood: mixing it waits till that is laid', () => {
		const log = laying()
			.do('cup.weighed', NEXT)
			.wait(6 * 3600);
		expect(why(log.try('cup.mixed', BY))).toContain('the recoat window closed');
		log.do('cup.discarded', { reason: 'it strings' });
		expect(pathOf(log)).toBe('coating.weighed');
		expect(why(log.try('cup.mixed', BY))).toContain('the recoat window closed');
	});

	test('is set aside too when it would go on the bare coat after its window', () => {
		const log = laying().do('cup.weighed', NEXT).do('cup.mixed', BY);
		log.wait(6 * 3600).do('cup.discarded', { reason: 'it strings' });
		expect(pathOf(log)).toBe('coating.weighing');
		expect(contextOf(log.state)).toMatchObject({ cup: null, cupAhead: null, laidG: 0 });
		expect(noted(log)).toEqual([expect.stringContaining('set aside too')]);
		expect(benchStep(log.state, { by: MAKER, at: log.at }).slug).toBe('abrade');
		expect(fold(log.plan, log.log).snapshot.value).toEqual(log.state.snapshot.value);
	});

	test('moves up on the bare coat while its window is open', () => {
		const log = laying().do('cup.weighed', NEXT).do('cup.mixed', BY);
		log.do('cup.discarded', { reason: 'it strings' });
		expect(pathOf(log)).toBe('coating.mixed');
	});

	test('is gone when the coat is laid again after a trouble', () => {
		const log = laying()
			.do('cup.weighed', NEXT)
			.do('trouble.reported', { trouble: 'sag', note: 'x' });
		log.do('trouble.mended', { how: 'scraped off', wayBack: 'redo coat' });
		expect(contextOf(log.state)).toMatchObject({ cup: null, cupAhead: null });
	});

	test('comes back as it was when its mixing or weighing is undone', () => {
		const log = laying().do('cup.weighed', NEXT);
		const before = contextOf(log.state);
		log.do('cup.mixed', BY).do('act.undone', { undoes: log.log.at(-1)?.id, reason: 'not yet' });
		expect(contextOf(log.state).cupAhead).toEqual(before.cupAhead);
	});

	test('serves the short working time of a shell as well', () => {
		const log = new BenchLog(handPlan({ people: 2 })).toShell().brief('amir').readRoom();
		log
			.do('cup.weighed', CUP)
			.do('cup.mixed', BY)
			.wait(4 * MIN);
		log
			.do('cup.weighed', NEXT)
			.do('cup.mixed', BY)
			.do('cup.applied')
			.wait(4 * MIN);
		log.do('cup.applied').do('coat.finished');
		expect(contextOf(log.state)).toMatchObject({ roundIndex: 1, deviations: [] });
	});
});

describe('what the bench and the record say of it', () => {
	test('the bench asks for the laying first and offers the next cup beside it', () => {
		const log = laying();
		expect(act(log, 'cup.applied')?.primary).toBe(true);
		expect(act(log, 'cup.weighed')).toMatchObject({ primary: false, blocked: null });
		expect(act(log, 'cup.mixed')).toBeUndefined();
		log.do('cup.weighed', OFF);
		expect(act(log, 'cup.mixed')?.blocked).toContain('off ratio');
		log.do('cup.weighed', NEXT);
		expect(act(log, 'cup.mixed')?.blocked).toBeNull();
		expect(act(log, 'cup.discarded')?.fields.map(({ name }) => name)).toEqual(['cup', 'reason']);
	});

	test('the record has both cups, each with its own times and lots', () => {
		const log = laying().do('cup.weighed', OFF).do('cup.weighed', NEXT).do('cup.mixed', BY);
		log.do('cup.applied').do('cup.applied').do('coat.finished');
		const cups = asBuilt(log.state, log.log).sections.at(-1)?.cups ?? [];
		expect(cups.map(({ number, corrected }) => [number, corrected])).toEqual([
			[1, false],
			[2, true]
		]);
		expect(cups.map(({ parts }) => parts.map(({ lot }) => lot))).toEqual([
			['b1', 'a1'],
			['b2', 'a2']
		]);
		expect(cups.every(({ mixedAt, laidAt }) => mixedAt !== null && laidAt !== null)).toBe(true);
	});

	test('the record keeps the number of a cup that moved up', () => {
		const log = laying().do('cup.weighed', NEXT).do('cup.mixed', BY);
		log.do('cup.discarded', { reason: 'it strings' }).do('cup.applied');
		const cups = asBuilt(log.state, log.log).sections.at(-1)?.cups ?? [];
		expect(cups.map(({ number, discarded }) => [number, discarded])).toEqual([
			[1, 'it strings'],
			[2, null]
		]);
	});
});

test('a person who takes over a weighed cup is led to the briefings, not to setting it aside', () => {
	const log = laying().do('cup.weighed', NEXT).wait(MIN).do('job.takenOver', {}, 'lund');
	log.do('cup.applied', {}, 'lund');
	const { acts } = benchStep(log.state, { by: 'lund', at: log.at });
	expect(acts.find(({ type }) => type === 'cup.mixed')?.blocked).toContain('read the briefings');
	expect(acts.find(({ primary }) => primary)?.type).toBe('cup.mixed');
});
