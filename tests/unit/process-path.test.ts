import { describe, expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { contextOf, fold, foldOn } from '../../src/lib/core/process/job';
import { jobSummary } from '../../src/lib/core/process/summary';
import { statePath } from '../../src/lib/core/process/state-path';
import { BenchLog, MAKER, OPENED_AT, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const HOUR = 3600;
const bench = (given?: Parameters<typeof handPlan>[0]) => new BenchLog(handPlan(given));
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);

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
