import { describe, expect, test } from 'vitest';
import {
	clockText,
	spokenDuration,
	windowPhase
} from '../../../src/lib/screen/design/window-phase';

const opensAt = '2026-03-02T09:00:00Z';
const closesAt = '2026-03-02T10:00:00Z';

describe('a window against the clock', () => {
	test.each([
		['2026-03-02T08:59:59Z', 'wait', 1],
		['2026-03-02T09:00:00Z', 'test-now', 3600],
		['2026-03-02T09:49:59Z', 'test-now', 601],
		['2026-03-02T09:50:00Z', 'closing', 600],
		['2026-03-02T09:59:59Z', 'closing', 1],
		['2026-03-02T10:00:00Z', 'closed', 0],
		['2026-03-02T10:04:05Z', 'closed', 245]
	])('at %s it is %s with %i s', (now, phase, leftS) => {
		expect(windowPhase({ opensAt, closesAt, now })).toEqual({ phase, leftS });
	});

	test('a short window closes over its last third only', () => {
		const short = { opensAt, closesAt: '2026-03-02T09:09:00Z' };
		expect(windowPhase({ ...short, now: '2026-03-02T09:05:59Z' }).phase).toBe('test-now');
		expect(windowPhase({ ...short, now: '2026-03-02T09:06:00Z' }).phase).toBe('closing');
	});

	test('a window without an end stays open', () => {
		const now = '2027-01-01T00:00:00Z';
		expect(windowPhase({ opensAt, closesAt: null, now })).toEqual({
			phase: 'test-now',
			leftS: null
		});
	});

	test('one that shuts before its last place can be tested presses until it shuts', () => {
		const odd = { opensAt: closesAt, closesAt: opensAt };
		expect(windowPhase({ ...odd, now: '2026-03-02T08:58:00Z' })).toEqual({
			phase: 'closing',
			leftS: 120
		});
		expect(windowPhase({ ...odd, now: '2026-03-02T09:30:00Z' }).phase).toBe('closed');
	});

	test('an instant that cannot be read is refused by name', () => {
		expect(() => windowPhase({ opensAt: 'soon', closesAt, now: opensAt })).toThrow(/opensAt/);
	});
});

test.each([
	[0, '0:00', '0 seconds'],
	[65, '1:05', '1 minute 5 seconds'],
	[3729, '1:02:09', '1 hour 2 minutes']
])('%i s reads %s and is said %s', (seconds, clock, spoken) => {
	expect(clockText(seconds)).toBe(clock);
	expect(spokenDuration(seconds)).toBe(spoken);
});
