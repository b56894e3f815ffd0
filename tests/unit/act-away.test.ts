import { expect, test } from 'vitest';
import type { ProcessEvent } from '../../src/lib/core/process/events';
import { addSeconds } from '../../src/lib/core/process/instant';
import { advance } from '../../src/lib/core/process/job';
import { actAway, type KnownJob } from '../../src/lib/device/keep/act-away';
import { foldWaiting } from '../../src/lib/device/keep/fold-waiting';
import { LONGEST_AWAY_S, type KeptJob } from '../../src/lib/device/keep/kept-job';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const doer = { id: MAKER, name: 'Yusuf' };

/** A mold on a device, as it stands after this log. */
function known(log: BenchLog): KnownJob {
	const kept: KeptJob = {
		jobId: 'job-1',
		plan: log.plan,
		planHash: '0'.repeat(64),
		log: log.log.map((logged) => {
			const seal = { jobId: 'job-1', recordedAt: logged.event.at, prevHash: '', hash: '' };
			return { ...logged, ...seal };
		}),
		names: {},
		zone: 'UTC',
		system: 'SI',
		texts: { lang: 'en' as const, steps: {}, briefings: {}, troubles: {} },
		version: 'test',
		heardAt: log.at
	};
	return { kept, folded: foldWaiting(kept, []) };
}

function form(fields: Record<string, string>): FormData {
	const data = new FormData();
	for (const [name, value] of Object.entries({ id: 'act-1', ...fields })) data.set(name, value);
	return data;
}
const room = () =>
	form({ type: 'room.read', temperatureC: '22', humidityPct: '48', extractionOn: 'true' });

test('what the machine takes is kept for the next number, under the doer’s name', () => {
	const log = new BenchLog(handPlan()).toCoats();
	const answer = actAway(room(), known(log), { doer, at: log.at });
	expect(answer).toMatchObject({
		act: {
			id: 'act-1',
			seq: log.log.length + 1,
			byName: 'Yusuf',
			refusal: null,
			title: 'Test mold'
		}
	});
	if (!('act' in answer)) return;
	expect(answer.act.event).toMatchObject({ type: 'room.read', by: MAKER, at: log.at });
	expect(advance(log.state, answer.act).ok).toBe(true);
});

test('a device whose clock is behind the last act says that act’s time, never an earlier one', () => {
	const log = new BenchLog(handPlan()).toCoats();
	const answer = actAway(room(), known(log), { doer, at: addSeconds(log.at, -7200) });
	expect(answer).toMatchObject({ act: { event: { at: log.state.lastAt } } });
});

test('after half a day nothing is taken, since nobody knows who stands there', () => {
	const log = new BenchLog(handPlan()).toCoats();
	const at = (seconds: number) => ({ doer, at: addSeconds(log.at, seconds) });
	expect(actAway(room(), known(log), at(LONGEST_AWAY_S))).toHaveProperty('act');
	expect(actAway(room(), known(log), at(LONGEST_AWAY_S + 1))).toMatchObject({
		notDone: { refusal: expect.stringMatching(/half a day/) }
	});
});

test('what the machine refuses is refused here too, in words', () => {
	const log = new BenchLog(handPlan()).toCoats();
	const mixed = form({ type: 'cup.mixed' });
	expect(actAway(mixed, known(log), { doer, at: log.at })).toMatchObject({
		notDone: { refusal: expect.stringMatching(/\S/) }
	});
});

test('fields that are wrong are named', () => {
	const log = new BenchLog(handPlan()).toCoats();
	const wrong = form({ type: 'room.read', temperatureC: 'warm', humidityPct: '48' });
	const answer = actAway(wrong, known(log), { doer, at: log.at });
	expect('notDone' in answer && Object.keys(answer.notDone.errors)).toContain('temperatureC');
});

test('after harm to somebody only the server can say that work goes on', () => {
	const log = new BenchLog(handPlan()).toCoats();
	const event = { trouble: 'skin-contact', note: 'Sprayed in the eye.' } satisfies Partial<
		Extract<ProcessEvent, { type: 'trouble.reported' }>
	>;
	log.do('trouble.reported', event);
	const mended = form({ type: 'trouble.mended', how: 'Rinsed.', wayBack: 'resume' });
	expect(actAway(mended, known(log), { doer, at: log.at })).toMatchObject({
		notDone: { refusal: expect.stringMatching(/needs the server/) }
	});
});

test('away from the server too, diisocyanates are handled with training in date', () => {
	const log = new BenchLog(handPlan()).toCoats();
	const weighed = () =>
		form({
			type: 'cup.weighed',
			'massesG.A': '80',
			'massesG.B': '100',
			'lots.A': 'a1',
			'lots.B': 'b1'
		});
	const judge = (training: KeptJob['training']) => {
		const { kept, folded } = known(log);
		return actAway(
			weighed(),
			{ kept: { ...kept, training: training ?? null }, folded },
			{ doer, at: log.at }
		);
	};
	expect(judge({})).toMatchObject({
		notDone: { refusal: expect.stringContaining('no training on isocyanates on record') }
	});
	expect(judge({ [MAKER]: '2031-03-02T14:00:00.000Z' })).toHaveProperty('act');
	expect(judge(null)).toHaveProperty('act');
});

test('whether somebody else was in date who mixed, only the server knows: it is asked once, and not lost', () => {
	const log = new BenchLog(handPlan({ people: 2 })).toCoats().brief('ada').coat(180);
	const cup = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
	log.do('cup.weighed', cup).do('cup.mixed').do('cup.weighed', cup);
	const judge = (training: KeptJob['training'], fields = {}) => {
		const { kept, folded } = known(log);
		const mixed = form({ type: 'cup.mixed', mixedBy: 'ada', ...fields });
		return actAway(
			mixed,
			{ kept: { ...kept, training: training ?? null }, folded },
			{ doer, at: log.at }
		);
	};
	expect(judge({ [MAKER]: '2031-03-02T14:00:00.000Z' })).toMatchObject({
		notDone: { question: expect.stringContaining('This device does not know') }
	});
	expect(judge({}, { knowing: 'true' })).toHaveProperty('act.event.mixedBy', 'ada');
	expect(judge(null)).toHaveProperty('act');
});
