import { describe, expect, test } from 'vitest';
import { HOLD_IDS } from '../../src/lib/core/process/events';
import { ENDS, chartLeaves, edges, leafNames, reachable } from '../fixtures/statechart';

describe('the chart of the process, over all its paths', () => {
	test('has more than forty states, so that the walk is worth something', () => {
		expect(leafNames.length).toBeGreaterThan(40);
		expect(edges.length).toBeGreaterThan(200);
	});

	test('reaches every state from the briefing', () => {
		const seen = reachable('brief');
		expect(chartLeaves.filter((name) => !seen.has(name))).toEqual([]);
	});

	test('has a way from every state to the end', () => {
		const stuck = leafNames.filter((name) => !ENDS.some((end) => reachable(name).has(end)));
		expect(stuck).toEqual([]);
	});

	test('has a way to handover from every state of work that is not an end', () => {
		const lost = leafNames.filter(
			(name) => !ENDS.includes(name) && !reachable(name).has('handedOver')
		);
		expect(lost).toEqual([]);
	});

	test.each(HOLD_IDS)('cannot come round the signature of the hold point %s', (hold) => {
		expect(reachable('brief', [`${hold}.asked`]).has('handedOver')).toBe(false);
	});

	test.each(HOLD_IDS)('leaves the hold point %s forward only by the signature', (hold) => {
		const beyond = reachable('brief', [`${hold}.asked`]);
		const forward = edges.filter(
			(edge) =>
				edge.from === `${hold}.asked` &&
				!beyond.has(edge.to) &&
				!ENDS.includes(edge.to) &&
				!edge.to.includes('@')
		);
		expect([...new Set(forward.map((edge) => edge.event))]).toEqual(['hold.signed']);
	});

	test('cannot come to a shell without waxing the back of the glove', () => {
		expect(reachable('brief', ['shellRelease.waxing']).has('shell.weighing')).toBe(false);
	});

	test('leaves a missed window only by abrading, pausing, trouble or giving up', () => {
		const out = edges.filter((edge) => edge.from === 'coating.missed').map((edge) => edge.event);
		expect([...new Set(out)].sort()).toEqual([
			'job.abandoned',
			'job.paused',
			'surface.abraded',
			'trouble.reported'
		]);
	});
});
