import { describe, expect, it, test } from 'vitest';
import { recommendedMaterials } from '$lib/core/content/demo-data';
import { makePlan } from '$lib/core/plan/make-plan';
import type { Plan } from '$lib/core/plan/plan';
import { sheetContradictions } from '$lib/core/materials/contradictions';
import { demo } from '$lib/server/demo-content';

const plans = new Map<string, Plan>(
	demo.patterns.map((found) => [
		found.id,
		makePlan({
			shop: demo.shop,
			pattern: found.pattern,
			materials: recommendedMaterials(demo, found),
			people: 1,
			startAt: '2026-11-30T13:10:00.000Z'
		})
	])
);

function planOf(id: string): Plan {
	const plan = plans.get(id);
	if (!plan) throw new Error(`no plan for ${id}`);
	return plan;
}

describe('the plans of the invented patterns', () => {
	test.each([...plans.keys()])('%s can be accepted with its recommended materials', (id) => {
		const refused = planOf(id).warnings.filter(({ severity }) => severity === 'refuse');
		expect(refused).toEqual([]);
	});

	it('take detail coats for the carved panel, and for it alone', () => {
		const withDetail = [...plans].filter(([, plan]) => plan.detail.needed).map(([id]) => id);
		expect(withDetail).toEqual(['demo-relief-panel']);
		const kinds = planOf('demo-relief-panel').coats.map(({ kind }) => kind);
		expect(kinds.slice(0, 2)).toEqual(['detail', 'detail']);
	});

	it('say that a block is better for the small tile, and for it alone', () => {
		const better = [...plans].filter(([, plan]) => plan.block.better === 'block');
		expect(better.map(([id]) => id)).toEqual(['demo-small-tile']);
	});

	it('lay enough coats on the panel for a demo mold to wait between its build coats', () => {
		const kinds = planOf('demo-relief-panel').coats.map(({ kind }) => kind);
		expect(kinds.filter((kind) => kind === 'build').length).toBeGreaterThanOrEqual(3);
	});
});

describe('the invented sheets', () => {
	test.each(demo.sheets.map((sheet) => [sheet.id, sheet] as const))(
		'%s does not contradict itself',
		(_, sheet) => {
			expect(sheetContradictions(sheet)).toEqual([]);
		}
	);
});
