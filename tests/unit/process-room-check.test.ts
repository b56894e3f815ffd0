import { describe, expect, test } from 'vitest';
import { readAct } from '../../src/lib/core/bench/read-act';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { contextOf } from '../../src/lib/core/process/job';
import { roomFaults } from '../../src/lib/core/process/room-check';
import { mainAct } from '../../src/lib/screen/bench/main-act';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const AS_PLANNED = { temperatureC: 23, humidityPct: 50, extractionOn: true };
const FRAME = { gapMm: 30, screwedFromBelow: true, cornersTight: true, insideReleased: true };
const bench = (processVersion?: number) =>
	new BenchLog(handPlan(processVersion === undefined ? {} : { processVersion }));
const notes = (log: BenchLog) => contextOf(log.state).deviations.map(({ what }) => what);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const texts = { lang: 'en' as const, steps: {}, briefings: {}, troubles: {} };

function asked(log: BenchLog, values: Record<string, string>): string {
	const form = new FormData();
	const sent = { type: 'room.read', units: 'SI', extractionOn: 'true', ...values };
	for (const [name, value] of Object.entries(sent)) form.set(name, value);
	const read = readAct(form, { state: log.state, by: MAKER, at: log.at, texts });
	return read.ok ? 'taken' : (read.notDone.question ?? JSON.stringify(read.notDone.errors));
}

// How far a room may be off: common practice, no source. Margin of 3 K above the dew point: the working
// rule quoted with ISO 8502-4:2017. Dew point of 21.6 °C at 23 °C and 92 %: Alduchov and Eskridge 1996, eq. 21.
describe('a reading of the room', () => {
	test('as planned says nothing', () => {
		expect(
			notes(
				bench()
					.brief()
					.do('room.read', { ...AS_PLANNED, surfaceC: 22 })
			)
		).toEqual([]);
		expect(asked(bench(), { temperatureC: '23', humidityPct: '50' })).toBe('taken');
	});

	test('of 92 % where 50 % are planned is asked about, noted, and says what to do', () => {
		const values = { temperatureC: '23', humidityPct: '92' };
		expect(asked(bench(), values)).toContain('can make a urethane foam. Dry the room');
		expect(asked(bench(), { ...values, knowing: 'true' })).toBe('taken');
		const log = bench()
			.brief()
			.do('room.read', { ...AS_PLANNED, humidityPct: 92 });
		expect(notes(log)).toEqual([
			'The air was read at 92% and 23 °C, planned 50%: it can make a urethane foam. Dry the room, keep part A shut, keep the pattern above 24.7 °C (dew point and margin), and pour a test cup first.'
		]);
		// Read again the same, it is the same.
		expect(notes(log.do('room.read', { ...AS_PLANNED, humidityPct: 92 }))).toHaveLength(1);
	});

	test('warmer than the plan counts on, and outside what a sheet is made for', () => {
		const c = contextOf(bench().state);
		const keys = (temperatureC: number, humidityPct = 30) =>
			roomFaults(c, { temperatureC, humidityPct }).map(({ key }) => key);
		expect(keys(23)).toEqual([]);
		expect(keys(26)).toEqual([]);
		expect(keys(19.9)).toEqual(['roomOff']);
		expect(keys(27.5)).toEqual(['roomOff']);
		expect(keys(14)).toContain('roomRange');
		expect(keys(23, 29)).toEqual(['roomOff']);
	});

	test('of a pattern near the dew point gives the margin, and keeps the first cup from being weighed', () => {
		const damp = { ...AS_PLANNED, humidityPct: 70, surfaceC: 19 };
		const log = bench().toCoats().do('room.read', damp);
		expect(notes(log)[0]).toMatch(
			/at 19 °C lies 1\.8 °C \(3\.2 °F\) above the dew point of 17\.2 °C; 3 °C \(5\.4 °F\) above/
		);
		const cup = { massesG: { A: 80, B: 100 }, lots: {} };
		expect(why(log.try('cup.weighed', cup))).toContain('too near the dew point');
		const step = benchStep(log.state, { by: MAKER, at: log.at });
		const main = mainAct(step.acts, { unread: 0, isBrief: false, isOthers: false });
		expect(main.act?.type).toBe('room.read');
		log.do('room.read', { ...AS_PLANNED, surfaceC: 22 }).do('cup.weighed', cup);
	});

	test('on which dew lies says so', () => {
		const c = contextOf(bench().state);
		const faults = roomFaults(c, { temperatureC: 23, humidityPct: 92, surfaceC: 20 });
		expect(faults.map(({ key }) => key)).toEqual(['surfaceDew', 'roomMoist']);
		const log = bench()
			.brief()
			.do('room.read', { ...AS_PLANNED, humidityPct: 92, surfaceC: 20 });
		expect(notes(log)[0]).toContain('1.6 °C (2.9 °F) below the dew point');
	});

	test('of a pattern is asked for before anybody is asked to sign for the first coat', () => {
		const log = bench().brief().do('room.read', AS_PLANNED);
		const plain = bench().toFrame();
		for (const bare of [log, plain]) expect(notes(bare)).toEqual([]);
		plain.do('room.read', AS_PLANNED).do('frame.fitted', FRAME);
		expect(why(plain.try('hold.requested', { hold: 'readyToCoat' }))).toContain('surface');
		const step = benchStep(plain.state, { by: MAKER, at: plain.at });
		const { act } = mainAct(step.acts, { unread: 0, isBrief: false, isOthers: false });
		expect(act?.type).toBe('room.read');
		expect(act?.fields.find(({ name }) => name === 'surfaceC')?.required).toBe(true);
		plain.do('room.read', { ...AS_PLANNED, surfaceC: 22 }).sign('readyToCoat');
	});

	test('of a job opened before stands beside the plan without a word, as it did then', () => {
		const log = bench(5)
			.toFrame()
			.do('room.read', { ...AS_PLANNED, humidityPct: 92, surfaceC: 20 });
		expect(notes(log)).toEqual([]);
		log.do('frame.fitted', FRAME).sign('readyToCoat');
		log.do('cup.weighed', { massesG: { A: 80, B: 100 }, lots: {} });
	});
});
