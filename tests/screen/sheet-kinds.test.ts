import type { ComponentProps } from 'svelte';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { fitToKind, isAsked, usedAs } from '../../src/lib/screen/material/kind-fields';
import { draftOfSheet } from '../../src/lib/screen/material/draft-of-sheet';
import { readSheet } from '../../src/lib/screen/material/read-sheet';
import SheetFields from '../../src/lib/screen/material/SheetFields.svelte';
import { emptySheet } from '../../src/lib/screen/material/sheet-draft';
import { linkedProblem } from '../../src/routes/jobs/new/problem-link';
import { testSheets } from '../fixtures/materials';

const kept = { id: 'x', retired: false };
const named = { ...emptySheet(), name: 'N', maker: 'M', mixedDensityGPerMl: '0.9' };

function brush() {
	const sheet = testSheets['brush-80'];
	if (!sheet) throw new Error('no test sheet brush-80');
	return sheet;
}

describe('a sheet has the fields of its kind', () => {
	test.each(['wax', 'film', 'sealer', 'reinforcement'])('%s begins with one part', (kind) => {
		const families = { reinforcement: 'glass fiber', film: 'polyvinyl alcohol' };
		const family = families[kind as keyof typeof families] ?? 'paste wax';
		const { sheet, errors } = readSheet({ ...named, kind, family, body: 'paste' }, 'SI', kept);
		expect(errors).toEqual({});
		expect(sheet?.parts).toEqual([{ part: 'A' }]);
	});

	test('a tin of wax that states no density is kept all the same; a glove is not', () => {
		const tin = { ...named, family: 'paste wax', body: 'paste', mixedDensityGPerMl: '' };
		expect(readSheet({ ...tin, kind: 'wax' }, 'SI', kept).sheet?.mixedDensityGPerMl).toBe(1);
		const stated = { ...tin, kind: 'wax', mixedDensityGPerMl: '0.8' };
		expect(readSheet(stated, 'SI', kept).sheet?.mixedDensityGPerMl).toBe(0.8);
		const { errors } = readSheet(
			{ ...draftOfSheet(brush(), 'SI'), mixedDensityGPerMl: '' },
			'SI',
			kept
		);
		expect(Object.keys(errors)).toEqual(['mixedDensityGPerMl']);
	});

	test('a glove asks for pot life, a wax for what one coat takes', () => {
		expect(isAsked(named, 'potLife')).toBe(true);
		expect(isAsked(named, 'spreadGPerM2')).toBe(false);
		const wax = { ...named, kind: 'wax' };
		expect(isAsked(wax, 'potLife')).toBe(false);
		expect(isAsked(wax, 'spreadGPerM2')).toBe(true);
	});

	test('what was entered is not lost by choosing another kind', () => {
		const wax = { ...draftOfSheet(brush(), 'SI'), kind: 'wax' };
		expect(isAsked(wax, 'potLife')).toBe(true);
		expect(fitToKind(wax)).toEqual(wax);
	});

	test('there and back again there are two parts', () => {
		const wax = fitToKind({ ...named, kind: 'wax' });
		expect(fitToKind({ ...wax, kind: 'glove' }).parts).toEqual(named.parts);
	});
});

describe('what no mold can be planned with is refused at the sheet', () => {
	test('parts without a ratio, at the ratio', () => {
		const draft = {
			...draftOfSheet(brush(), 'SI'),
			ratioByWeight: ['', ''],
			ratioByVolume: ['', '']
		};
		const { sheet, errors } = readSheet(draft, 'SI', kept);
		expect(sheet).toBeNull();
		expect(Object.keys(errors)).toEqual(['ratioByWeight.0']);
	});

	test('a glove without a pot life, at its time', () => {
		const blank = { timeS: '', massG: '', atC: '' };
		const draft = { ...draftOfSheet(brush(), 'SI'), potLife: blank };
		expect(Object.keys(readSheet(draft, 'SI', kept).errors)).toEqual(['potLife.timeS']);
	});
});

