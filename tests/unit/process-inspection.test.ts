import { describe, expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { openDeviations } from '../../src/lib/core/process/changes/deviations';
import { contextOf } from '../../src/lib/core/process/job';
import { jobSummary } from '../../src/lib/core/process/summary';
import { statePath } from '../../src/lib/core/process/state-path';
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
			}
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
		expect(contextOf(log.state).deviations[0]?.decided).toMatchObject({ redone: true });
		log.do('glove.washed', { filmGone: true });
		look(log, 'sound').sign('moldAccepted');
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
