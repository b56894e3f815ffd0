import { expect, test } from 'vitest';
import { sdsReader, withSdsReader } from '../../src/lib/core/materials/sds-reader';
import { sheetSchema, type Sheet } from '../../src/lib/core/materials/sheet';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { testInputs } from '../fixtures/materials';

const INES = { name: 'Ines Marsh', at: '2026-03-02T13:00:00Z' };
const AMIR = { name: 'Amir Quill', at: '2026-04-02T13:00:00Z' };
const { build } = testInputs().materials;
const excluding: Sheet = { ...build, hazards: [], hazardStatements: [], sdsExcludesUsual: true };

test('a sheet keeps who said that its SDS names none of the usual hazards, till that is about something else', () => {
	const first = withSdsReader(excluding, null, INES);
	expect(sheetSchema.parse(first).sdsReadBy).toEqual(INES);
	expect(sdsReader(first)).toBe('Ines Marsh, 2026-03-02');
	const again = withSdsReader({ ...excluding, name: 'Invented, renamed' }, first, AMIR);
	expect(again.sdsReadBy).toEqual(INES);
	const other = withSdsReader({ ...excluding, hazardStatements: ['H317'] }, first, AMIR);
	expect(other.sdsReadBy).toEqual(AMIR);
	// Nobody gives the word in another's name.
	expect(withSdsReader({ ...excluding, sdsReadBy: INES }, null, AMIR).sdsReadBy).toEqual(AMIR);
});

test('a sheet that no longer says so names nobody, and one of before names nobody either', () => {
	const plain = withSdsReader(excluding, null, INES);
	delete plain.sdsExcludesUsual;
	expect(withSdsReader(plain, excluding, AMIR).sdsReadBy).toBeUndefined();
	expect(sdsReader(excluding)).toBeNull();
});

test('a plan says by name on whose word it asks for no protection', () => {
	const inputs = testInputs();
	const sheet = withSdsReader(excluding, null, INES);
	const { warnings } = makePlan({ ...inputs, materials: { ...inputs.materials, build: sheet } });
	const said = warnings.find(({ code }) => code === 'hazards-excluded')?.text;
	expect(said).toContain('whoever keeps its data sheet (Ines Marsh, 2026-03-02) says');
});
