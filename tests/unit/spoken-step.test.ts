import { expect, test } from 'vitest';
import { withCustomary } from '$lib/core/quantity/with-customary';
import { spokenStep } from '$lib/screen/bench/spoken-step';
import { inSpokenUnits } from '$lib/screen/bench/spoken-units';

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
	[{ opensAt: later(-60), closesAt: later(-1) }, 'over'],
	[{ opensAt: later(15), closesAt: later(5) }, '5 minutes left'],
	[{ opensAt: later(5), closesAt: later(-5) }, 'over']
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

test('what a shop in US customary units reads on the screen is said in words throughout', () => {
	const shown = withCustomary('Coat 2 mm of part 2 in the frame, from 30 mL at 20 to 25 °C.', 'US');
	expect(inSpokenUnits(shown)).toBe(
		'Coat 0.0787 inches (2 millimeters) of part 2 in the frame, ' +
			'from 1.01 fluid ounces (30 milliliters) ' +
			'at 68 degrees Fahrenheit to 77 degrees Fahrenheit (20 to 25 degrees Celsius).'
	);
});

test.each([
	['Stir for 1 min.', 'Stir for 1 minute.'],
	['Wait 1 h 1 s, or 1 d', 'Wait 1 hour 1 second, or 1 day'],
	['1 in, 1 ft, 1 lb', '1 inch, 1 foot, 1 pound'],
	['0.1 g, 1.1 g and 21 g', '0.1 grams, 1.1 grams and 21 grams'],
	['12 lb, 3.5 oz and 8 ft', '12 pounds, 3.5 ounces and 8 feet'],
	['0.12 in. Then 4 in 1 bowl, 2 in.', '0.12 inches. Then 4 in 1 bowl, 2 inches.'],
	['12 g/mL, 5 gr, 2 inserts', '12 g/mL, 5 gr, 2 inserts']
])('"%s" is said as "%s"', (shown, said) => {
	expect(inSpokenUnits(shown)).toBe(said);
});
