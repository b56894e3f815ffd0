import { describe, expect, test } from 'vitest';
import { readAct } from '../../src/lib/core/bench/read-act';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { addSeconds } from '../../src/lib/core/process/instant';
import { contextOf } from '../../src/lib/core/process/job';
import { jobSummary } from '../../src/lib/core/process/summary';
import { unnamedLine } from '../../src/lib/screen/board/board-line';
import { nextActOf } from '../../src/lib/screen/board/next-act';
import { mainAct } from '../../src/lib/screen/bench/main-act';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const HALF = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const bench = () => new BenchLog(handPlan());
const texts = { lang: 'en' as const, steps: {}, briefings: {}, troubles: {} };

/** What the bench answers to a form, or "taken" when it goes on to the machine. */
function asked(log: BenchLog, fields: Record<string, string>): string | null {
	const form = new FormData();
	for (const [name, value] of Object.entries(fields)) form.set(name, value);
	const read = readAct(form, { state: log.state, by: MAKER, at: log.at, texts });
	return read.ok ? 'taken' : read.notDone.question;
}
const viewed = (log: BenchLog) => {
	const step = benchStep(log.state, { by: MAKER, at: log.at });
	return { step, main: mainAct(step.acts, { unread: 0, isBrief: false, isOthers: false }) };
};

// Common practice, no source: a question asked once, with the numbers, before a deviation is entered.
describe('the bench asks before it enters', () => {
	test('a fingertip test that comes too soon, and says from when on it counts', () => {
		const log = bench()
			.toCoats()
			.cup(180)
			.do('coat.finished')
			.wait(10 * MIN);
		const early = { type: 'tack.tested', result: 'almost tack-free' };
		const said = asked(log, early);
		expect(said).toContain('laid 12 min ago');
		expect(said).toContain(`before ${addSeconds(contextOf(log.state).finishedAt ?? '', 45 * MIN)}`);
		expect(asked(log, { ...early, knowing: 'true' })).toBe('taken');
		// What says "wait" is no reason to ask.
		expect(asked(log, { type: 'tack.tested', result: 'wet' })).toBe('taken');
		expect(asked(log.wait(15 * MIN), early)).toContain('lets no coat on');
		expect(asked(log.wait(20 * MIN), early)).toBe('taken');
	});

	test('a cup mixed for less than its sheet asks', () => {
		const log = bench().toCoats().do('cup.weighed', HALF);
		log.at = addSeconds(log.at, -48);
		expect(asked(log, { type: 'cup.mixed' })).toMatch(/weighed 12 s ago.* 60 s of mixing/);
		expect(asked(log.wait(48), { type: 'cup.mixed' })).toBe('taken');
	});

	test('and times the mixing meanwhile, from the scale to the end of the pot life', () => {
		const log = bench().toCoats();
		const metAt = log.at;
		log.do('cup.weighed', { ...HALF, massesG: { A: 60, B: 100 } });
		expect(viewed(log).step.mixing).toBeNull();
		const onRatioAt = log.at;
		log.do('cup.weighed', HALF);
		expect(viewed(log).step.mixing).toEqual({
			sinceAt: onRatioAt,
			mixS: MIN,
			closesAt: addSeconds(metAt, 19 * MIN)
		});
		expect(viewed(log.do('cup.mixed')).step.mixing).toBeNull();
	});

	test('a cup laid when its time was over', () => {
		const log = bench().toCoats().do('cup.weighed', HALF).do('cup.mixed');
		expect(asked(log, { type: 'cup.applied' })).toBe('taken');
		expect(asked(log.wait(20 * MIN), { type: 'cup.applied' })).toContain('over 3 min ago');
	});

	test('and says what an undoing without a reason lacks', () => {
		const log = bench().toCoats().do('cup.weighed', HALF);
		const form = new FormData();
		form.set('type', 'act.undone');
		form.set('undoes', 'e-1');
		const read = readAct(form, { state: log.state, by: MAKER, at: log.at, texts });
		expect(read.ok ? {} : read.notDone.errors).toEqual({
			reason: '“What was wrong with the entry”: write a few words.'
		});
	});
});

describe('a cup past its time', () => {
	const overdue = () =>
		bench()
			.toCoats()
			.do('cup.weighed', HALF)
			.do('cup.mixed')
			.wait(20 * MIN);

	test('is to be set aside first of all; laying it is offered apart', () => {
		const { step, main } = viewed(overdue());
		expect(step.what).toContain('set the cup aside');
		expect(main.act?.type).toBe('cup.discarded');
		expect(main.act?.fields.find(({ name }) => name === 'reason')?.preset).toBe(
			'Its time was over.'
		);
		expect(main.laidLate?.type).toBe('cup.applied');
		expect(main.others.map(({ type }) => type)).not.toContain('cup.applied');
	});

	test('is to be laid while there is time', () => {
		const log = bench().toCoats().do('cup.weighed', HALF).do('cup.mixed');
		expect(viewed(log).main).toMatchObject({ act: { type: 'cup.applied' }, laidLate: null });
	});

	test('shows on the board: what comes next, and the deviation once it is laid', () => {
		const log = overdue();
		const job = { id: 'a', openedAt: log.at, title: 'a', damage: null };
		const line = unnamedLine({ ...job, state: log.state });
		expect(nextActOf(line, log.at)).toBe('Set the cup aside');
		expect(nextActOf(line, addSeconds(log.at, -10 * MIN))).toBe('Cup is laid');
		log.do('cup.applied');
		expect(unnamedLine({ ...job, state: log.state }).openDeviations).toBe(1);
	});
});

test('past its window a surface is to be abraded next, on the board as at the bench', () => {
	const log = bench().toCoats().coat(180).do('cup.weighed', HALF);
	const line = unnamedLine({
		id: 'a',
		openedAt: log.at,
		title: 'a',
		damage: null,
		state: log.state
	});
	expect(nextActOf(line, log.at)).toBe('Cup is mixed');
	expect(nextActOf(line, addSeconds(jobSummary(log.state).window?.closesAt ?? '', 1))).toBe(
		'Abraded, wiped, dry'
	);
});
