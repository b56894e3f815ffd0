import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { readQuery } from '../../src/routes/jobs/new/choices';
import { materialForm } from '../../src/routes/jobs/new/material-form';
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
		const choices = readQuery(new URLSearchParams({ pattern: 'p' }));
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

describe('a library with nothing that fits', () => {
	test('still proposes, says at the place why it is refused, and marks it so in the list', () => {
		const pattern = { ...testInputs().pattern, material: 'sulfur clay' as const };
		const build = testSheet('brush-platinum');
		const shelf = library.filter(({ kind, id }) => kind !== 'glove' || id === build.id);
		const choices = readQuery(new URLSearchParams({ pattern: 'p' }));
		const sheets = proposeMaterials(pattern, shelf, {});
		const { slots } = materialForm({ pattern, sheets, library: shelf, choices });
		const glove = slots.find(({ slot }) => slot === 'build');
		expect(glove).toMatchObject({
			value: build.id,
			isProposed: true,
			refused: 'does not cure here',
			options: [{ label: `${build.name} (refused: does not cure here)` }]
		});
		expect(slots.find(({ slot }) => slot === 'shell')?.refused).toBeNull();
	});
});

describe('choices in an address', () => {
	const read = (query: Record<string, string>, shelf = library) =>
		readChoices({
			choices: readQuery(new URLSearchParams({ pattern: 'p', ...query })),
			shop: testShop,
			pattern: testInputs().pattern,
			library: shelf,
			now: NOW
		});

	test('carry a cold pattern, the age of lots and additions into the plan', () => {
		const dated = library.map((sheet) => ({ ...sheet, shelfLifeDays: 365 }));
		const query = {
			surfaceTemperatureC: '16',
			'made.build': '2026-05-30',
			'additions.0.to': '',
			'additions.1.to': 'build',
			'additions.1.name': 'Thickener',
			'additions.1.partsPerHundred': '2'
		};
		const { inputs, errors } = read(query, dated);
		expect(errors).toEqual({});
		expect(inputs).toMatchObject({
			surfaceTemperatureC: 16,
			lots: [{ materialId: inputs?.materials.build.id, madeAt: '2026-05-30T05:00:00.000Z' }],
			additions: [{ to: 'build', name: 'Thickener', partsPerHundred: 2 }]
		});
		if (!inputs) throw new Error('no inputs');
		const plan = makePlan(inputs);
		expect(plan.room?.surfaceC).toBe(16);
		expect(plan.additions?.[0]?.totalG).toBeGreaterThan(0);
		const line = plan.order.find(({ shelf }) => shelf && !shelf.isAssumedFresh);
		expect(line?.name).toBe(inputs.materials.build.name);
	});

	test('left blank, none of them are in the inputs', () => {
		const { inputs } = read({ 'additions.0.to': '', 'made.build': '', surfaceTemperatureC: ' ' });
		if (!inputs) throw new Error('no inputs');
		for (const key of ['lots', 'additions', 'surfaceTemperatureC'])
			expect(inputs).not.toHaveProperty(key);
	});

	test.each([
		['surfaceTemperatureC', '90', '60 °C or less'],
		['made.build', '2027-01-01', 'made after the start'],
		['made.build', '2026-02-30', 'not a day'],
		['additions.0.partsPerHundred', '250', '100 or less'],
		['additions.0.partsPerHundred', 'some', 'not a number'],
		['additions.0.name', 'x'.repeat(200), '120']
	])('%s as "%s" gives no inputs and says: %s', (field, typed, says) => {
		const addition: Record<string, string> = field.startsWith('additions')
			? { 'additions.0.to': 'build', 'additions.0.name': 'Dye', 'additions.0.partsPerHundred': '1' }
			: {};
		const { inputs, errors } = read({ ...addition, [field]: typed });
		expect(inputs).toBeNull();
		expect(errors[field]).toContain(says);
	});

	test('an addition half said is asked for', () => {
		const { errors } = read({ 'additions.0.name': 'Dye' });
		expect(errors['additions.0.to']).toContain('accepted');
		expect(errors['additions.0.partsPerHundred']).toContain('accepted');
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

describe('a data sheet chosen by a link', () => {
	const retired = { ...testSheet('brush-tin'), id: 'old-tin', retired: true };
	const read = (query: Record<string, string>) =>
		readChoices({
			choices: readQuery(new URLSearchParams({ pattern: 'p', ...query })),
			shop: testShop,
			pattern: testInputs().pattern,
			library: [...library, retired],
			now: NOW
		});

	test('that is retired is named at its place, and gives no plan', () => {
		const { inputs, errors } = read({ build: 'old-tin' });
		expect(inputs).toBeNull();
		expect(errors.build).toContain(`${retired.name}” is retired`);
	});

	test('that belongs in another place is not taken', () => {
		const { inputs, errors } = read({ shell: 'brush-tin' });
		expect(inputs).toBeNull();
		expect(errors.shell).toContain('not in the library');
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
