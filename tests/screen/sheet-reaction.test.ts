import { describe, expect, test } from 'vitest';
import { sheetContradictions } from '../../src/lib/core/materials/contradictions';
import { sheetSchema, type Sheet } from '../../src/lib/core/materials/sheet';
import { draftOfSheet } from '../../src/lib/screen/material/draft-of-sheet';
import { readSheet } from '../../src/lib/screen/material/read-sheet';
import { withRows } from '../../src/lib/screen/material/sheet-draft';
import { sheetLabel } from '../../src/lib/screen/material/sheet-groups';
import { getSheet, saveSheet } from '../../src/lib/server/sheets.repository';
import { testStore } from '../fixtures/test-store';
import { testSheets } from '../fixtures/materials';

const base = testSheets['brush-80'];
if (!base) throw new Error('no test sheet brush-80');
const sheet: Sheet = sheetSchema.parse({
	...base,
	volatiles: [
		{ substance: 'stoddard solvent', fraction: 0.125 },
		{ substance: 'xylene', fraction: 0.01 }
	],
	heatJPerG: 62.5,
	specificHeatJPerGK: 1.85
});
const kept = { id: sheet.id, retired: sheet.retired };

describe('what evaporates from a material, and the heat of its cure', () => {
	test.each(['SI', 'US'] as const)(
		'come back in %s as they were kept, and so from the store',
		async (system) => {
			const read = readSheet(draftOfSheet(sheet, system), system, kept);
			expect(read.errors).toEqual({});
			expect(read.sheet).toEqual(sheet);
			const db = await testStore();
			await saveSheet(db, sheet);
			expect(await getSheet(db, sheet.id)).toEqual(sheet);
		}
	);

	test('“nothing evaporates” is kept apart from saying nothing', () => {
		const nothing = { ...sheet, volatiles: [] };
		expect(readSheet(draftOfSheet(nothing, 'SI'), 'SI', kept).sheet).toEqual(nothing);
		expect(readSheet(draftOfSheet(base, 'SI'), 'SI', kept).sheet).toEqual(base);
		const both = { ...draftOfSheet(sheet, 'SI'), hasNoVolatiles: 'on' };
		expect(readSheet(both, 'SI', kept).errors.hasNoVolatiles).toContain('accepted');
	});

	test.each([
		['heatJPerG', 'hot', 'a number such as 12.5 J/g'],
		['heatJPerG', '2000', '1,000 J/g or less'],
		['specificHeatJPerGK', '0.1', '0.5 J/(g·K) or more']
	] as const)('%s as "%s" is refused: %s', (field, typed, says) => {
		const draft = { ...draftOfSheet(sheet, 'SI'), [field]: typed };
		expect(readSheet(draft, 'SI', kept).errors[field]).toContain(says);
	});

	test('an error stands in the row that it was typed in, with blank rows above it', () => {
		const draft = {
			...draftOfSheet(sheet, 'SI'),
			volatiles: [
				{ substance: '', fraction: '' },
				{ substance: 'xylene', fraction: '140' },
				{ substance: '', fraction: '3' }
			],
			kits: [
				{ name: '', massG: '', price: '' },
				{ name: 'Pail', massG: 'heavy', price: '90' }
			]
		};
		const { errors } = readSheet(draft, 'SI', kept);
		expect(errors['volatiles.1.fraction']).toContain('100% or less');
		expect(errors['volatiles.2.substance']).toContain('accepted');
		expect(errors['kits.1.massG']).toContain('not a number');
		expect(sheetLabel('volatiles.1.fraction')).toBe('What evaporates 2, share');
	});

	test('shares of more than the whole contradict one another', () => {
		const off = {
			...sheet,
			volatiles: [
				{ substance: 'ethanol' as const, fraction: 0.7 },
				{ substance: 'acetone' as const, fraction: 0.4 }
			]
		};
		expect(sheetContradictions(off)).toMatchObject([
			{ field: 'volatiles.0.fraction', expectedValue: 1 }
		]);
		expect(sheetContradictions(sheet)).toEqual(sheetContradictions(base));
	});

	test('rows are added and taken away, six at most', () => {
		let draft = draftOfSheet(base, 'SI');
		for (let i = 0; i < 8; i += 1) draft = withRows(draft, 'add volatile');
		expect(draft.volatiles).toHaveLength(6);
		expect(withRows(draft, 'remove volatile 5').volatiles).toHaveLength(5);
	});
});
