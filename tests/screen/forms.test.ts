import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coreValue, fieldText, measureOf, type MeasureId } from '../../src/lib/screen/form/measure';
import { formTree } from '../../src/lib/screen/form/form-tree';
import { readMeasured } from '../../src/lib/screen/form/read-measured';
import { limitText } from '../../src/lib/screen/form/read-entries';
import { errorLines } from '../../src/lib/screen/form/error-lines';
import { readNumber } from '../../src/lib/screen/form/read-number';
import { readSetup } from '../../src/lib/screen/form/read-setup';
import { EMPTY_SETUP } from '../../src/lib/screen/form/setup-draft';
import { draftOfPattern } from '../../src/lib/screen/pattern/draft-of-pattern';
import { emptyPattern, newSolid, withoutSolid } from '../../src/lib/screen/pattern/pattern-draft';
import { readPattern } from '../../src/lib/screen/pattern/read-pattern';
import { draftOfSheet } from '../../src/lib/screen/material/draft-of-sheet';
import { readSheet } from '../../src/lib/screen/material/read-sheet';
import { detailInputs, testSheets } from '../fixtures/materials';

const SYSTEMS = ['SI', 'US'] as const;

describe('numbers as people type them', () => {
	test.each([
		['12.5', 12.5],
		[' 1,234.5 ', 1234.5],
		['−4', -4],
		['3 1/2', 3.5],
		['3-1/2', 3.5],
		['5/8', 0.625],
		['1e3', 1000],
		['.5', 0.5]
	])('%s is read', (text, value) => expect(readNumber(text)).toBe(value));

	test.each(['', 'abc', 'NaN', 'Infinity', '1e999', '1,5', '12 mm', '0x10', '1/0', '--2', '.'])(
		'"%s" is not guessed at',
		(text) => expect(readNumber(text)).toBeNull()
	);
});

describe('units at the edge', () => {
	// NIST SP 811 (2008), appendix B: 1 in = 25.4 mm, 1 lb = 453.59237 g, all exact.
	test.each<[MeasureId, number, number]>([
		['length', 3.3, 83.82],
		['length', 10, 254],
		['mass', 2, 907.18474],
		['temperature', 212, 100],
		['area', 1, 6.4516]
	])('a US %s of %d is kept as %d', (id, typed, core) => {
		expect(coreValue(typed, measureOf(id, 'US'))).toBe(core);
	});

	test('what was typed comes back as it was typed', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 1, max: 999_999 }),
				fc.integer({ min: 0, max: 4 }),
				fc.constantFrom<MeasureId>('length', 'area', 'volume', 'mass', 'temperature', 'hours'),
				fc.constantFrom(...SYSTEMS),
				(digits, places, id, system) => {
					const typed = String(digits / 10 ** places);
					const measure = measureOf(id, system);
					expect(fieldText(coreValue(Number(typed), measure), measure)).toBe(typed);
				}
			)
		);
	});
});

// 1 ft = 12 in = 304.8 mm, exact: NIST SP 811 (2008), appendix B.
describe('lengths as people type them', () => {
	test.each([
		['6', 152.4],
		['6"', 152.4],
		['6”', 152.4],
		['6 1/2″', 165.1],
		['6 in', 152.4],
		['6 in.', 152.4],
		["1'", 304.8],
		['1\' 6"', 457.2],
		['1 ft 6 1/2 in', 469.9],
		["1'-6", 457.2],
		['15 cm', 150],
		['152.4mm', 152.4]
	])('%s in a US shop is %d mm', (text, mm) =>
		expect(readMeasured(text, measureOf('length', 'US'))).toBeCloseTo(mm, 9)
	);

	test.each(['6""', "'", 'six"', '6 kg', '6" x 4"', '1/0"'])('"%s" is not guessed at', (text) =>
		expect(readMeasured(text, measureOf('length', 'US'))).toBeNull()
	);

	test('the unit of the box may stand behind the number, another one may not', () => {
		expect(readMeasured('70 °F', measureOf('temperature', 'US'))).toBeCloseTo(21.1111, 3);
		expect(readMeasured('50%', measureOf('percent', 'SI'))).toBe(50);
		expect(readMeasured('3 lb', measureOf('grams', 'US'))).toBeNull();
	});
});

describe('what is said to be accepted', () => {
	test.each<[number, MeasureId, 'least' | 'most', string]>([
		[0.1, 'length', 'least', '0.004 in'],
		[1, 'length', 'least', '0.04 in'],
		[10_000, 'length', 'most', '393.7 in'],
		[-10, 'temperature', 'least', '14 °F'],
		[1, 'count', 'least', '1']
	])('a limit of %d (%s, %s) reads %s', (value, id, side, text) => {
		expect(limitText(value, measureOf(id, 'US'), side)).toBe(text);
	});

	test('a count is not offered half a person', () => {
		const { errors } = readPattern({ ...emptyPattern(), partsWanted: 'many' }, 'US');
		expect(errors.partsWanted).toContain('a whole number such as 2.');
	});
});

describe('the summary of errors', () => {
	test('names what stands under one label with the same words once, and leads to its field', () => {
		const both = { 'days.0.0': 'Monday is wrong.', 'days.0.1': 'Monday is wrong.', name: 'None.' };
		const named = { days: 'Monday: it ends before it begins.' };
		expect(errorLines(named, () => 'Monday')).toMatchObject([
			{ label: 'Monday', message: 'it ends before it begins.' }
		]);
		expect(errorLines(both, (path) => (path === 'name' ? 'Name' : 'Monday'))).toEqual([
			{ field: 'at-days-0-0', label: 'Monday', message: 'Monday is wrong.' },
			{ field: 'at-name', label: 'Name', message: 'None.' }
		]);
	});
});

