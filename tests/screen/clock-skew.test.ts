import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import { clockSkewS } from '../../src/lib/core/process/clock-skew';
import ClockNote from '../../src/lib/screen/bench/ClockNote.svelte';
import EntryLog from '../../src/lib/screen/record/EntryLog.svelte';
import { recordReader } from '../../src/lib/screen/record/record-reader';
import { skewWords } from '../../src/lib/screen/record/skew-words';

const recordedAt = '2026-03-02T14:02:00.000Z';
const textOf = (html: string) => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');

test.each([
	['2026-03-02T14:02:00.000Z', null],
	['2026-03-02T14:02:30.000Z', null],
	['2026-03-02T14:02:31.000Z', 31],
	['2026-03-02T14:01:30.000Z', null],
	['2026-03-02T13:02:00.000Z', -3600]
])('sent at %s by its own clock and taken at 14:02, a device is off by %s s', (sentAt, skewS) => {
	expect(clockSkewS({ sentAt, recordedAt })).toBe(skewS);
});

test('an entry that says nothing of a device’s clock has no skew', () => {
	expect(clockSkewS({ recordedAt })).toBeNull();
	expect(skewWords({ sentAt: null, recordedAt })).toBeNull();
});

test.each([
	[null, ''],
	[30, ''],
	[-245, 'clock is 4 min 5 s behind'],
	[3600, 'clock is 1 h ahead']
])('the bench says of a device that is %s s ahead: %s', (skewS, words) => {
	const { body } = render(ClockNote, { props: { skewS, now: recordedAt, zone: 'UTC' } });
	if (words === '') expect(textOf(body).trim()).toBe('');
	else expect(textOf(body)).toContain(words);
});

test('both clocks stand beside each other', () => {
	const { body } = render(ClockNote, { props: { skewS: 3600, now: recordedAt, zone: 'UTC' } });
	expect(textOf(body)).toContain('Server 14:02, this device 15:02');
});

test('the record says which entries came from a device with a wrong clock', () => {
	const base = { at: recordedAt, recordedAt, by: 'p', label: 'Cup laid', hash: 'a'.repeat(64) };
	const entries = [
		{ ...base, seq: 1, sentAt: '2026-03-02T14:02:01.000Z', isUndone: false },
		{ ...base, seq: 2, sentAt: '2026-03-02T14:09:00.000Z', isUndone: false }
	];
	const reader = recordReader({ names: {}, zone: 'UTC', system: 'SI' });
	const text = textOf(render(EntryLog, { props: { entries, reader } }).body);
	expect(text.match(/device’s clock/g)).toHaveLength(1);
	expect(text).toContain('device’s clock 7 min ahead');
});
