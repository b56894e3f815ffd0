import { describe, expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { BenchLog, GOOD_CUP, MAKER } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const MARKED = { mark: 'north arrow', sameSide: true };
const SOUND = {
	voids: 0,
	bubbles: 0,
	tears: 0,
	thinSpots: 0,
	dimensions: [],
	verdict: 'sound'
};
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);
const opened = (processVersion = 3) =>
	new BenchLog(handPlan({ processVersion }))
		.toOpen()
		.do('mold.opened', { boardOff: true, wedgedEvenly: true });

describe('the parting line', () => {
	test('is said to be uneven or plain, and a plain one names its keys', () => {
		const log = opened();
		expect(why(log.try('mold.marked', MARKED))).toContain('uneven or plain');
		expect(log.try('mold.marked', { ...MARKED, partingLine: 'uneven' }).ok).toBe(true);
		const plain = { ...MARKED, partingLine: 'plain' };
		expect(why(log.try('mold.marked', plain))).toContain('drill or add keys');
		expect(log.try('mold.marked', { ...plain, keys: 'two 8 mm holes, north and east' }).ok).toBe(
			true
		);
	});

	test('was not asked for under the version before', () => {
		expect(opened(2).try('mold.marked', MARKED).ok).toBe(true);
	});
});

describe('where a mold had trouble', () => {
	const torn = (processVersion = 3) =>
		new BenchLog(handPlan({ processVersion }))
			.toInspect()
			.do('trouble.reported', { trouble: 'glove-torn', place: 'north flange', note: 'a nick' })
			.do('trouble.mended', { how: 'patched', wayBack: 'resume' });

	test('is listed at the inspection, and looked at before a verdict', () => {
		const log = torn();
		const step = benchStep(log.state, { by: MAKER, at: log.at });
		expect(step.what).toContain('Look first where it had trouble');
		expect(step.acts.find(({ primary }) => primary)?.fields[0]).toMatchObject({
			name: 'lookedAt.1',
			kind: 'confirm',
			label: 'Looked at: Glove torn: north flange'
		});
		expect(why(log.try('mold.inspected', SOUND))).toContain('Glove torn: north flange');
		expect(log.try('mold.inspected', { ...SOUND, lookedAt: { 1: true } }).ok).toBe(true);
	});

	test('is not asked for of a spill, which leaves no place on the mold', () => {
		const log = new BenchLog(handPlan()).toInspect();
		log.do('trouble.reported', { trouble: 'spill', note: 'soap' });
		log.do('trouble.mended', { how: 'wiped up', wayBack: 'resume' });
		expect(log.try('mold.inspected', SOUND).ok).toBe(true);
	});

	test('goes with a glove that was stripped', () => {
		const log = new BenchLog(handPlan()).toCoats();
		log.do('trouble.reported', { trouble: 'bubbles', place: 'low', note: 'foam' });
		log.do('test.judged', GOOD_CUP).do('trouble.mended', { how: 'stripped', wayBack: 'release' });
		expect(log.state.snapshot.context.troublesMet).toEqual([]);
	});

	test('was not asked for under the version before', () => {
		expect(torn(2).try('mold.inspected', SOUND).ok).toBe(true);
	});
});
