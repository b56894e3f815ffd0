import type { Plan } from '$lib/core/plan/plan';
import { displayQuantity } from '$lib/core/quantity/display';

/** What is bought or used without a price on its data sheet, by name. */
function unpriced({ order }: Pick<Plan, 'order'>): string[] {
	return order.filter(({ needG, price }) => needG > 0 && price === 0).map(({ name }) => name);
}

/** Nothing of what the mold takes has a price, so that a sum would be no cost. */
export const hasNoPrice = (plan: Pick<Plan, 'order'>): boolean =>
	unpriced(plan).length === plan.order.filter(({ needG }) => needG > 0).length;

/** The cost as a plan's head says it: never 0.00 where nobody has entered a price. */
export function costText(plan: Pick<Plan, 'order' | 'cost' | 'inputs'>): string {
	const { cost, inputs } = plan;
	const { units, currency } = inputs.shop;
	const money = (value: number) => `${displayQuantity(value, 'currency', units)} ${currency}`;
	if (!hasNoPrice(plan)) {
		return unpriced(plan).length > 0 ? `more than ${money(cost.total)}` : money(cost.total);
	}
	return cost.labor > 0
		? `${money(cost.labor)} of labor; no prices on the sheets`
		: 'no prices on the sheets';
}

/** Why a cost is not the whole of it; null when every price is known. */
export function priceNote(plan: Pick<Plan, 'order' | 'inputs'>): string | null {
	const names = unpriced(plan);
	const labor =
		plan.inputs.shop.laborPerHour === 0
			? ' The shop has no labor rate: its hours cost nothing here.'
			: '';
	if (names.length === 0) return labor.trim() || null;
	const what = hasNoPrice(plan) ? 'any material' : names.join(', ');
	return `The data sheets name no price for ${what}: enter one with each kit size, and the sum is whole.${labor}`;
}
