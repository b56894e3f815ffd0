import { describe, expect, test } from 'vitest';
import { processMachine } from '../../src/lib/core/process/chart/machine';
import { STEP_TABLE } from '../../src/lib/core/process/step-table';

/** Paths of all states in which the machine can rest. */
function restingPaths(): string[] {
	return Object.values(
		processMachine.idMap instanceof Map ? Object.fromEntries(processMachine.idMap) : {}
	)
		.filter((node) => node.type === 'atomic' || node.type === 'final')
		.filter(
			(node) =>
				!node.always ||
				(node.always.some((t) => t.guard !== undefined) &&
					node.always.every((t) => t.guard !== undefined))
		)
		.map((node) => node.path.join('.').replace(/^working\./, ''));
}

describe('the step table', () => {
	test('has a row for every state in which the machine can rest, and no other', () => {
		const paths = restingPaths().sort();
		expect(Object.keys(STEP_TABLE).sort()).toEqual(paths);
	});
});
