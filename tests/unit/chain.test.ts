import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	GENESIS,
	hashEvent,
	sealEvent,
	verifyChain,
	type StoredEvent
} from '../../src/lib/core/log/chain';

function chainOf(events: readonly unknown[]): StoredEvent[] {
	const log: StoredEvent[] = [];
	for (const [index, event] of events.entries()) {
		log.push(
			sealEvent({
				jobId: 'job-1',
				seq: index + 1,
				id: `event-${index + 1}`,
				recordedAt: '2026-01-05T08:00:00Z',
				event,
				prevHash: log.at(-1)?.hash ?? GENESIS
			})
		);
	}
	return log;
}

const EVENTS = [{ type: 'a', massG: 80 }, { type: 'b' }, { type: 'c', note: 'é' }];

describe('the chain of a log', () => {
	test('an untouched log verifies, and its head is the last hash', () => {
		const log = chainOf(EVENTS);
		expect(verifyChain(log)).toEqual({ ok: true, head: log[2]?.hash });
	});

	test('an empty log has the genesis as its head', () => {
		expect(verifyChain([])).toEqual({ ok: true, head: GENESIS });
	});

	test('the order of an event’s keys does not change its hash', () => {
		const base = { jobId: 'j', seq: 1, id: 'i', recordedAt: 'r', prevHash: GENESIS };
		expect(hashEvent({ ...base, event: { a: 1, b: 2 } })).toBe(
			hashEvent({ ...base, event: { b: 2, a: 1 } })
		);
	});

	test('an altered event, even resealed, is found at its place or the one after', () => {
		const log = chainOf(EVENTS);
		const [first, second, third] = log as [StoredEvent, StoredEvent, StoredEvent];
		const altered = { ...second, event: { type: 'b', massG: 1 } };
		expect(verifyChain([first, altered, third])).toMatchObject({ ok: false, seq: 2 });
		expect(verifyChain([first, sealEvent(altered), third])).toMatchObject({ ok: false, seq: 3 });
	});

	test('a missing, swapped, repeated or foreign event is found', () => {
		const [first, second, third] = chainOf(EVENTS) as [StoredEvent, StoredEvent, StoredEvent];
		expect(verifyChain([first, third])).toMatchObject({ ok: false, seq: 2 });
		expect(verifyChain([second, first, third])).toMatchObject({ ok: false, seq: 1 });
		expect(verifyChain([first, first])).toMatchObject({ ok: false, seq: 2 });
		const foreign = sealEvent({ ...second, jobId: 'job-2' });
		expect(verifyChain([first, foreign])).toMatchObject({ ok: false, seq: 2 });
		const sameId = sealEvent({ ...second, id: first.id });
		expect(verifyChain([first, sameId])).toMatchObject({ ok: false, seq: 2 });
	});

	test('what was never JSON is reported, not thrown', () => {
		const [first] = chainOf(EVENTS) as [StoredEvent];
		expect(verifyChain([{ ...first, event: NaN }])).toMatchObject({ ok: false, seq: 1 });
	});

	test('any change of any one value breaks it', () => {
		const fields = ['jobId', 'id', 'recordedAt', 'prevHash', 'hash'] as const;
		fc.assert(
			fc.property(
				fc.array(fc.jsonValue(), { minLength: 2, maxLength: 6 }),
				fc.nat(5),
				fc.constantFrom(...fields),
				(events, place, field) => {
					const log = chainOf(events);
					expect(verifyChain(log).ok).toBe(true);
					const at = place % log.length;
					const broken = log.map((stored, index) =>
						index === at ? { ...stored, [field]: `${stored[field]}x` } : stored
					);
					expect(verifyChain(broken).ok).toBe(false);
				}
			)
		);
	});
});