test('a recoat window that shuts before it opens is not kept', () => {
	const draft = draftOfSheet(brush(), 'SI');
	// The one is typed in minutes, the other in hours.
	const opens = { ...draft.tackFree, timeS: '45', atC: '23' };
	const shut = { ...draft, tackFree: opens, recoatCloses: { ...opens, timeS: '0.5' } };
	const { sheet, errors, flags } = readSheet(shut, 'SI', kept);
	expect(sheet).toBeNull();
	expect(errors['recoatCloses.timeS']).toMatch(/shuts before it opens/);
	// One place says it, and not that the sheet can be kept as it is.
	expect(flags['recoatCloses.timeS']).toBeUndefined();
	expect(readSheet(draft, 'SI', kept).sheet).not.toBeNull();
});

test('a kit whose price nobody knows is kept without one', () => {
	const draft = draftOfSheet(brush(), 'SI');
	const kits = [{ name: '2 kg kit', massG: '2000', price: '' }];
	expect(readSheet({ ...draft, kits }, 'SI', kept).sheet?.kits).toEqual([
		{ name: '2 kg kit', massG: 2000, price: 0 }
	]);
});

test('what saving asks for is not marked optional, and what another field makes up for is', () => {
	const optional = (over: object): string[] => {
		const draft = { ...draftOfSheet(brush(), 'SI'), ...over };
		const given = { draft, system: 'SI', currency: 'USD', errors: {}, onrows: () => undefined };
		const { body } = render(SheetFields, { props: given as ComponentProps<typeof SheetFields> });
		const fields = body.replace(/<!--.*?-->/g, '').split('class="field');
		return fields
			.filter((field) => field.includes('class="optional'))
			.flatMap((field) => / name="([^"]+)"/.exec(field)?.[1] ?? []);
	};
	const byWeight = optional({ ratioByVolume: ['', ''] });
	for (const name of ['ratioByWeight.0', 'potLife.timeS', 'potLife.massG', 'potLife.atC']) {
		expect(byWeight).not.toContain(name);
	}
	expect(byWeight).toContain('ratioByVolume.0');
	expect(optional({ ratioByVolume: ['1', '1'] })).toContain('ratioByWeight.0');
	expect(optional({ kind: 'casting' })).toContain('potLife.timeS');
});

test('a problem of a sheet leads to that sheet, by its name', () => {
	const wax = { ...brush(), id: 'wax-1', name: 'Bench wax' };
	const sheets = { build: brush(), shell: brush(), casting: brush(), wax };
	const problem = { path: 'materials.wax.ratioByWeight', message: 'No ratio.' };
	expect(linkedProblem(problem, { sheets, pattern: null })).toEqual({
		message: 'No ratio.',
		link: { href: '/materials/wax-1', text: 'Wax: open the data sheet of Bench wax' }
	});
	expect(
		linkedProblem({ path: 'people', message: 'x' }, { sheets, pattern: null }).link
	).toBeNull();
});

test('a sheet of another use keeps no family or body that this use does not know', () => {
	const wax = usedAs(emptySheet(), 'wax');
	expect([wax.family, wax.body]).toEqual(['paste wax', 'paste']);
	const shell = usedAs(emptySheet(), 'shell');
	expect([shell.family, shell.body]).toEqual(['urethane', '']);
	const sealer = usedAs({ ...emptySheet(), family: 'tin silicone' }, 'sealer');
	expect([sealer.family, sealer.body]).toEqual(['', 'liquid']);
	const { sheet, errors } = readSheet({ ...named, ...shell }, 'SI', kept);
	expect(sheet).toBeNull();
	expect(errors.body).toBe('Nothing is chosen; accepted: one of the list.');
});

test('a wax that is said to be a urethane is refused, with what a wax can be', () => {
	const { errors } = readSheet(
		{ ...named, kind: 'wax', family: 'urethane', body: 'paste' },
		'SI',
		kept
	);
	expect(errors.family).toMatch(
		/^Nothing of the family urethane is used as a wax; accepted: paste wax\.$/
	);
});
