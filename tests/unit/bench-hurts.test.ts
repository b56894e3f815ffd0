import { describe, expect, test } from 'vitest';
import { hurtsOf } from '../../src/lib/core/bench/bench-hurts';
import type { ChosenSheets } from '../../src/lib/core/materials/compatibility';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { mayGetHot } from '../../src/lib/core/plan/may-get-hot';
import { steps, textsOfBench } from '../../src/lib/server/content';
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
