import { expect, test } from 'vitest';
import { offPart } from '../../src/lib/core/process/cup-check';
import { isReadShort } from '../../src/lib/core/process/read-short';

const of = (...fractions: Array<[string, number]>) => ({
	fractions: fractions.map(([part, fraction]) => ({ part, fraction })),
	toleranceFraction: 0.02
});

// Arithmetic: of two parts the second is held against the first, 128.5 / 313.7 against 41 / 100.
test('too little of a part reads with a minus, too much with a plus', () => {
	const batch = of(['B', 100 / 141], ['A', 41 / 141]);
	const off = (a: number) => offPart(batch, { B: 313.7, A: a }, ['B', 'A']);
	expect(off(128.5)?.part).toBe('A');
	expect(off(128.5)?.fraction).toBeCloseTo(-0.00091, 5);
	expect(off(131.2)?.fraction).toBeCloseTo(0.0201, 4);
});

test('of three parts the one over-poured most is named', () => {
	const batch = of(['A', 0.5], ['B', 0.3], ['C', 0.2]);
	expect(offPart(batch, { A: 50, B: 33, C: 20 }, ['A', 'B', 'C'])).toMatchObject({ part: 'B' });
});

test('one part alone, or a missing one, is off nothing', () => {
	expect(offPart(of(['A', 1]), { A: 10 }, ['A'])).toBeNull();
	expect(offPart(of(['A', 0.5], ['B', 0.5]), { A: 10 }, ['A', 'B'])).toBeNull();
});

// A third of its reading time: common practice, no source.
test('a text of four minutes was hardly read in one, and nothing is said where nobody measured', () => {
	expect(isReadShort({ openS: 60, readMin: 4 })).toBe(true);
	expect(isReadShort({ openS: 100, readMin: 4 })).toBe(false);
	expect(isReadShort({ openS: null, readMin: 4 })).toBe(false);
});
