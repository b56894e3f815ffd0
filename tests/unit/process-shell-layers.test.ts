import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import type { Plan } from '../../src/lib/core/plan/plan';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { contextOf } from '../../src/lib/core/process/job';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { testInputs, testSheet } from '../fixtures/materials';
import { handPlan } from '../fixtures/plan';

function laminated(processVersion = 3): Plan {
	const plan = handPlan({ processVersion });
	const rounds = plan.shell.rounds.map((round) => ({ ...round, reinforcementG: 90, layers: 3 }));
	return { ...plan, shell: { ...plan.shell, rounds } };
}
const laid = (plan = laminated()) => new BenchLog(plan).toShell().readRoom().cup(360);
const why = (answer: ReturnType<BenchLog['try']>) => (answer.ok ? 'taken' : answer.reason);

describe('a round of the shell with cloth in it', () => {
	test('is complete once its layers are counted against the plan', () => {
		const log = laid();
		const fields = benchStep(log.state, { by: MAKER, at: log.at }).acts.find(
			({ type }) => type === 'coat.finished'
		)?.fields;
		expect(fields?.[0]).toMatchObject({ name: 'layersLaid', hint: 'planned 3', required: true });
		expect(why(log.try('coat.finished'))).toContain('the plan has 3');
		expect(why(log.try('coat.finished', { layersLaid: 2 }))).toContain('2 of 3 layers');
		log.do('coat.finished', { layersLaid: 3 });
		expect(contextOf(log.state).deviations).toEqual([]);
		expect(asBuilt(log.state, log.log).sections.at(-1)?.layers).toEqual({ planned: 3, laid: 3 });
	});

	test('with a layer left out keeps that as a deviation, with its reason', () => {
		const log = laid().do('coat.finished', { layersLaid: 2, shortReason: 'the mat ran out' });
		expect(contextOf(log.state).deviations.at(-1)?.what).toBe(
			'Shell round 1 has 2 of 3 layers of reinforcement: the mat ran out'
		);
	});

	test('was not counted under the version before', () => {
		expect(laid(laminated(2)).try('coat.finished').ok).toBe(true);
	});
});

test('a round without cloth asks for no layers', () => {
	const log = laid(handPlan());
	expect(log.try('coat.finished').ok).toBe(true);
});

// By hand: fiber of the round over areal weight times the area it covers; common practice, no source.
test('a plan counts layers where the cloth has a weight for its area', () => {
	const inputs = testInputs();
	const mat = testSheet('mat-450');
	const plan = makePlan({
		...inputs,
		materials: { ...inputs.materials, shell: testSheet('shell-polyester'), reinforcement: mat }
	});
	for (const [i, { layers, reinforcementG }] of plan.shell.rounds.entries()) {
		const figure = plan.figures[`shell.rounds.${i}.layers`];
		const areaCm2 = Number(figure?.inputs.find(({ symbol }) => symbol === 'A')?.value);
		expect(areaCm2).toBeGreaterThan(plan.surface.exposedAreaCm2);
		expect(layers).toBe(Math.round(reinforcementG / ((450 * areaCm2) / 10_000)));
		expect(layers).toBeGreaterThan(0);
	}
});
