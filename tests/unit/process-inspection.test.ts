import { describe, expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { openDeviations } from '../../src/lib/core/process/changes/deviations';
import { contextOf } from '../../src/lib/core/process/job';
import { jobSummary } from '../../src/lib/core/process/summary';
import { statePath } from '../../src/lib/core/process/state-path';
import { undoable } from '../../src/lib/core/process/undo';
import { unfitToSign } from '../../src/lib/core/process/unfit-to-sign';
import { BenchLog, MAKER, SUPERVISOR } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const HOLD = { hold: 'moldAccepted' };
const pathOf = (log: BenchLog) => statePath(log.state.snapshot);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const look = (log: BenchLog, verdict: string) =>
	log.do('mold.inspected', {
		voids: 2,
		bubbles: 0,
		tears: verdict === 'sound' ? 0 : 1,
		thinSpots: 0,
		dimensions: [],
		verdict
	});
const found = (verdict: string, processVersion?: number) =>
	look(new BenchLog(handPlan(processVersion ? { processVersion } : {})).toInspect(), verdict);
const types = (log: BenchLog) =>
	benchStep(log.state, { by: MAKER, at: log.at }).acts.map(({ type }) => type);

describe('a mold inspected as not usable', () => {
	test('is not accepted by any signature or decision', () => {
		const log = found('reject').do('hold.requested', HOLD);
		expect(why(log.try('hold.signed', HOLD, SUPERVISOR))).toContain('not usable');
		const decision = { accepted: true, note: 'it is late' };
		expect(why(log.try('deviation.decided', decision, SUPERVISOR))).toContain('not usable');
		expect(unfitToSign(contextOf(log.state))).toContain('not usable');
		expect(log.try('mold.repaired', { done: 'x' }).ok).toBe(false);
		expect(types(log)).not.toContain('mold.repaired');
	});

	test('is rejected, or sent back and inspected anew', () => {
		const log = found('reject').do('hold.requested', HOLD);
		expect(log.try('mold.rejected', { reason: 'torn through' }, SUPERVISOR).ok).toBe(true);
		log.do('hold.sentBack', { ...HOLD, to: 'inspect', reason: 'look in daylight' }, SUPERVISOR);
		look(log, 'sound').sign('moldAccepted');
		expect(pathOf(log)).toBe('pour.pouring');
	});
});

describe('a mold in need of repair', () => {
	test('is accepted after a logged repair and a fresh inspection, and not before', () => {
		expect(types(found('sound'))[0]).toBe('hold.requested');
		expect(jobSummary(found('sound').state).nextAct).toBe('Ask for the signature');
		const log = found('needs repair');
		expect(types(log)[0]).toBe('mold.repaired');
		log.do('hold.requested', HOLD);
		expect(why(log.try('hold.signed', HOLD, SUPERVISOR))).toContain('in need of repair');
		log.do('mold.repaired', { done: 'Filled two voids on the north face.' });
		expect(pathOf(log)).toBe('inspect');
		expect(log.try('hold.requested', HOLD).ok).toBe(false);
		look(log, 'sound').sign('moldAccepted');
		expect(contextOf(log.state).deviations).toMatchObject([
			{
				what: 'The inspection found it in need of repair: voids 2, tears 1.',
				decided: { redone: true, by: MAKER, note: 'Repaired: Filled two voids on the north face.' }
			},
			{ what: 'The inspection found it sound: voids 2.', decided: { accepted: true } }
		]);
	});

	test('is accepted as it is when a supervisor accepts the deviation', () => {
		const log = found('needs repair').do('hold.requested', HOLD);
		const refused = { accepted: false, note: 'the tear runs on' };
		log.do('deviation.decided', refused, SUPERVISOR);
		expect(why(log.try('hold.signed', HOLD, SUPERVISOR))).toContain('in need of repair');
		expect(openDeviations(contextOf(log.state).deviations)).toMatchObject([
			{ decided: { accepted: false, note: 'the tear runs on' } }
		]);
		expect(jobSummary(log.state).openDeviations).toBe(1);
		log.do('deviation.decided', { accepted: true, note: 'outside the face' }, SUPERVISOR);
		expect(unfitToSign(contextOf(log.state))).toBeNull();
		expect(openDeviations(contextOf(log.state).deviations)).toEqual([]);
		log.do('hold.signed', HOLD, SUPERVISOR);
		expect(contextOf(log.state).deviations[0]).toMatchObject({
			decided: { accepted: true, note: 'outside the face' },
			earlier: [{ accepted: false, note: 'the tear runs on' }]
		});
	});

	test('sent back to a named step is inspected anew, and the finding is closed by that', () => {
		const log = found('needs repair').do('hold.requested', HOLD);
		log.do('hold.sentBack', { ...HOLD, to: 'wash', reason: 'film left in a void' }, SUPERVISOR);
		const flaw = () => contextOf(log.state).deviations[0];
		const sent = {
			redone: false,
			isUnderWay: true,
			note: 'Sent back to "Wash": film left in a void'
		};
		expect(flaw()?.decided).toMatchObject(sent);
		log.do('glove.washed', { filmGone: true });
		expect(flaw()?.decided).toMatchObject(sent);
		look(log, 'sound').sign('moldAccepted');
		expect(flaw()).toMatchObject({
			decided: { redone: true, by: MAKER, note: 'Inspected anew: sound' },
			earlier: [sent]
		});
	});

	test('found anew after a repair waits anew', () => {
		const log = found('needs repair').do('mold.repaired', { done: 'patched' });
		look(log, 'needs repair').do('hold.requested', HOLD);
		expect(log.try('hold.signed', HOLD, SUPERVISOR).ok).toBe(false);
	});
});

test('a log of the first version, signed with a flaw, folds as it did', () => {
	for (const verdict of ['needs repair', 'reject']) {
		const log = found(verdict, 1).sign('moldAccepted');
		expect(pathOf(log)).toBe('pour.pouring');
		expect(contextOf(log.state).deviations).toEqual([]);
	}
});

describe('what happens after an inspection', () => {
	const TORN = { trouble: 'glove-torn', place: 'rim', note: 'caught on the wedge' };
	const resume = { how: 'laid it flat', wayBack: 'resume' };
	const looked = { lookedAt: { 1: true } };
	const SOUND = { voids: 0, bubbles: 0, tears: 0, thinSpots: 0, dimensions: [], verdict: 'sound' };

	test('a trouble of the mold voids the finding, asked for or not: it is inspected anew', () => {
		for (const log of [found('sound'), found('sound').do('hold.requested', HOLD)]) {
			log.do('trouble.reported', TORN).do('trouble.mended', resume);
			expect(pathOf(log)).toBe('inspect');
			expect(contextOf(log.state)).toMatchObject({ inspection: null, hold: null });
			expect(log.try('hold.signed', HOLD, SUPERVISOR).ok).toBe(false);
			expect(why(log.try('mold.inspected', SOUND))).toContain('rim');
			log.do('mold.inspected', { ...SOUND, ...looked }).sign('moldAccepted');
		}
	});

	test('a spill beside it leaves the finding as it is', () => {
		const log = found('sound').do('hold.requested', HOLD);
		log.do('trouble.reported', { trouble: 'spill', note: 'wash water' });
		log.do('trouble.mended', { how: 'mopped', wayBack: 'resume' });
		expect(pathOf(log)).toBe('moldAccepted.asked');
		log.do('hold.signed', HOLD, SUPERVISOR);
	});

	test('a verdict is not undone; one given anew leaves the first for the signer to see', () => {
		for (const [verdict, words] of [
			['reject', 'not usable'],
			['needs repair', 'in need of repair']
		] as const) {
			const log = found(verdict);
			const { id } = log.log.at(-1) ?? { id: '' };
			expect(undoable(log.state, MAKER)).toBeNull();
			expect(why(log.try('act.undone', { undoes: id, reason: 'slip' }))).toContain('inspect anew');
			log.do('mold.inspected', SOUND);
			expect(pathOf(log)).toBe('moldAccepted.unasked');
			const open = openDeviations(contextOf(log.state).deviations).map(({ what }) => what);
			expect(open.at(-1)).toContain(`no repair logged: first found ${words}, now sound`);
			log.sign('moldAccepted');
		}
	});

	test('flaws and sizes in a mold called sound are deviations that the signature answers', () => {
		const log = new BenchLog(handPlan()).toInspect();
		const dimensions = [
			{ name: 'Overall length', plannedMm: 100, measuredMm: 50 },
			{ name: 'Overall width', plannedMm: 100, measuredMm: 101.5 }
		];
		log.do('mold.inspected', { ...SOUND, tears: 9, dimensions });
		const [only, ...more] = contextOf(log.state).deviations;
		expect(only).toMatchObject({
			blocking: false,
			what: 'The inspection found it sound: tears 9, Overall length 50 mm, planned 100 mm.'
		});
		expect(more).toEqual([]);
		log.sign('moldAccepted');
		expect(contextOf(log.state).deviations[0]?.decided).toMatchObject({ accepted: true });
	});

	test('a clean one leaves nothing to decide', () => {
		const log = new BenchLog(handPlan()).toInspect().do('mold.inspected', SOUND);
		expect(contextOf(log.state).deviations).toEqual([]);
	});
});
