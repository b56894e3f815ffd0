import { expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planSchema } from '../../src/lib/core/plan/plan';
import { handlingOf } from '../../src/lib/core/mesh/handling';
import { shellOpening } from '../../src/lib/core/mesh/opening';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { detailInputs, testSheet, testShop } from '../fixtures/materials';
import { meshBodyOf } from '../fixtures/mesh-body';
import { box } from '../fixtures/mesh-solids';

const texts = import.meta.glob<string>('../../src/lib/screen/plan/*.svelte', {
	eager: true,
	query: '?raw',
	import: 'default'
});
const base = detailInputs();
const inputs = {
	...base,
	materials: {
		...base.materials,
		shell: testSheet('shell-polyester'),
		casting: { ...testSheet('casting-plaster'), potLife: { timeS: 900, massG: 2000, atC: 20 } }
	},
	additions: [{ to: 'build' as const, name: 'Test thickener', partsPerHundred: 2 }],
	shop: { ...testShop, nightTemperatureC: 15, measuredFanM3PerH: 900, roomVolumeM3: 80 }
};
const plan = makePlan(inputs);

/** A porous pattern from a mesh, with two vapors from one film: what the first plan has none of. */
const mesh = box(200, 120, 60);
const body = meshBodyOf(mesh);
const surface = new SurfaceDistance(mesh);
const film = {
	...testSheet('film-pva'),
	volatiles: [
		{ substance: 'ethanol' as const, fraction: 0.2 },
		{ substance: 'isopropanol' as const, fraction: 0.2 }
	]
};
const meshPlan = makePlan({
	...inputs,
	materials: { ...inputs.materials, film, sealer: testSheet('shellac-sealer') },
	pattern: {
		...inputs.pattern,
		porosity: 'porous',
		undercutMm: 0,
		body: {
			...body,
			bridgings: [{ reachMm: 30, areaCm2: 0, places: [], unlistedPlaces: 0 }],
			handling: handlingOf(mesh, surface, shellOpening(mesh, 6, surface), {
				gloveMm: 6,
				flangeMm: 20
			})
		}
	}
});
/** What is poured molten has numbers that no other casting has. */
const moltenPlan = makePlan({
	...inputs,
	materials: {
		...inputs.materials,
		casting: {
			...testSheet('casting-plaster'),
			family: 'casting wax',
			parts: [{ part: 'wax' }],
			ratioByWeight: undefined
		}
	}
});
const figures = { ...plan.figures, ...meshPlan.figures, ...moltenPlan.figures };

/** Numbers that stand as they were entered, or as a data sheet states them. */
const AS_GIVEN: Record<string, string[]> = {
	'AdditionsPart.svelte': ['addition.partsPerHundred'],
	'ForcesPart.svelte': ['null'],
	'NightCure.svelte': ['night.temperatureC'],
	'OrderTable.svelte': ['kit.massG'],
	'WallsPart.svelte': ['null']
};

/** Every number that a plan's page shows: its component, the path of its figure, its value. */
const shown = Object.entries(texts).flatMap(([file, text]) =>
	[...text.matchAll(/<Plan(?:Number|Value)\b([^>]*?)\/>/gs)].map(([, attributes = '']) => ({
		file: file.split('/').at(-1) ?? file,
		path: /path="([^"]*)"/.exec(attributes)?.[1] ?? null,
		value: /value=\{(.*?)\}/s.exec(attributes)?.[1] ?? ''
	}))
);
const plain = shown.filter(({ path }) => path === '');
/** Paths that are written out, with "{i}" and "{k}" for places in a list. */
const written = shown.flatMap(({ path }) => (path && /^[a-z]/i.test(path) ? [path] : []));

test('the page shows numbers enough for the reading of them to be right', () => {
	expect(shown.length).toBeGreaterThan(60);
	expect(written.length).toBeGreaterThan(30);
	expect(planSchema.safeParse(plan).error).toBeUndefined();
});

test('a number without a trace is one that was entered or stated', () => {
	for (const { file, value } of plain) expect(AS_GIVEN[file] ?? [], file).toContain(value);
});

test.each([...new Set(written)])('%s has its trace', (path) => {
	const pattern = new RegExp(`^${path.replaceAll('.', '\\.').replace(/\{\w+\}/g, '[^.]+')}$`);
	expect(Object.keys(figures).some((key) => pattern.test(key))).toBe(true);
});

test('a plan of before, without a figure for a number, is still a plan', () => {
	const older = { ...plan, figures: {} };
	expect(planSchema.safeParse(older).error).toBeUndefined();
});
