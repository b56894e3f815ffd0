import { describe, expect, test } from 'vitest';
import { contextOf, fold } from '../../src/lib/core/process/job';
import { jobSummary } from '../../src/lib/core/process/summary';
import { undoable } from '../../src/lib/core/process/undo';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, HELPED, GOOD_CUP, MAKER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const HOUR = 3600;
const bench = (given?: Parameters<typeof handPlan>[0]) => new BenchLog(handPlan(given));
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const ON_RATIO = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };

describe('trouble, pause and persons', () => {
	test('leads back to where the work was, windows still running', () => {
		const log = bench()
			.toCoats()
			.coat(180)
			.do('trouble.reported', { trouble: 'spill', note: 'a cup fell' });
		expect(log.try('cup.weighed', ON_RATIO).ok).toBe(false);
		log.wait(5 * HOUR).do('trouble.mended', { how: 'wiped up', wayBack: 'resume' });
		expect(pathOf(log)).toBe('coating.weighing');
		log.readRoom().do('cup.weighed', ON_RATIO);
		expect(why(log.try('cup.mixed'))).toContain('the recoat window closed');
	});

	test('lets a coat be laid again, or the pattern be stripped and released anew', () => {
		const again = bench().toCoats().coat(180).cup(180);
		again.do('trouble.reported', { trouble: 'off-ratio', note: 'soft patch' });
		again.do('trouble.mended', { how: 'scraped off and wiped', wayBack: 'redo coat' });
		expect(contextOf(again.state).laidG).toBe(0);
		expect(contextOf(again.state).coatIndex).toBe(1);
		again.do('cup.weighed', ON_RATIO);
		expect(why(again.try('cup.mixed'))).toContain('has not passed its fingertip test');

		const strip = bench()
			.toCoats()
			.coat(180)
			.do('trouble.reported', { trouble: 'bubbles', note: 'foam' });
		strip.do('test.judged', GOOD_CUP).do('trouble.mended', { how: 'stripped', wayBack: 'release' });
		expect(pathOf(strip)).toBe('release.waxing');
		expect(contextOf(strip.state).signatures).toEqual({});
		expect(contextOf(strip.state).coatIndex).toBe(0);
	});

	test('can be reported while the work is paused, and mending it takes the work up again', () => {
		const log = bench().toCoats().do('job.paused', { reason: 'lunch' });
		log.do('trouble.reported', { trouble: 'spill', note: 'a cup fell over' });
		expect(jobSummary(log.state).status).toBe('in trouble');
		log.do('trouble.mended', { how: 'wiped up', wayBack: 'resume' });
		expect(pathOf(log)).toBe('coating.weighing');
	});

	test('in the first round of the shell leads back to waxing the glove, not to the bare glove', () => {
		const log = bench().toShell().readRoom().cup(180);
		log.do('trouble.reported', { trouble: 'off-ratio', note: 'stays soft' });
		const again = log.try('trouble.mended', { how: 'scraped off', wayBack: 'redo coat' });
		expect(why(again)).toContain('the ways back are: resume, shellRelease, release');
		log.do('trouble.mended', { how: 'scraped off', wayBack: 'shellRelease' });
		expect(pathOf(log)).toBe('shellRelease.waxing');
		expect(contextOf(log.state).signatures.readyForShell).toBeUndefined();
		expect(contextOf(log.state).coats).toHaveLength(3);
		log.do('glove.waxed', { wholeBack: true, coats: 1 }).do('frame.refitted', { tight: true });
		log.sign('readyForShell').readRoom().cup(180);
	});

	test('of a shell that will not cure costs the shell, not the glove', () => {
		const log = bench().toShell().readRoom();
		for (const round of log.plan.shell.rounds) log.cup(round.massG).do('coat.finished');
		log.do('shell.finished', { thicknessMm: 12, cornersFull: true, feetLevel: true });
		log.do('trouble.reported', { trouble: 'no-cure', note: 'soft after two days' });
		log.do('test.judged', { kind: 'test patch', result: 'good' });
		log.do('trouble.decided', { how: 'stripped', wayBack: 'shellRelease' }, SUPERVISOR);
		expect(pathOf(log)).toBe('shellRelease.waxing');
	});

	test('never leads forward past the phase it was met in', () => {
		const log = bench().toCoats().do('trouble.reported', { trouble: 'no-cure', note: 'soft' });
		const ahead = { how: 'x', wayBack: 'shellRelease' };
		expect(why(log.try('trouble.decided', ahead, SUPERVISOR))).toContain('the ways back are');
	});

	test('that belongs to another phase is refused', () => {
		const answer = bench().try('trouble.reported', { trouble: 'shell-locked', note: 'x' });
		expect(why(answer)).toContain('does not belong to this phase');
	});

	test('that hurt somebody is ended by a supervisor who has not worked on it, and only with a PIN', () => {
		const log = bench()
			.toCoats()
			.do('trouble.reported', { trouble: 'skin-contact', note: 'wrist' });
		const mended = { how: 'washed, looked at', wayBack: 'resume' };
		expect(why(log.try('trouble.mended', mended))).toContain('a supervisor who has not worked');
		// A plain act, without a PIN, is anybody's: also of a helper who never touched the mold.
		expect(why(log.try('trouble.mended', mended, SUPERVISOR))).toContain('with a PIN');
		expect(why(log.try('trouble.decided', mended))).toContain('nobody signs their own work');
		log.do('trouble.decided', { ...mended, ...HELPED }, SUPERVISOR);
		expect(contextOf(log.state).trouble).toBeNull();
	});

	test('a person who takes over reads the briefings before touching the chemistry', () => {
		const log = bench().toCoats();
		expect(why(log.try('cup.weighed', ON_RATIO, 'amir'))).toContain(
			'another person has this mold in hand'
		);
		log.do('job.takenOver', {}, 'amir');
		expect(why(log.try('cup.weighed', ON_RATIO, 'amir'))).toContain('read the briefings first');
		log.brief('amir').do('cup.weighed', ON_RATIO, 'amir');
	});

	test('a pause keeps the place', () => {
		const log = bench()
			.toCoats()
			.do('cup.weighed', ON_RATIO)
			.do('job.paused', { reason: 'fire drill' });
		expect(log.try('cup.mixed').ok).toBe(false);
		log.do('job.resumed');
		expect(pathOf(log)).toBe('coating.weighed');
	});
});

