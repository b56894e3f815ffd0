import { describe, expect, test } from 'vitest';
import type { Pattern } from '../../src/lib/core/geometry/pattern';
import {
	pairProblems,
	releaseNeed,
	type ChosenSheets
} from '../../src/lib/core/materials/compatibility';
import { sheetContradictions } from '../../src/lib/core/materials/contradictions';
import { briefingsFor, hazardsOf, ppeFor } from '../../src/lib/core/materials/hazards';
import { assumedHazards } from '../../src/lib/core/materials/usual-hazards';
import { weightRatio } from '../../src/lib/core/materials/mix-ratio';
import { sheetSchema } from '../../src/lib/core/materials/sheet';
import { testInputs, testSheet, testSheets } from '../fixtures/materials';

const { pattern, materials } = testInputs();
const found = (patternOver: Partial<Pattern>, sheets: Partial<ChosenSheets>) =>
	pairProblems({ ...pattern, ...patternOver }, { ...materials, ...sheets });
const codes = (...args: Parameters<typeof found>) =>
	found(...args).map(({ code, severity }) => `${severity} ${code}`);

describe('the test sheets', () => {
	test.each(Object.values(testSheets))('$id is a sheet, and holds together', (sheet) => {
		expect(sheetSchema.parse(sheet)).toEqual(sheet);
		expect(sheetContradictions(sheet)).toEqual([]);
	});
});

describe('a sheet that contradicts itself', () => {
	const sheet = testSheet('brush-80');
	const parts = (a: number, b: number) => [
		{ part: 'A', densityGPerMl: a },
		{ part: 'B', densityGPerMl: b }
	];

	test('1:1 by volume and 80:100 by weight mean ρA/ρB = 0.80 (common practice, no source)', () => {
		const wrong = { ...sheet, parts: parts(1.28, 1.28), mixedDensityGPerMl: 1.28 };
		const [problem] = sheetContradictions(wrong);
		expect(problem?.message).toContain('0.8 times as dense');
		expect(problem?.field).toMatch(/densityGPerMl|ratioBy/);
	});

	test('1:3 by volume and 41:100 by weight mean ρA/ρB = 1.23 (common practice, no source)', () => {
		const wrong = { ...testSheet('paste-9'), parts: parts(0.95, 0.95), mixedDensityGPerMl: 0.95 };
		expect(sheetContradictions(wrong)[0]?.message).toContain('1.23 times as dense');
	});

	test('the ratio that the mixed density speaks against is the one that is named', () => {
		const wrong = { ...sheet, ratioByWeight: [100, 80] };
		expect(sheetContradictions(wrong)[0]).toMatchObject({
			field: 'ratioByWeight',
			statedValue: 80,
			expectedValue: expect.closeTo(125, 9)
		});
	});

	test.each([
		[
			'a mixed density that the parts do not give',
			{ mixedDensityGPerMl: 1.4 },
			'mixedDensityGPerMl'
		],
		[
			'a window that shuts before it opens',
			{ recoatCloses: { timeS: 600, atC: 23 } },
			'recoatCloses.timeS'
		],
		[
			'a pot life shorter than the mixing',
			{ potLife: { timeS: 100, massG: 100, atC: 23 } },
			'potLife.timeS'
		],
		['demolding before tack-free', { demold: { timeS: 60, atC: 23 } }, 'demold.timeS'],
		['three numbers for two parts', { ratioByWeight: [1, 2, 3] }, 'ratioByWeight'],
		['a range upside down', { useTemperature: { minC: 30, maxC: 18 } }, 'useTemperature.maxC']
	])('%s', (_what, over, field) => {
		expect(sheetContradictions({ ...sheet, ...over }).map((c) => c.field)).toContain(field);
	});
});

describe('how a sheet is weighed', () => {
	test('by weight as it says; by volume with the densities; not at all without them', () => {
		const sheet = testSheet('paste-9');
		expect(weightRatio(sheet)).toEqual([41, 100]);
		const byVolume = { ...sheet, ratioByWeight: undefined };
		const [a = 0, b = 0] = weightRatio(byVolume) ?? [];
		expect(a / b).toBeCloseTo(0.41, 3);
		expect(weightRatio({ ...byVolume, parts: [{ part: 'A' }, { part: 'B' }] })).toBeNull();
		expect(weightRatio(testSheet('paste-wax'))).toEqual([1]);
	});
});

