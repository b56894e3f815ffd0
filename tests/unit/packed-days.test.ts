import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Stretch } from '$lib/core/process/ahead/place-ahead';
import type { DaysLine } from '$lib/screen/board/days-line';
import { packDays, unpackDays } from '$lib/screen/board/packed-days';

const FROM_MS = Date.parse('2026-11-30T13:10:07.250Z');
const instant = fc.integer({ min: -400_000, max: 2_000_000 }).map((s) => FROM_MS + s * 1000);
const stretch: fc.Arbitrary<Stretch> = fc.record({
	title: fc.constantFrom('Build coat 1', 'Fingertip test', ''),
	kind: fc.constantFrom('work', 'hold', 'wait', 'window'),
	fromMs: instant,
	toMs: instant,
	latestMs: fc.option(instant),
	isOutside: fc.boolean(),
	isMissed: fc.boolean()
});
const lineOf = (stretches: Stretch[], index: number): DaysLine => ({
	id: `mold-${index}`,
	title: `Mold ${index}`,
	status: 'open',
	phaseTitle: 'Build coats',
	step: 'Weigh',
	workerId: null,
	worker: '',
	ask: null,
	lastAt: '2026-11-30T13:00:00.000Z',
	stretches
});

test('days that were sent are the days that were packed', () => {
	fc.assert(
		fc.property(fc.array(fc.array(stretch, { maxLength: 6 }), { maxLength: 4 }), (all) => {
			const lines = all.map(lineOf);
			expect(unpackDays(packDays(lines, FROM_MS))).toEqual(lines);
		})
	);
});

test('part of a second is rounded, never kept in another unit', () => {
	const wait: Stretch = {
		title: 'Wait',
		kind: 'wait',
		fromMs: FROM_MS + 1400,
		toMs: FROM_MS + 61_600,
		latestMs: null,
		isOutside: false,
		isMissed: false
	};
	const [line] = unpackDays(packDays([lineOf([wait], 1)], FROM_MS));
	expect(line?.stretches[0]).toMatchObject({ fromMs: FROM_MS + 1000, toMs: FROM_MS + 62_000 });
});