describe('undoing', () => {
	test('takes the last entry back by a further entry, and keeps both', () => {
		const log = bench().toCoats().do('cup.weighed', ON_RATIO);
		const before = contextOf(new BenchLog(log.plan).toCoats().state);
		log.do('act.undone', { undoes: log.log.at(-1)?.id, reason: 'wrong cup' });
		expect(pathOf(log)).toBe('coating.weighing');
		expect(contextOf(log.state).cup).toEqual(before.cup);
		expect(log.log.map((entry) => entry.event.type).slice(-2)).toEqual([
			'cup.weighed',
			'act.undone'
		]);
		expect(contextOf(fold(log.plan, log.log))).toEqual(contextOf(log.state));
	});

	test('is not barred by what another person has read meanwhile, and leaves that standing', () => {
		const log = bench().toCoats().do('cup.weighed', ON_RATIO);
		const mine = log.log.at(-1)?.id;
		log.brief('amir');
		const room = { temperatureC: 21, humidityPct: 45, extractionOn: true };
		log.do('room.read', room, 'amir').do('act.undone', { undoes: mine, reason: 'wrong cup' });
		expect(pathOf(log)).toBe('coating.weighing');
		expect(contextOf(log.state).cup).toBeNull();
		expect(contextOf(log.state).room?.by).toBe('amir');
		expect(contextOf(log.state).briefingsRead.amir).toEqual(log.plan.briefings);
		expect(contextOf(fold(log.plan, log.log))).toEqual(contextOf(log.state));
	});

	test('is barred by an act of another, and takes my own reading back before my act', () => {
		const log = bench().toCoats().do('cup.weighed', ON_RATIO);
		const mine = log.log.at(-1)?.id;
		const paused = new BenchLog(log.plan).toCoats().do('cup.weighed', ON_RATIO);
		paused.do('job.paused', { reason: 'fire drill' }, 'amir');
		expect(why(paused.try('act.undone', { undoes: mine, reason: 'x' }))).toContain('only the last');
		log.readRoom();
		expect(why(log.try('act.undone', { undoes: mine, reason: 'x' }))).toContain('only the last');
		expect(undoable(log.state, MAKER)?.event.type).toBe('room.read');
		expect(undoable(log.state, 'amir')).toBeNull();
	});

	test('is open to the person who made the entry, for the last entry, and never for a signature', () => {
		const log = bench().toCoats();
		const signature = log.log.at(-1)?.id;
		expect(why(log.try('act.undone', { undoes: signature, reason: 'x' }, SUPERVISOR))).toContain(
			'stands'
		);
		log.do('cup.weighed', ON_RATIO);
		const last = log.log.at(-1)?.id;
		expect(why(log.try('act.undone', { undoes: last, reason: 'x' }, 'amir'))).toContain(
			'only the person'
		);
		expect(why(log.try('act.undone', { undoes: log.log[3]?.id, reason: 'x' }))).toContain(
			'only the last'
		);
	});
});
