import { describe, expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { contextOf, fold, foldOn } from '../../src/lib/core/process/job';
import { jobSummary } from '../../src/lib/core/process/summary';
import { undoable } from '../../src/lib/core/process/undo';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, GOOD_CUP, MAKER, OPENED_AT, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const MIN = 60;
const HOUR = 3600;
const bench = (given?: Parameters<typeof handPlan>[0]) => new BenchLog(handPlan(given));
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const ON_RATIO = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };

describe('a job worked with care', () => {
	test.each([
		['without detail coats', {}],
		['with detail coats', { detail: true }],
		['with a pair that needs no release', { release: false }]
	])('%s goes from briefing to handover', (_name, given) => {
		const log = bench(given).toEnd();
		expect(jobSummary(log.state).status).toBe('handed over');
		expect(Object.keys(contextOf(log.state).signatures)).toEqual([
			'readyToCoat',
			'readyForShell',
			'readyToOpen',
			'moldAccepted'
		]);
		expect(contextOf(log.state).deviations).toEqual([]);
	});

	test('folds to the same state, whole or from any prefix', () => {
		const { log, plan, state } = bench({ detail: true }).toEnd();
		const whole = fold(plan, log);
		expect(whole.snapshot.value).toEqual(state.snapshot.value);
		expect(contextOf(whole)).toEqual(contextOf(state));
		for (let cut = 1; cut < log.length; cut += 1) {
			const piecewise = foldOn(fold(plan, log.slice(0, cut)), log.slice(cut));
			expect(contextOf(piecewise)).toEqual(contextOf(whole));
		}
	});

	test('gives a bench step at every event', () => {
		const { log, plan } = bench({ detail: true }).toEnd();
		for (let cut = 1; cut <= log.length; cut += 1) {
			const state = fold(plan, log.slice(0, cut));
			const step = benchStep(state, { by: MAKER, at: state.lastAt });
			expect(step.title).not.toBe('');
			expect(step.progress.done).toBeLessThanOrEqual(step.progress.of);
		}
	});
});

describe('the briefing', () => {
	test('is not over before every briefing is read by the person at work', () => {
		const log = bench().brief('somebody else').readRoom();
		const answer = log.try('brief.finished', {
			sdsRead: true,
			ppeOut: true,
			spillKitKnown: true,
			trainingInDate: true
		});
		expect(why(answer)).toContain('read the briefings first: isocyanates');
	});

	test('is not over in a room too cold for the material', () => {
		const log = bench().brief();
		log.do('room.read', { temperatureC: 9, humidityPct: 50, extractionOn: true });
		const answer = log.try('brief.finished', {});
		expect(why(answer)).toContain('the room is 9 °C; the data sheet asks for 18 to 29 °C');
	});

	test('asks for the extraction', () => {
		const log = bench().brief();
		log.do('room.read', { temperatureC: 23, humidityPct: 50, extractionOn: false });
		expect(why(log.try('brief.finished', {}))).toContain('switch the extraction on');
	});
});

