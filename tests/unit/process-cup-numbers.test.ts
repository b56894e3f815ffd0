import { describe, expect, test } from 'vitest';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { cupLabels } from '../../src/lib/core/process/cup-labels';
import { contextOf } from '../../src/lib/core/process/job';
import { cupToWeigh } from '../../src/lib/core/process/next-cup';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const CUP = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
const ASIDE = { reason: 'it strings' };

/** The third coat takes cups of 270 g; here of 90 g, six in all. */
function bench(processVersion?: number): BenchLog {
	const plan = handPlan(processVersion ? { processVersion } : {});
	const third = plan.coats[2];
	if (!third) throw new Error('no coat');
	const [cup] = third.cups;
	if (!cup) throw new Error('no cup');
	const small = {
		...cup,
		massG: 180,
		parts: [
			{ part: 'B', massG: 100 },
			{ part: 'A', massG: 80 }
		]
	};
	plan.coats[2] = { ...third, cups: [small, small, small], largestCupG: 180 };
	return new BenchLog(plan).toCoats().coat(180).coat(360);
}
const numbers = (log: BenchLog) => {
	const next = cupToWeigh(contextOf(log.state));
	return next && [next.number, next.of];
};
const built = (log: BenchLog) =>
	(asBuilt(log.state, log.log).sections.at(-1)?.cups ?? []).map(({ number, discarded, laidAt }) => [
		number,
		discarded !== null ? 'aside' : laidAt !== null ? 'laid' : 'open'
	]);
const labels = (log: BenchLog) =>
	cupLabels(log.state)
		.filter(({ id, isLaid }) => id.startsWith('build-3') && !isLaid)
		.map(({ title }) => title.replace('Build coat 3, ', ''));

// What is written on a cup must go on meaning that cup: common practice, no source.
describe('the number of a cup', () => {
	test('stays with it when the one before is set aside, and no other has it', () => {
		const log = bench().do('cup.weighed', CUP).do('cup.mixed').do('cup.weighed', CUP);
		expect(numbers(log)).toEqual([2, 3]);
		expect(benchStep(log.state, { by: MAKER, at: log.at }).ahead).toMatchObject({
			number: 2,
			of: 3
		});
		log.do('cup.discarded', ASIDE);
		expect(numbers(log)).toEqual([2, 4]);
		expect(labels(log)).toEqual(['cup 2 of 4', 'cup 3 of 4', 'cup 4 of 4']);
		log.do('cup.mixed').do('cup.applied');
		expect(numbers(log)).toEqual([3, 4]);
		log.do('cup.weighed', CUP).do('cup.mixed').do('cup.applied');
		log.do('cup.weighed', CUP).do('cup.mixed').do('cup.applied').do('coat.finished');
		expect(built(log)).toEqual([
			[1, 'aside'],
			[2, 'laid'],
			[3, 'laid'],
			[4, 'laid']
		]);
		expect(labels(log)).toEqual([]);
	});

	test('is the same when it is weighed again, and free again when that is taken back', () => {
		const log = bench().do('cup.weighed', { ...CUP, massesG: { A: 90, B: 100 } });
		log.do('cup.weighed', CUP);
		expect(numbers(log)).toEqual([1, 3]);
		log.do('act.undone', { undoes: log.log.at(-1)?.id, reason: 'wrong button' });
		expect(contextOf(log.state).cup?.number).toBe(1);
		log.do('act.undone', { undoes: log.state.effective.at(-1)?.id, reason: 'wrong button' });
		expect(numbers(log)).toEqual([1, 3]);
	});

	test('is a further one where the next cup is set aside, or the coat is laid again', () => {
		const log = bench().do('cup.weighed', CUP).do('cup.mixed').do('cup.weighed', CUP);
		log.do('cup.discarded', { ...ASIDE, cup: 'next' });
		expect(numbers(log)).toEqual([3, 4]);
		log.do('cup.applied').do('trouble.reported', {
			trouble: 'pot-life-overrun',
			place: 'foot',
			note: 'strings'
		});
		log.do('trouble.mended', { how: 'scraped off', wayBack: 'redo coat' });
		expect(numbers(log)).toEqual([3, 5]);
		expect(labels(log)).toEqual(['cup 3 of 5', 'cup 4 of 5', 'cup 5 of 5']);
		log.do('cup.weighed', CUP);
		expect(built(log)).toEqual([[3, 'open']]);
	});

	test('was another under version 5, whose jobs go on as they were begun', () => {
		const log = bench(5).do('cup.weighed', CUP).do('cup.mixed').do('cup.weighed', CUP);
		log.do('cup.discarded', ASIDE);
		expect(numbers(log)).toEqual([1, 3]);
		expect(built(log)).toEqual([
			[1, 'aside'],
			[1, 'open']
		]);
	});
});
