import { expect, test } from 'vitest';
import { readClock, readSpan } from '../../src/lib/screen/form/read-clock';

test.each([
	['07:30', '07:30'],
	['7:30', '07:30'],
	['0730', '07:30'],
	['730', '07:30'],
	[' 7 ', '07:00'],
	['16.00', '16:00'],
	['4 pm', '16:00'],
	['4:15 P.M.', '16:15'],
	['12 am', '00:00'],
	['12pm', '12:00'],
	['23:59', '23:59']
])('“%s” is %s', (typed, clock) => expect(readClock(typed)).toBe(clock));

test.each(['', '24:00', '7:60', '13 pm', '0 am', 'noon', '7:3', '-7', '07:30:00', '1e1'])(
	'“%s” is not guessed at',
	(typed) => expect(readClock(typed)).toBeNull()
);

test('a span is judged once, and says where', () => {
	expect(readSpan({ from: '7', to: '4 pm' }, 'Monday')).toEqual({ from: '07:00', to: '16:00' });
	expect(readSpan({ from: '7', to: '' }, 'Monday')).toMatchObject({ at: 'to' });
	expect(readSpan({ from: 'x', to: '16:00' }, 'Monday')).toMatchObject({ at: 'from' });
	expect(readSpan({ from: '16:00', to: '7:00' }, 'Monday')).toMatchObject({
		at: 'to',
		error: 'Monday ends at 07:00; accepted: a time after 16:00.'
	});
});
