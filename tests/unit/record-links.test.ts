import { describe, expect, test } from 'vitest';
import { batchesLaid } from '../../src/lib/core/process/as-built-batches';
import { contextOf, fold } from '../../src/lib/core/process/job';
import { rehearseJob } from '../../src/lib/core/process/rehearsal';
import { sectionOfJob } from '../../src/lib/core/process/section-of-job';
import { recordAnchor } from '../../src/lib/screen/section/layer-links';
import { handPlan } from '../fixtures/plan';

const plan = handPlan();
const crew = { worker: 'maker', supervisor: 'supervisor' };
const { log } = rehearseJob(plan, { until: 'end', startAt: '2026-11-30T13:10:00.000Z', crew });
const state = fold(plan, log);
const { layers } = sectionOfJob(contextOf(state));
const built = batchesLaid(state);
const rowOf = (index: number) => recordAnchor(built, layers, index);

describe('a band of the section leads to where the record tells of it', () => {
	test('each coat to the row of its own name', () => {
		const coats = layers.flatMap(({ kind, label }, index) =>
			kind === 'build' || kind === 'detail' ? [{ label, index }] : []
		);
		expect(coats.length).toBeGreaterThan(1);
		for (const { label, index } of coats) {
			const row = Number(rowOf(index)?.replace('#built-', ''));
			expect(built[row]?.title).toBe(label);
		}
	});

	test('the shell to its first round, the pattern nowhere', () => {
		const shell = layers.findIndex(({ kind }) => kind === 'shell');
		const row = Number(rowOf(shell)?.replace('#built-', ''));
		expect(row).toBe(built.findIndex(({ title }) => title.startsWith('Shell round')));
		expect(rowOf(layers.findIndex(({ kind }) => kind === 'pattern'))).toBeUndefined();
	});

	test('nowhere while nothing is laid', () => {
		expect(layers.map((_, index) => recordAnchor([], layers, index)).filter(Boolean)).toEqual([]);
	});
});