describe('a posted form', () => {
	test('unfolds dotted names, closes gaps, and keeps nothing that could reach a prototype', () => {
		const tree = formTree([
			['a.0.x', '1'],
			['a.2.x', '2'],
			['__proto__.polluted', 'yes'],
			['constructor.prototype.polluted', 'yes'],
			['b', 'last'],
			['b.c', 'wins']
		]);
		expect(tree.a).toEqual([{ x: '1' }, { x: '2' }]);
		expect(tree.b).toEqual({ c: 'wins' });
		expect({}).not.toHaveProperty('polluted');
	});
});

describe('the pattern form', () => {
	test.each(SYSTEMS)('gives back a kept pattern unchanged, typed in %s', (system) => {
		const { pattern } = detailInputs();
		expect(readPattern(draftOfPattern(pattern, system), system).pattern).toEqual(pattern);
	});

	test.each(['-4', '0', 'NaN', '1e308', '', '<b>9</b>', '9'.repeat(10_000)])(
		'refuses "%.12s" as a height, at its field, saying what is accepted',
		(heightMm) => {
			const draft = emptyPattern();
			Object.assign(draft, { name: 'Cap', partsWanted: '1' });
			draft.body.solids = [{ ...newSolid([]), lengthMm: '100', widthMm: '100', heightMm }];
			const { pattern, errors } = readPattern(draft, 'SI');
			expect(pattern).toBeNull();
			expect(Object.keys(errors)).toEqual(['body.solids.0.heightMm']);
			expect(errors['body.solids.0.heightMm']).toMatch(/accepted: .*(mm|number)/);
			expect(errors['body.solids.0.heightMm']?.length).toBeLessThan(160);
		}
	);

	test('speaks of limits in inches in a US shop', () => {
		const draft = emptyPattern();
		draft.body.solids = [{ ...newSolid([]), lengthMm: '4', widthMm: '4', heightMm: '500' }];
		const { errors } = readPattern(draft, 'US');
		expect(errors['body.solids.0.heightMm']).toContain('393.7 in or less');
	});

	test('refuses a name of 10,000 characters and names the limit', () => {
		const draft = { ...emptyPattern(), name: 'x'.repeat(10_000) };
		expect(readPattern(draft, 'SI').errors.name).toBe(
			'10,000 characters are too many; accepted: up to 120 characters.'
		);
	});

	test('lets what stood on a removed solid come down', () => {
		const first = newSolid([]);
		const second = newSolid([first]);
		const third = newSolid([first, second]);
		const left = withoutSolid([first, second, third], second);
		expect(left.map(({ on }) => on)).toEqual(['board', first.id]);
	});
});

describe('the data sheet form', () => {
	test.each(
		SYSTEMS.flatMap((system) => Object.keys(testSheets).map((id) => [id, system] as const))
	)('gives back %s unchanged, typed in %s', (id, system) => {
		const sheet = testSheets[id];
		if (!sheet) throw new Error(`no test sheet ${id}`);
		const kept = { id: sheet.id, retired: sheet.retired };
		const read = readSheet(draftOfSheet(sheet, system), system, kept);
		expect(read.errors).toEqual({});
		expect(read.sheet).toEqual(sheet);
	});

	test('flags the number that is off, at its field', () => {
		const sheet = testSheets['brush-80'];
		if (!sheet) throw new Error('no test sheet brush-80');
		const draft = draftOfSheet(sheet, 'SI');
		draft.mixedDensityGPerMl = '1.6';
		const { flags } = readSheet(draft, 'SI', { id: 'x', retired: false });
		expect(flags.mixedDensityGPerMl).toContain('1.6');
	});

	test('names the hazard code that is none', () => {
		const sheet = testSheets['brush-80'];
		if (!sheet) throw new Error('no test sheet brush-80');
		const draft = { ...draftOfSheet(sheet, 'SI'), hazardStatements: 'H317, <script>' };
		const { errors } = readSheet(draft, 'SI', { id: 'x', retired: false });
		expect(errors.hazardStatements).toContain('<script>');
	});
});

describe('setting up a shop', () => {
	test('takes the proposed week and a name', () => {
		const { shop, errors } = readSetup({ ...EMPTY_SETUP, name: 'Cove shop' });
		expect(errors).toEqual({});
		expect(shop?.shifts).toHaveLength(5);
		expect(shop?.units).toBe('US');
	});

	test('takes a currency in small letters, and hours as people type them', () => {
		const typed = { ...EMPTY_SETUP, name: 'A', currency: ' usd ' };
		const shifts = [{ from: '7', to: '4 pm' }];
		const { shop } = readSetup({ ...typed, shifts });
		expect(shop?.currency).toBe('USD');
		expect(shop?.shifts).toEqual([{ weekday: 1, from: '07:00', to: '16:00' }]);
	});

	test('counts a wrong day once', () => {
		const shifts = EMPTY_SETUP.shifts.map((day, i) => (i === 0 ? { from: '7', to: '7' } : day));
		expect(Object.keys(readSetup({ ...EMPTY_SETUP, name: 'A', shifts }).errors)).toEqual([
			'shifts.0.to'
		]);
	});

	test('says which day ends before it begins, and that a week needs a day', () => {
		const late = EMPTY_SETUP.shifts.map((day, i) =>
			i === 2 ? { from: '16:00', to: '07:00' } : day
		);
		expect(readSetup({ ...EMPTY_SETUP, name: 'A', shifts: late }).errors['shifts.2.to']).toContain(
			'Wednesday'
		);
		expect(readSetup({ ...EMPTY_SETUP, name: 'A', shifts: [] }).errors.shifts).toContain('one day');
	});
});
