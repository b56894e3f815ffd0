import { describe, expect, test } from 'vitest';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { addSeconds } from '../../src/lib/core/process/instant';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { contextOf } from '../../src/lib/core/process/job';
import { statePath } from '../../src/lib/core/process/state-path';
import { takenBackBySupervisor, undoable } from '../../src/lib/core/process/undo';
import { windowAt } from '../../src/lib/core/process/windows';
import { BenchLog, MAKER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const ON_RATIO = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const bench = () => new BenchLog(handPlan());
const lastId = (log: BenchLog) => log.log.at(-1)?.id ?? '';
const undone = (log: BenchLog) => ({ undoes: lastId(log), reason: 'wrong button' });
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const stepOf = (log: BenchLog) => benchStep(log.state, { by: MAKER, at: log.at });
const noted = (log: BenchLog) => contextOf(log.state).deviations.map(({ what }) => what);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);

// Whoever works may not lift what stops their own work: common practice, no source.
describe('an entry that put the work before a supervisor', () => {
	const hard = () =>
		bench()
			.toCoats()
			.cup(180)
			.do('coat.finished')
			.wait(50 * MIN)
			.do('tack.tested', { result: 'hard' });

	test.each([
		['somebody hurt', () => bench().toCoats().do('trouble.reported', { trouble: 'skin-contact' })],
		[
			'a window found shut',
			() =>
				bench().toCoats().coat(180).do('trouble.reported', { trouble: 'recoat-missed', note: 'x' })
		],
		['a surface found hard', hard],
		[
			'a glove found thin',
			() =>
				bench()
					.toCoats()
					.coat(180)
					.coat(360)
					.coat(540)
					.do('thickness.measured', {
						points: ['a', 'b', 'c'].map((place) => ({ place, thicknessMm: 3 }))
					})
		],
		[
			'a bad test cup',
			() =>
				bench()
					.toCoats()
					.do('trouble.reported', { trouble: 'bubbles', note: 'foam' })
					.do('test.judged', { kind: 'test cup', result: 'bad' })
		]
	])('%s is taken back by one, never by the crew', (_what, made) => {
		const log = made();
		expect(undoable(log.state, MAKER)).toBeNull();
		expect(why(log.try('act.undone', undone(log)))).toContain('only a supervisor');
		expect(takenBackBySupervisor(log.state)?.id).toBe(lastId(log));
		expect(why(log.try('act.takenBack', undone(log)))).toContain('their own work');
		const before = log.log.at(-1)?.seq;
		log.do('act.takenBack', undone(log), SUPERVISOR);
		expect(takenBackBySupervisor(log.state)).toBeNull();
		const [struck] = asBuilt(log.state, log.log).undone;
		expect(struck).toMatchObject({ seq: before, by: MAKER, reason: 'wrong button' });
	});

	test('is undone by its maker in logs of before', () => {
		const log = new BenchLog(handPlan({ processVersion: 4 })).toCoats();
		log.do('trouble.reported', { trouble: 'skin-contact' }).do('act.undone', undone(log));
	});

	test('leaves any other entry to whoever made it', () => {
		const log = bench().toCoats().do('cup.weighed', ON_RATIO);
		expect(why(log.try('act.takenBack', undone(log), SUPERVISOR))).toContain('can undo it');
		log.do('act.undone', undone(log));
	});

	test('found otherwise the next time is a deviation, also after a later entry is undone', () => {
		const log = hard();
		log.do('act.takenBack', undone(log), SUPERVISOR);
		log.do('tack.tested', { result: 'almost tack-free' });
		expect(pathOf(log)).toBe('coating.weighing');
		const said = 'A test was taken back and entered anew: first “hard”, now “almost tack-free”.';
		expect(noted(log)).toEqual([said]);
		log.do('cup.weighed', ON_RATIO).do('act.undone', undone(log));
		expect(noted(log)).toEqual([said]);
	});

	test('found the same the next time is none', () => {
		const log = bench()
			.toCoats()
			.cup(180)
			.do('coat.finished')
			.wait(30 * MIN);
		log.do('tack.tested', { result: 'wet' }).do('act.undone', undone(log));
		log.do('tack.tested', { result: 'wet' });
		expect(noted(log)).toEqual([]);
	});
});

