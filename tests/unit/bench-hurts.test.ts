import { describe, expect, test } from 'vitest';
import { hurtsOf } from '../../src/lib/core/bench/bench-hurts';
import { containersOf } from '../../src/lib/core/bench/container-facts';
import type { ChosenSheets } from '../../src/lib/core/materials/compatibility';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { mayGetHot } from '../../src/lib/core/plan/may-get-hot';
import { steps, textsOfBench } from '../../src/lib/server/content';
import { demo } from '../../src/lib/server/demo-content';
import { testInputs, testSheet } from '../fixtures/materials';
import { handPlan } from '../fixtures/plan';

/** The plan of the fixtures with another family and other hazards for its build material. */
function planWith(family: 'urethane' | 'tin silicone', hazards: Array<'isocyanate' | 'solvent'>) {
	const plan = handPlan();
	const { materials } = plan.inputs;
	const build = { ...materials.build, family, hazards };
	return { ...plan, inputs: { ...plan.inputs, materials: { ...materials, build } } };
}

type Tail = Parameters<typeof hurtsOf> extends [unknown, ...infer Rest] ? Rest : never;
const ids = (slug: string, ...given: Tail) =>
	hurtsOf(textsOfBench.steps[slug], ...given).hazards.map(({ id }) => id);

describe('what hurts at a step', () => {
	test('is isocyanate where a urethane is brushed, also when its sheet forgets to say so', () => {
		expect(ids('build-coat', 'build', planWith('urethane', ['isocyanate']))).toContain(
			'isocyanate'
		);
		expect(ids('build-coat', 'build', planWith('urethane', []))).toContain('isocyanate');
	});

	test('is no isocyanate where a silicone is, but the solvent its sheet names', () => {
		const found = ids('build-coat', 'build', planWith('tin silicone', ['solvent']));
		expect(found).not.toContain('isocyanate');
		expect(found).toContain('solvent');
		expect(found).toContain('sensitizer');
	});

	test('is what a text names and the plan knows of, where no one material is at work', () => {
		const plan = planWith('tin silicone', []);
		const knowing = (...hazards: string[]) => ids('brief', 'brief', { ...plan, hazards });
		expect(knowing('isocyanate', 'amine', 'sensitizer')).toEqual([
			'isocyanate',
			'amine',
			'solvent',
			'sensitizer'
		]);
		expect(knowing('isocyanate')).toEqual(['isocyanate', 'solvent']);
	});
});

describe('hazards have one source', () => {
	const phases = [...steps.values()];
	const chosen = (over: Partial<ChosenSheets>) =>
		makePlan({ ...testInputs(), materials: { ...testInputs().materials, ...over } });

	test.each([
		['a urethane glove and a urethane paste', chosen({})],
		['a silicone glove', chosen({ build: testSheet('brush-platinum'), film: undefined })],
		['a polyester shell', chosen({ shell: testSheet('shell-polyester') })]
	])('%s: no step shows what the plan, its briefings and its protection do not know', (_, plan) => {
		const shown = phases.flatMap(({ slug, phase }) => ids(slug, phase, plan));
		expect(shown.length).toBeGreaterThan(10);
		expect([...new Set(shown)].filter((id) => !plan.hazards.includes(id))).toEqual([]);
	});

	test('what is hot by no computing that could be done is named as hot', () => {
		const cool = { ...testSheet('paste-9'), heatJPerG: 5 };
		const { cure } = chosen({ shell: cool });
		expect(mayGetHot({ cure }, [cool])).toBe(false);
		expect(mayGetHot({ cure: undefined }, [cool])).toBe(true);
	});
});

describe('at each step', () => {
	const { materials } = testInputs();
	const withMaterials = (over: Partial<ChosenSheets>) =>
		makePlan({ ...testInputs(), materials: { ...materials, ...over } });
	const shell = testSheet('shell-polyester');
	const reinforcement = demo.sheets.find(({ family }) => family === 'glass fiber');
	const casting = demo.sheets.find(({ id }) => id === 'demo-casting-plaster');
	const mixed = withMaterials({ shell, reinforcement, casting });
	const shown = (slug: string, plan = mixed) => hurtsOf(textsOfBench.steps[slug], null, plan);
	const hazardsAt = (slug: string, plan = mixed) => shown(slug, plan).hazards.map(({ id }) => id);
	const wornAt = (slug: string, plan = mixed) => shown(slug, plan).ppe.map(({ id }) => id);

	test('silica dust and its mask stand where the powder is poured, not where the shell is laid', () => {
		expect(hazardsAt('first-pour')).toContain('silica-dust');
		expect(wornAt('first-pour')).toContain('dust-mask');
		expect(shown('first-pour').ppe.map(({ label }) => label)).toContain(
			'Dust mask (silica dust, setting plaster burns)'
		);
		expect(hazardsAt('shell')).not.toContain('silica-dust');
		expect(hazardsAt('first-pour')).not.toContain('sensitizer');
	});

	test('weighing names what every material brings that is weighed there', () => {
		const brought = ['isocyanate', 'styrene', 'peroxide', 'solvent', 'hot-cup', 'sensitizer'];
		expect(hazardsAt('weigh-and-mix')).toEqual(expect.arrayContaining(brought));
		expect(wornAt('weigh-and-mix')).toEqual(expect.arrayContaining(['respirator', 'face-shield']));
	});

	test('at the bench weighing names the material of the phase alone', () => {
		const text = textsOfBench.steps['weigh-and-mix'];
		const at = (phase: 'build' | 'shell') =>
			hurtsOf(text, phase, mixed).hazards.map(({ id }) => id);
		expect(at('build')).toContain('isocyanate');
		expect(at('build')).not.toContain('styrene');
		expect(at('shell')).toContain('styrene');
		expect(at('shell')).not.toContain('isocyanate');
	});

	test('a mask against vapor is worn where isocyanate is brushed and where styrene cures', () => {
		expect(wornAt('build-coat')).toContain('respirator');
		expect(hazardsAt('shell-cure')).toContain('styrene');
		expect(wornAt('shell-cure')).toContain('respirator');
		// Nothing is poured beside a shell that cures.
		expect(wornAt('shell-cure')).not.toContain('face-shield');
	});

	test('a silicone glove asks for no respirator while it is brushed', () => {
		const plan = withMaterials({ build: testSheet('brush-platinum'), film: undefined });
		expect(wornAt('build-coat', plan)).not.toContain('respirator');
		expect(hazardsAt('build-coat', plan)).not.toContain('isocyanate');
	});

	test.each(Object.entries({ mixed, plain: withMaterials({}) }))(
		'of a %s mold, what a sheet names stands at every step at which its container is open',
		(_, plan) => {
			const sheets = new Map(Object.values(plan.inputs.materials).map((one) => [one.id, one]));
			const open = containersOf(plan);
			expect(open.length).toBeGreaterThan(3);
			for (const { id, steps: slugs } of open) {
				for (const slug of slugs) {
					expect(hazardsAt(slug, plan), `${id} at ${slug}`).toEqual(
						expect.arrayContaining(sheets.get(id)?.hazards ?? ['no sheet'])
					);
				}
			}
		}
	);
});
