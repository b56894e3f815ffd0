import { expect, test } from 'vitest';
import { inSpokenUnits, spokenStep } from '$lib/screen/bench/spoken-step';

const NOW = '2026-11-25T16:20:00.000Z';
const later = (minutes: number) => new Date(Date.parse(NOW) + minutes * 60_000).toISOString();
const step = {
	title: 'Build coat 2',
	what: 'Press a gloved fingertip and lift.',
	amounts: [
		{ label: 'B', text: '209.7 g' },
		{ label: 'A', text: '168 g' }
	],
	window: { label: 'Recoat window', opensAt: later(-30), closesAt: later(62) },
	hurts: ['Isocyanate', 'Gloves']
};

test('a step is said as where, what, how much, until when, what hurts', () => {
	expect(spokenStep(step, NOW)).toBe(
		'Build coat 2. Press a gloved fingertip and lift. B: 209.7 grams. A: 168 grams. ' +
			'Recoat window: 1 hour 2 minutes left. Take care: Isocyanate, Gloves.'
	);
});

test.each([
	[{ opensAt: later(20), closesAt: later(60) }, 'test in 20 minutes'],
	[{ opensAt: later(-1), closesAt: null }, 'it is time'],
	[{ opensAt: later(-60), closesAt: later(-1) }, 'over']
])('the window %o is said as "%s"', (times, words) => {
	const said = spokenStep({ ...step, window: { label: 'Recoat window', ...times } }, NOW);
	expect(said).toContain(`Recoat window: ${words}.`);
});

test('units are said in words, and letters that are no unit are left alone', () => {
	expect(inSpokenUnits('2.5 mm at 23 °C for 45 min, 12 g of 3 kg, 40%')).toBe(
		'2.5 millimeters at 23 degrees Celsius for 45 minutes, 12 grams of 3 kilograms, 40 percent'
	);
	expect(inSpokenUnits('part 2 goes on')).toBe('part 2 goes on');
});