// Pot life begins when the parts touch, not when stirring ends: common practice, no source.
describe('the pot life of a cup', () => {
	const closesAt = (log: BenchLog) => windowAt(pathOf(log), contextOf(log.state))?.closesAt ?? null;

	test('counts from when the parts met, so that slow mixing leaves less', () => {
		const log = bench().toCoats();
		const metAt = log.at;
		log
			.do('cup.weighed', ON_RATIO)
			.wait(5 * MIN)
			.do('cup.mixed');
		expect(closesAt(log)).toBe(addSeconds(metAt, 19 * MIN));
		log.wait(15 * MIN).do('cup.applied');
		expect(noted(log)[0]).toMatch(/^A cup was laid 22 min after its parts met/);
	});

	test('is not begun anew by undoing, or by weighing to correct', () => {
		const log = bench().toCoats();
		const metAt = log.at;
		log.do('cup.weighed', ON_RATIO).do('cup.mixed').do('act.undone', undone(log));
		log.do('act.undone', { undoes: log.state.effective.at(-1)?.id ?? '', reason: 'typed wrong' });
		log.do('cup.weighed', { ...ON_RATIO, massesG: { A: 70, B: 100 } });
		log.do('cup.weighed', ON_RATIO).do('cup.mixed');
		expect(closesAt(log)).toBe(addSeconds(metAt, 19 * MIN));
		// Folded once more for a further undoing, it stays.
		log.do('act.undone', undone(log)).do('cup.mixed');
		expect(closesAt(log)).toBe(addSeconds(metAt, 19 * MIN));
	});

	test('is that of a new cup once the old one is set aside', () => {
		const log = bench().toCoats().do('cup.weighed', ON_RATIO);
		log.do('act.undone', undone(log)).do('cup.weighed', ON_RATIO);
		log.do('cup.discarded', { reason: 'too long' }).wait(30 * MIN);
		const metAt = log.at;
		log.do('cup.weighed', ON_RATIO).do('cup.mixed');
		expect(closesAt(log)).toBe(addSeconds(metAt, 19 * MIN));
	});

	test('mixed for less than the sheet asks is noted', () => {
		const log = bench().toCoats().do('cup.weighed', ON_RATIO);
		log.at = addSeconds(log.at, -48);
		log.do('cup.mixed');
		expect(noted(log)).toEqual(['A cup was mixed for 12 s; the data sheet asks for 60 s.']);
	});

	const ahead = (massesG: Record<string, number>) => {
		const log = bench().toCoats().coat(180).do('cup.weighed', ON_RATIO).do('cup.mixed');
		return log.do('cup.weighed', { ...ON_RATIO, massesG });
	};

	test('of the next cup begins with the weighing that puts its parts together, ahead or not', () => {
		const log = ahead({ B: 100 });
		expect(stepOf(log).ahead).toMatchObject({ missing: ['A'], metAt: null, closesAt: null });
		log.wait(5 * MIN);
		const metAt = log.at;
		log.do('cup.weighed', ON_RATIO).do('cup.weighed', ON_RATIO);
		const closes = addSeconds(metAt, 19 * MIN);
		expect(stepOf(log).ahead).toMatchObject({ missing: [], metAt, closesAt: closes });
		log.do('cup.applied');
		expect(stepOf(log).mixing).toEqual({
			sinceAt: addSeconds(metAt, MIN),
			mixS: MIN,
			closesAt: closes
		});
		log.do('cup.mixed');
		expect(closesAt(log)).toBe(closes);
	});

	test('of the next cup outlives the entry that is taken back', () => {
		const log = ahead(ON_RATIO.massesG);
		const metAt = contextOf(log.state).cupAhead?.metAt;
		log
			.do('act.undone', undone(log))
			.wait(5 * MIN)
			.do('cup.weighed', ON_RATIO);
		expect(contextOf(log.state).cupAhead?.metAt).toBe(metAt);
		// Also once the one in hand is on; a fresh one counts from its own weighing.
		const later = ahead(ON_RATIO.massesG);
		later.do('act.undone', undone(later)).do('cup.applied').do('cup.weighed', ON_RATIO);
		expect(contextOf(later.state).cup?.metAt).toBe(metAt);
		log.do('cup.discarded', { reason: 'too long', cup: 'next' });
		const freshAt = log.at;
		log.do('cup.weighed', ON_RATIO);
		expect(contextOf(log.state).cupAhead?.metAt).toBe(freshAt);
	});

	test('over before it is mixed, leaves a cup to set aside, ahead or in hand', () => {
		const log = ahead(ON_RATIO.massesG).wait(19 * MIN);
		const acts = stepOf(log).acts;
		expect(acts.find(({ type }) => type === 'cup.discarded')?.fields).toMatchObject([
			{ name: 'cup', preset: 'in hand' },
			{ name: 'reason', preset: 'Its time was over.' }
		]);
		expect(acts.find(({ type }) => type === 'cup.weighed')?.blocked).toContain('met too long ago');
		log.do('cup.applied');
		expect(why(log.try('cup.mixed'))).toContain('Set it aside and weigh a fresh one');
		const step = stepOf(log);
		expect(step.what).toContain('Its time is over');
		expect(step.acts.find(({ primary }) => primary)?.type).toBe('cup.discarded');
		log.do('cup.discarded', { reason: 'too long' });
		expect(why(log.try('cup.weighed', ON_RATIO))).toBe('taken');
	});
});
