import { describe, expect, it, test } from 'vitest';
import { HAZARD_IDS } from '$lib/core/content/vocabulary';
import { readDemo } from '$lib/core/content/demo-data';
import { demo } from '$lib/server/demo-content';

// Harmonized GHS hazard statements and EU supplemental ones that a demo sheet may carry.
// Source: UN GHS Annex 3; Regulation (EC) 1272/2008, Annex III. EUH codes from memory.
const STATEMENTS = new Set(
	'H225 H226 H227 H242 H302 H304 H312 H314 H315 H317 H318 H319 H332 H334 H335 H336 H350 H351 H360 H361d H370 H372 H373 H400 H410 H411 H412 EUH066 EUH204 EUH208'.split(
		' '
	)
);

const bySheet = demo.sheets.map((sheet) => [sheet.id, sheet] as const);

describe('the invented shop', () => {
	it('has people of every role, with a PIN each of their own', () => {
		const roles = demo.people.map(({ role }) => role);
		expect(roles.filter((role) => role === 'owner')).toHaveLength(1);
		expect(roles.filter((role) => role === 'supervisor')).toHaveLength(2);
		expect(roles.filter((role) => role === 'mold maker')).toHaveLength(2);
		expect(roles.filter((role) => role === 'apprentice')).toHaveLength(3);
		expect(new Set(demo.people.map(({ pin }) => pin)).size).toBe(demo.people.length);
	});

	it('has a sheet of every kind, and at least fourteen of them', () => {
		expect(demo.sheets.length).toBeGreaterThanOrEqual(14);
		expect(new Set(demo.sheets.map(({ kind }) => kind))).toEqual(
			new Set(['glove', 'shell', 'casting', 'wax', 'film', 'sealer', 'reinforcement'])
		);
	});

	it('has a pattern whose name is sixty characters long', () => {
		expect(demo.patterns.map(({ pattern }) => pattern.name.length)).toContain(60);
	});

	it('refuses a sheet that does not say it is invented, and names file and field', () => {
		expect(() => readDemo({ 'shop.yaml': 'name: A shop' })).toThrow(/shop\.yaml[\s\S]*invented/);
	});

	it('refuses a file that is missing', () => {
		expect(() => readDemo({})).toThrow('content/demo/shop.yaml: no such file');
	});
});

describe('each invented sheet', () => {
	test.each(bySheet)('%s states hazards that exist', (_, sheet) => {
		expect(sheet.hazards.filter((id) => !HAZARD_IDS.some((known) => known === id))).toEqual([]);
		expect(sheet.hazardStatements.filter((code) => !STATEMENTS.has(code))).toEqual([]);
	});

	test.each(bySheet)('%s weighs what its parts weigh', (_, sheet) => {
		const ratio = sheet.ratioByWeight ?? [1];
		const densities = sheet.parts.map(({ densityGPerMl }) => densityGPerMl);
		if (densities.some((density) => density === undefined)) return expect(ratio).toEqual([1]);
		const massG = ratio.reduce((sum, part) => sum + part, 0);
		const volumeMl = ratio.reduce((sum, part, i) => sum + part / (densities[i] ?? NaN), 0);
		expect(sheet.mixedDensityGPerMl).toBeCloseTo(massG / volumeMl, 2);
	});

	test.each(bySheet)('%s mixes the same by weight and by volume', (_, sheet) => {
		const [byWeight, byVolume] = [sheet.ratioByWeight, sheet.ratioByVolume];
		if (!byWeight || !byVolume) return expect(byVolume).toBeUndefined();
		const densities = sheet.parts.map(({ densityGPerMl }) => densityGPerMl ?? NaN);
		const massRatio = byWeight.map((part) => part / (byWeight[0] ?? NaN));
		const fromVolume = byVolume.map(
			(part, i) => (part * (densities[i] ?? NaN)) / ((byVolume[0] ?? NaN) * (densities[0] ?? NaN))
		);
		massRatio.forEach((part, i) => expect(fromVolume[i]).toBeCloseTo(part, 2));
	});

	test.each(bySheet)(
		'%s opens its recoat window before closing it, and closes it before demold',
		(_, sheet) => {
			const times = [sheet.tackFree, sheet.recoatCloses, sheet.demold].flatMap(
				(time) => time?.timeS ?? []
			);
			expect(times).toEqual([...times].sort((a, b) => a - b));
		}
	);
});
