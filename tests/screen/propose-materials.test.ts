import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { choicesSchema } from '../../src/routes/jobs/new/choices';
import { proposeMaterials } from '../../src/routes/jobs/new/propose-materials';
import { readChoices } from '../../src/routes/jobs/new/read-choices';
import { instantOf, nextShiftStart, wallClock } from '../../src/routes/jobs/new/shop-clock';
import { detailInputs, testInputs, testSheet, testSheets, testShop } from '../fixtures/materials';

const library = Object.values(testSheets);
const NOW = '2026-11-28T12:00:00.000Z';

describe('proposed materials', () => {
	test.each([
		['coarse', testInputs().pattern],
		['fine', detailInputs().pattern]
	])('give a %s pattern a plan that can be accepted', (_, pattern) => {
		const choices = choicesSchema.parse({ pattern: 'p' });
		const { inputs } = readChoices({ choices, shop: testShop, pattern, library, now: NOW });
		if (!inputs) throw new Error('nothing proposed');
		const { warnings } = makePlan(inputs);
		expect(warnings.filter(({ severity }) => severity === 'refuse')).toEqual([]);
	});

	test('include a free-flowing material when, and only when, the detail calls for it', () => {
		expect(proposeMaterials(detailInputs().pattern, library, {})?.detail?.body).toBe(
			'free-flowing'
		);
		expect(proposeMaterials(testInputs().pattern, library, {})?.detail).toBeUndefined();
	});

	test('leave a choice alone, also the choice of nothing', () => {
		const build = testSheet('brush-tin');
		const sheets = proposeMaterials(testInputs().pattern, library, { build, wax: null });
		expect(sheets?.build.id).toBe('brush-tin');
		expect(sheets?.wax).toBeUndefined();
	});

	test('are none when the library has no shell', () => {
		const shelf = library.filter(({ kind }) => kind !== 'shell');
		expect(proposeMaterials(testInputs().pattern, shelf, {})).toBeNull();
	});
});

describe('choices in an address', () => {
	const read = (query: Record<string, string>) =>
		readChoices({
			choices: choicesSchema.parse({ pattern: 'p', ...query }),
			shop: testShop,
			pattern: testInputs().pattern,
			library,
			now: NOW
		});

	test('give the same plan each time they are read before the next shift', () => {
		expect(read({}).inputs).toEqual(read({}).inputs);
		expect(read({}).startAt).toBe('2026-11-30T13:30:00.000Z');
	});

	test.each(['-2', '0', 'NaN', '1e308', 'thick', '<i>4</i>'])(
		'with a thickness of "%s" name the field and give no inputs',
		(gloveThicknessMm) => {
			const { inputs, errors } = read({ gloveThicknessMm });
			expect(inputs).toBeNull();
			expect(errors.gloveThicknessMm).toContain('accepted');
		}
	);

	test('that name a sheet or a time that is not there say so', () => {
		expect(read({ build: 'no-such' }).errors.build).toContain('not in the library');
		expect(read({ start: '2026-02-30T07:00' }).errors.start).toContain('accepted');
	});
});

describe('the shop’s clock', () => {
	test('goes to an instant and back', () => {
		const at = instantOf('2026-11-30T07:30', 'America/Chicago');
		expect(at).toBe('2026-11-30T13:30:00.000Z');
		expect(wallClock(at ?? '', 'America/Chicago')).toBe('2026-11-30T07:30');
	});

	test('begins the next shift after a weekend on Monday', () => {
		expect(nextShiftStart(testShop, NOW)).toBe('2026-11-30T13:30:00.000Z');
	});
});
