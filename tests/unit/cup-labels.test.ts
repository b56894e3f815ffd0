import { describe, expect, test } from 'vitest';
import { cupLabels } from '../../src/lib/core/process/cup-labels';
import { secondsBetween } from '../../src/lib/core/process/instant';
import { contextOf } from '../../src/lib/core/process/job';
import { BenchLog } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const CUP = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };

describe('labels of cups', () => {
	test('there is one for each planned cup, with its parts in pouring order and no times yet', () => {
		const { state } = new BenchLog(handPlan()).toCoats();
		const { plan } = contextOf(state);
		const planned = [...plan.coats, ...plan.shell.rounds].flatMap(({ cups }) => cups);
		const labels = cupLabels(state);
		expect(labels.map(({ parts }) => parts)).toEqual(planned.map(({ parts }) => parts));
		expect(labels.every(({ mixedAt, useByAt }) => mixedAt === null && useByAt === null)).toBe(true);
		expect(new Set(labels.map(({ id }) => id)).size).toBe(labels.length);
	});

	test('once mixed it says till when it may be laid: the working time of its batch', () => {
		const log = new BenchLog(handPlan()).toCoats().coat(180);
		log.do('cup.weighed', CUP).do('cup.mixed');
		const [first, second] = cupLabels(log.state).filter(({ id }) => id.startsWith('build-2'));
		const coat = contextOf(log.state).plan.coats.find(({ id }) => id === 'build-2');
		expect(first?.mixedAt).toBe(log.log.at(-1)?.event.at);
		expect(secondsBetween(first?.mixedAt ?? '', first?.useByAt ?? '')).toBe(coat?.workingS);
		expect(second?.mixedAt ?? null).toBeNull();
		expect(second?.isFromMeeting).toBe(true);
		expect(second?.usableS).toBe((coat?.workingS ?? 0) + (coat?.mixS ?? 0));
		expect(first?.isLaid).toBe(false);
		log.do('cup.applied');
		expect(cupLabels(log.state).find(({ id }) => id === first?.id)?.isLaid).toBe(true);
	});

	test('a cup set aside needs none any more; the one in its place has the next free number', () => {
		const log = new BenchLog(handPlan()).toCoats().coat(180);
		log.do('cup.weighed', CUP).do('cup.mixed').do('cup.discarded', { reason: 'too warm' });
		const left = cupLabels(log.state).filter(({ id }) => id.startsWith('build-2'));
		expect(left.map(({ title, mixedAt }) => [title, mixedAt])).toEqual([
			['Build coat 2, cup 2 of 3', null],
			['Build coat 2, cup 3 of 3', null]
		]);
	});
});
