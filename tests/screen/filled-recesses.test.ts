import { expect, test } from 'vitest';
import { refilledRecesses } from '../../src/lib/screen/pattern/filled-recesses';

const texts = (narrowestRecessMm: string, deepestRecessMm: string) => ({
	narrowestRecessMm,
	deepestRecessMm
});
const blank = texts('', '');

test('what the mesh filled in follows the face that is laid down; what a person typed stays', () => {
	expect(refilledRecesses(blank, blank, texts('2.1', '6'))).toEqual(texts('2.1', '6'));
	expect(refilledRecesses(texts('2.1', '6'), texts('2.1', '6'), texts('3', '1.5'))).toEqual(
		texts('3', '1.5')
	);
	expect(refilledRecesses(texts('2.1', '9'), texts('2.1', '6'), texts('3', '1.5'))).toEqual(
		texts('3', '9')
	);
});

test('a pose without a recess, or one that is not looked at yet, leaves no size of another one', () => {
	expect(refilledRecesses(texts('2.1', '6'), texts('2.1', '6'), blank)).toEqual(blank);
	expect(refilledRecesses(texts('4', '6'), texts('2.1', '6'), blank)).toEqual(texts('4', ''));
});
