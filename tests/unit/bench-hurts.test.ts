import { describe, expect, test } from 'vitest';
import { hurtsOf } from '../../src/lib/core/bench/bench-hurts';
import { textsOfBench } from '../../src/lib/server/content';
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

	test('is all that a text names where no one material is at work', () => {
		const plan = planWith('tin silicone', []);
		expect(ids('brief', 'brief', plan)).toEqual(['isocyanate', 'amine', 'solvent', 'sensitizer']);
	});
});
