import { describe, expect, test } from 'vitest';
import { groupReadings } from '$lib/screen/read/group-readings';
import { markRound } from '$lib/screen/read/question-round';
import { readingRoom } from '$lib/screen/read/reading-room';
import { VIEWS } from '$lib/screen/read/reading';
import { plainText, searchReadings } from '$lib/screen/read/search-readings';
import { briefings, caution, glossary, lessons, steps, troubles } from '$lib/server/content';

const room = readingRoom({ briefings, caution, glossary, lessons, steps, troubles });
const readings = room.map(({ reading }) => reading);

describe('the reading room', () => {
	test.each(VIEWS)('no text is lost by %s', (view) => {
		const shown = new Set(groupReadings(readings, view).flatMap((group) => group.readings));
		expect(shown.size).toBe(readings.length);
	});

	test('what belongs nearly everywhere stands once', () => {
		const places = groupReadings(readings, 'phase').filter((group) =>
			group.readings.some(({ slug }) => slug === 'spill')
		);
		expect(places.map(({ id }) => id)).toEqual(['any']);
	});

	test('a word in the title comes before a word in the text', () => {
		const [first] = searchReadings(room, 'fingertip');
		expect(first?.reading.title.toLowerCase()).toContain('fingertip');
	});

	test('every word must be there, and the piece shown marks it', () => {
		const found = searchReadings(room, 'peroxide DUST');
		for (const { reading } of found) {
			const text = room.find((entry) => entry.reading === reading);
			const whole = `${reading.title} ${text?.text ?? ''}`.toLowerCase();
			expect(whole).toContain('peroxide');
			expect(whole).toContain('dust');
		}
		expect(searchReadings(room, 'silica')[0]?.snippet.some(({ hit }) => hit)).toBe(true);
		expect(searchReadings(room, 'zebra')).toEqual([]);
		expect(searchReadings(room, '<>(*')).toEqual([]);
	});

	test('HTML becomes the text that a reader sees', () => {
		expect(plainText('<p>a &lt;b&gt; &amp;amp; <b>c</b></p>')).toBe('a <b> &amp; c');
	});
});

describe('a round of questions', () => {
	const questions = [
		{ ask: '1', answers: ['no', 'yes'], right: 1, because: '' },
		{ ask: '2', answers: ['yes', 'no'], right: 0, because: '' },
		{ ask: '3', answers: ['yes', 'no'], right: 0, because: '' }
	];

	test('counts what is right; nothing and nonsense are not', () => {
		const round = markRound(questions, ['1', '7', null]);
		expect(round).toMatchObject({ right: 1, of: 3 });
		expect(round.marked.map(({ chosen }) => chosen)).toEqual([1, null, null]);
	});

	test('every lesson can be passed', () => {
		for (const { questions: asked } of lessons.values()) {
			const given = asked.map(({ right }) => String(right));
			expect(markRound(asked, given).right).toBe(asked.length);
		}
	});
});
