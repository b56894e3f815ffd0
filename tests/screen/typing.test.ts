import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { choiceAt, choiceLabel, readQuery } from '../../src/routes/jobs/new/choices';
import { Typing } from '../../src/routes/jobs/new/typing.svelte';

class Input extends EventTarget {
	constructor(
		readonly name: string,
		readonly value: string
	) {
		super();
	}
}
/** An event of a field, as the form hears it. */
const of = (name: string, value: string): Event =>
	Object.defineProperty(new Event('input'), 'target', { value: new Input(name, value) });

beforeEach(() => vi.stubGlobal('HTMLInputElement', Input));
afterEach(() => vi.unstubAllGlobals());

test('the answer to one field leaves what is being typed in another', () => {
	const typing = new Typing();
	typing.type(of('gloveThicknessMm', '9'));
	typing.enter(of('gloveThicknessMm', '9'));
	typing.type(of('shellThicknessMm', '6'));
	// The address now holds the first; the second was never asked for.
	typing.answered(true);
	expect(typing.shown('gloveThicknessMm', '9')).toBe('9');
	expect(typing.shown('shellThicknessMm', '')).toBe('6');
	// From here on the address speaks for the first again.
	expect(typing.shown('gloveThicknessMm', '7')).toBe('7');
});

test('a link to other choices takes what was typed along', () => {
	const typing = new Typing();
	typing.type(of('shellThicknessMm', '6'));
	typing.answered(false);
	expect(typing.shown('shellThicknessMm', '12')).toBe('12');
});

test('every field of the form is found in the address by its name, and has a label', () => {
	const choices = readQuery(
		new URLSearchParams('people=2&made.wax=2026-05-30&additions.0.name=Pigment')
	);
	expect(choiceAt(choices, 'people')).toBe('2');
	expect(choiceAt(choices, 'made.wax')).toBe('2026-05-30');
	expect(choiceAt(choices, 'additions.0.name')).toBe('Pigment');
	expect(choiceAt(choices, 'additions.1.name')).toBe('');
	expect(['people', 'made.wax', 'start', 'wax', 'additions.0.name'].map(choiceLabel)).toEqual([
		'People',
		'Wax: lot made on',
		'Start',
		'Wax',
		'Additions to a mix'
	]);
});
