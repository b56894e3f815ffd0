import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import { isEnteredLater } from '../../src/lib/screen/record/entered-later';
import EnteredLater from '../../src/lib/screen/record/EnteredLater.svelte';
import { recordTime } from '../../src/lib/screen/record/record-time';

const recordedAt = '2026-03-02T14:02:00.000Z';

test.each([
	['2026-03-02T14:00:00.000Z', false],
	['2026-03-02T13:59:59.000Z', true],
	['2026-03-02T14:04:00.000Z', false],
	['2026-03-02T14:04:01.000Z', true]
])('an act dated %s and taken at 14:02 was entered at another time: %s', (at, isLater) => {
	expect(isEnteredLater({ at, recordedAt })).toBe(isLater);
});

test('an entry made later is shown with both times', () => {
	const entry = { seq: 7, at: '2026-03-02T11:30:00.000Z', recordedAt, by: 'p', label: 'Cup laid' };
	const props = {
		entries: [entry],
		who: () => 'Ben Marsh',
		when: (at: string) => recordTime(at, 'UTC')
	};
	const { body } = render(EnteredLater, { props });
	const text = body.replace(/<[^>]*>/g, '').replace(/\s+/g, ' ');
	expect(text).toContain('No. 7, Cup laid, Ben Marsh: done Mar 2, 2026, 11:30, entered later,');
	expect(text).toContain('Mar 2, 2026, 14:02');
	expect(render(EnteredLater, { props: { ...props, entries: [] } }).body).not.toContain('later');
});