describe('a cup', () => {
	test('off ratio is written down but cannot be mixed, and is mixed once corrected', () => {
		const log = bench().toCoats();
		log.do('cup.weighed', { massesG: { A: 88, B: 100 }, lots: {} });
		expect(why(log.try('cup.mixed'))).toContain('the cup is 10.0 % off ratio');
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
		expect(contextOf(log.state).deviations[0]?.what).toContain('its working time is 18 min');
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

	test('that passes its test far too early is noted for the supervisor', () => {
		const log = bench()
			.toCoats()
			.cup(180)
			.do('coat.finished')
			.wait(10 * MIN);
		log.do('tack.tested', { result: 'almost tack-free' });
		expect(contextOf(log.state).deviations[0]?.what).toContain('lets expect 45 min');
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

describe('waits', () => {
	test('end no sooner than the plan says, by the time in the event alone', () => {
		const log = bench().toGloveCure();
		expect(why(log.try('glove.tested', { result: 'cured' }))).toContain('the glove needs its time');
		log.wait(16 * HOUR).do('glove.tested', { result: 'soft' });
		expect(pathOf(log)).toBe('gloveCure');
		log.wait(4 * HOUR).do('glove.tested', { result: 'cured' });
		expect(pathOf(log)).toBe('trim');
	});

	test('time in the log never runs backward', () => {
		const log = bench().brief();
		log.at = OPENED_AT;
		expect(
			why(log.try('room.read', { temperatureC: 20, humidityPct: 50, extractionOn: true }))
		).toContain('before the last entry');
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

describe('hold points', () => {
	test('are signed by nobody who worked on the mold', () => {
		const log = bench().toFrame().do('frame.fitted', {
			gapMm: 30,
			screwedFromBelow: true,
			cornersTight: true,
			insideReleased: true
		});
		expect(why(log.try('hold.signed', { hold: 'readyToCoat' }, SUPERVISOR))).toContain(
			'not what comes now'
		);
		log.do('hold.requested', { hold: 'readyToCoat' });
		expect(why(log.try('hold.signed', { hold: 'readyToCoat' }))).toContain(
			'nobody signs their own work'
		);
		expect(why(log.try('hold.signed', { hold: 'moldAccepted' }, SUPERVISOR))).toContain(
			'another hold point'
		);
	});

	test('send the work back to a named step, and must be passed again', () => {
		const log = bench().toShell();
		const sent = new BenchLog(log.plan)
			.toGloveCure()
			.wait(16 * HOUR)
			.do('glove.tested', { result: 'cured' });
		sent.do('glove.trimmed', { edgeSquare: true, frameClean: true });
		sent.do('glove.waxed', { wholeBack: true, coats: 1 }).do('frame.refitted', { tight: true });
		sent.do('hold.requested', { hold: 'readyForShell' });
		expect(
			why(
				sent.try(
					'hold.sentBack',
					{ hold: 'readyForShell', to: 'handover', reason: 'x' },
					SUPERVISOR
				)
			)
		).toContain('it can go back to');
		sent.do(
			'hold.sentBack',
			{ hold: 'readyForShell', to: 'build', reason: 'thin wall' },
			SUPERVISOR
		);
		// The cured glove is abraded, as ordered, and takes one more coat.
		expect(pathOf(sent)).toBe('coating.missed');
		sent.do('surface.abraded', { grit: '120', wiped: true, dried: true, reason: 'as ordered' });
		expect(pathOf(sent)).toBe('coating.weighing');
		sent.readRoom().coat(540);
		expect(pathOf(sent)).toBe('thickness.measuring');
		expect(contextOf(sent.state).signatures.readyForShell).toBeUndefined();
	});

	test('let a mold be rejected at inspection', () => {
		const log = bench().inspected().do('hold.requested', { hold: 'moldAccepted' });
		log.do('mold.rejected', { reason: 'voids all over' }, SUPERVISOR);
		expect(jobSummary(log.state).status).toBe('rejected');
		expect(why(log.try('part.poured', { massG: 1, headMm: 1, lot: 'x' }))).toContain('has ended');
	});
});

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
		log.do('trouble.mended', { how: 'stripped', wayBack: 'shellRelease' }, SUPERVISOR);
		expect(pathOf(log)).toBe('shellRelease.waxing');
	});

	test('never leads forward past the phase it was met in', () => {
		const log = bench().toCoats().do('trouble.reported', { trouble: 'no-cure', note: 'soft' });
		const ahead = { how: 'x', wayBack: 'shellRelease' };
		expect(why(log.try('trouble.mended', ahead, SUPERVISOR))).toContain('the ways back are');
	});

	test('that belongs to another phase is refused', () => {
		const answer = bench().try('trouble.reported', { trouble: 'shell-locked', note: 'x' });
		expect(why(answer)).toContain('does not belong to this phase');
	});

	test('that hurt somebody is closed by another person only', () => {
		const log = bench()
			.toCoats()
			.do('trouble.reported', { trouble: 'skin-contact', note: 'wrist' });
		const mended = { how: 'washed, looked at', wayBack: 'resume' };
		expect(why(log.try('trouble.mended', mended))).toContain('a supervisor who has not worked');
		log.do('trouble.mended', mended, SUPERVISOR);
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
