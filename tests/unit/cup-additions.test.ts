import { expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { cupLabels } from '../../src/lib/core/process/cup-labels';
import { BenchLog, MAKER, OPENED_AT } from '../fixtures/bench-log';
import { handPlan } from '../fixtures/plan';

const viewer = { by: MAKER, at: OPENED_AT };
const plain = handPlan();
const thickened = {
	...plain,
	inputs: {
		...plain.inputs,
		additions: [{ to: 'build' as const, name: 'Thickener', partsPerHundred: 3 }]
	}
};

test('what thickens a coat is told where its cup is weighed, and stands on its label', () => {
	const log = new BenchLog(thickened).toCoats();
	const neededG = 0.03 * (thickened.coats[0]?.cups[0]?.massG ?? 0);
	expect(neededG).toBeGreaterThan(1);
	expect(benchStep(log.state, viewer).what).toContain(
		`before the second: Thickener, ${Number(neededG.toFixed(1))} g`
	);
	const labels = cupLabels(log.state);
	expect(labels[0]?.additions.map(({ name }) => name)).toEqual(['Thickener']);
	expect(labels[0]?.additions[0]?.massG).toBeCloseTo(neededG, 9);
	expect(labels.at(-1)?.title).toContain('round');
	expect(labels.at(-1)?.additions).toEqual([]);
});

test('where a plan adds nothing, nothing is said', () => {
	const log = new BenchLog(plain).toCoats();
	expect(benchStep(log.state, viewer).what).not.toContain('before the second');
	expect(cupLabels(log.state).every(({ additions }) => additions.length === 0)).toBe(true);
});
