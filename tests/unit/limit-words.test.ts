import { expect, test } from 'vitest';
import { limitWords } from '../../src/lib/core/plan/limit-words';

test('a limit is said in words and in the shop’s units', () => {
	const message = 'thicknessMm is 107.57647058823531; accepted: 0.05 to 100';
	expect(limitWords(message, 'SI')).toBe('thickness is 108 mm; accepted: 0.05 mm to 100 mm');
	// 107.576 mm / 25.4, the international inch.
	expect(limitWords(message, 'US')).toMatch(/^thickness is 4\.24 in; accepted: .* in to 3\.94 in$/);
	expect(limitWords('wallHeightMm is 5; accepted: 10 to 1e+4', 'SI')).toBe(
		'wall height is 5 mm; accepted: 10 mm to 10 m'
	);
});

test('a sentence of another form stays as it is', () => {
	const message = 'number of parts is 9; accepted: 1 to 3';
	expect(limitWords(message, 'US')).toBe(message);
});
