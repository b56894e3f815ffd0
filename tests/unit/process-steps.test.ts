import { describe, expect, test } from 'vitest';
import { STEP_TABLE } from '../../src/lib/core/process/step-table';
import { leaves, nameOf } from '../fixtures/statechart';

/** States in which the machine can rest: not those that an unguarded `always` leads out of at once. */
function restingPaths(): string[] {
	return leaves
		.filter((node) => (node.always ?? []).every((t) => t.guard !== undefined))
		.map(nameOf);
}

describe('the step table', () => {
	test('has a row for every state in which the machine can rest, and no other', () => {
		const paths = restingPaths().sort();
		expect(Object.keys(STEP_TABLE).sort()).toEqual(paths);
	});
});