describe('who gets along with whom (common practice, no source)', () => {
	test('the chosen set has nothing to refuse', () => {
		expect(codes({}, {}).filter((code) => code.startsWith('refuse'))).toEqual([]);
	});

	test.each<[string, Partial<Pattern>, Partial<ChosenSheets>, string]>([
		[
			'platinum silicone on sulfur clay',
			{ material: 'sulfur clay' },
			{ build: testSheet('brush-platinum') },
			'refuse inhibited'
		],
		[
			'platinum silicone on an uncured print resin',
			{ material: 'photopolymer print' },
			{ build: testSheet('brush-platinum') },
			'refuse inhibited'
		],
		[
			'tin silicone under platinum silicone',
			{},
			{ detail: testSheet('brush-tin'), build: testSheet('brush-platinum') },
			'refuse inhibited'
		],
		[
			'urethane detail under silicone',
			{},
			{ detail: testSheet('flow-urethane'), build: testSheet('brush-tin') },
			'refuse no-bond'
		],
		[
			'urethane without any release',
			{},
			{ wax: undefined, film: undefined },
			'refuse release-missing'
		],
		['urethane with wax alone', {}, { film: undefined }, 'decide release-thin'],
		['no wax for the back of the glove', {}, { wax: undefined }, 'refuse shell-release-missing'],
		[
			'silicone on silicone without release',
			{ material: 'cured silicone' },
			{ build: testSheet('brush-tin'), wax: undefined, film: undefined },
			'refuse release-missing'
		],
		[
			'polyester shell over a urethane glove',
			{},
			{ shell: testSheet('shell-polyester') },
			'warn styrene-on-glove'
		],
		[
			'laminating resin without cloth',
			{},
			{ shell: testSheet('shell-polyester') },
			'warn shell-unreinforced'
		],
		[
			'polyester cast in urethane',
			{},
			{ casting: testSheet('casting-polyester') },
			'warn casting-attacks'
		],
		[
			'silicone cast in silicone',
			{},
			{ build: testSheet('brush-tin'), casting: { ...testSheet('brush-tin'), kind: 'casting' } },
			'refuse casting-bonds'
		],
		['porous and unsealed', { porosity: 'porous' }, { sealer: undefined }, 'refuse unsealed'],
		['urethane on damp plaster', { porosity: 'porous, sealed' }, {}, 'warn damp-pattern']
	])('%s: %s', (_what, patternOver, sheets, expected) => {
		expect(codes(patternOver, sheets)).toContain(expected);
	});

	test('platinum silicone on sulfur-free clay is not refused', () => {
		const sheets = { build: testSheet('brush-platinum') };
		expect(codes({ material: 'sulfur-free clay' }, sheets)).not.toContain('refuse inhibited');
	});

	test('a silicone on a sealed pattern needs no release, a urethane always does', () => {
		for (const material of ['wood', 'plaster', 'metal', 'stone', 'wax']) {
			expect(releaseNeed({ material }, testSheet('brush-tin')).needed).toBe(false);
			expect(
				releaseNeed({ material }, { ...testSheet('brush-80'), needsRelease: false }).needed
			).toBe(true);
		}
	});

	test('the worst comes first, and nothing is said twice', () => {
		const all = found(
			{ porosity: 'porous' },
			{ wax: undefined, film: undefined, sealer: undefined }
		);
		const ranks = all.map(({ severity }) => ['refuse', 'warn', 'note'].indexOf(severity));
		expect(ranks).toEqual([...ranks].sort());
		expect(new Set(all.map(({ text }) => text)).size).toBe(all.length);
	});
});

describe('what hurts', () => {
	test('a urethane brings isocyanates, their briefing and a respirator', () => {
		const hazards = hazardsOf([testSheet('brush-80')]);
		expect(hazards).toContain('isocyanate');
		expect(briefingsFor(hazards)).toContain('isocyanates');
		expect(briefingsFor(hazards)).not.toContain('amines-and-catalysts');
		expect(ppeFor(hazards)).toEqual(
			expect.arrayContaining(['gloves', 'eye-protection', 'respirator'])
		);
	});

	test('a hazard statement counts though the sheet names no hazard', () => {
		const bare = { ...testSheet('brush-80'), hazards: [] };
		expect(hazardsOf([bare])).toContain('isocyanate');
		expect(hazardsOf([{ ...testSheet('film-pva'), hazards: [] }])).toContain('solvent');
	});

	test.each([
		['brush-80', ['isocyanate', 'sensitizer']],
		['brush-tin', ['solvent', 'sensitizer']],
		['casting-polyester', ['styrene', 'peroxide', 'solvent']],
		['film-pva', ['solvent']]
	])('%s with nothing ticked is taken to have what is usual for its family', (id, usual) => {
		const bare = { ...testSheet(id), hazardStatements: [], hazards: [] };
		expect(assumedHazards(bare)).toEqual(usual);
		expect(hazardsOf([bare])).toEqual(expect.arrayContaining(usual));
	});

	test('boxes that say nothing of the chemistry do not make a urethane harmless', () => {
		const bare = { ...testSheet('brush-80'), hazardStatements: [], hazards: ['hot-cup', 'amine'] };
		const hazards = hazardsOf([bare]);
		expect(hazards).toContain('isocyanate');
		expect(briefingsFor(hazards)).toContain('isocyanates');
		expect(ppeFor(hazards)).toContain('respirator');
	});

	test('only an SDS that excludes them takes the usual hazards away; a statement still counts', () => {
		const bare = { ...testSheet('brush-80'), hazards: [], sdsExcludesUsual: true as const };
		expect(hazardsOf([{ ...bare, hazardStatements: [] }])).not.toContain('isocyanate');
		expect(hazardsOf([{ ...bare, hazardStatements: ['H334'] }])).toContain('isocyanate');
	});

	test('a silicone that sensitizes is no isocyanate', () => {
		const hazards = hazardsOf([testSheet('brush-tin')]);
		expect(hazards).toContain('sensitizer');
		expect(hazards).not.toContain('isocyanate');
		expect(briefingsFor(hazards)).toContain('amines-and-catalysts');
	});
});
