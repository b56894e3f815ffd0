import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import type { PlanInputs } from '../../src/lib/core/plan/inputs';
import CostPart from '../../src/lib/screen/plan/CostPart.svelte';
import OrderTable from '../../src/lib/screen/plan/OrderTable.svelte';
import { costText, priceNote } from '../../src/lib/screen/plan/prices';
import { testInputs } from '../fixtures/materials';

const inputs = testInputs();

/** The plan with no price on the sheets of these places, and this labor rate. */
function planOf(places: (keyof PlanInputs['materials'])[], laborPerHour: number) {
	const materials = { ...inputs.materials };
	for (const place of places) {
		const sheet = materials[place];
		if (sheet) {
			const kits = sheet.kits.map((kit) => ({ ...kit, price: 0 }));
			Object.assign(materials, { [place]: { ...sheet, kits } });
		}
	}
	return makePlan({ ...inputs, shop: { ...inputs.shop, laborPerHour }, materials });
}
const ALL = Object.keys(inputs.materials) as (keyof PlanInputs['materials'])[];
const text = (body: string): string => body.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');

test('a cost that nobody can know is not said to be nothing', () => {
	const plan = planOf(ALL, 0);
	expect(plan.cost.total).toBe(0);
	expect(costText(plan)).toBe('no prices on the sheets');
	const shown = [CostPart, OrderTable].map((part) => text(render(part, { props: { plan } }).body));
	for (const part of shown) expect(part).not.toMatch(/\b0\.00\b/);
	expect(shown[0]).toContain('name no price for any material');
	expect(shown[0]).toContain('no labor rate');
});

test('a cost of which a part is known says which, and that it is not all', () => {
	const plan = planOf(['build'], 40);
	expect(costText(plan)).toMatch(/^more than [\d,]+\.\d\d /);
	expect(priceNote(plan)).toContain(`no price for ${inputs.materials.build.name}`);
	expect(costText(planOf(ALL, 40))).toMatch(/ of labor; no prices on the sheets$/);
});

test('a cost that is known whole says just that', () => {
	const plan = planOf([], 40);
	expect(costText(plan)).toMatch(/^[\d,]+\.\d\d [A-Z]{3}$/);
	expect(priceNote(plan)).toBeNull();
});
