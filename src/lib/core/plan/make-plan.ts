import { surfaceOf } from '../geometry/solids';
import { pairProblems } from '../materials/compatibility';
import { checkedInputs } from './check-inputs';
import { composePlan } from './compose-plan';
import { inShopUnits } from './in-shop-units';
import type { PlanInputs } from './inputs';
import type { Plan } from './plan';
import { PlanError } from './plan-error';
import type { Draft } from './trace';

/**
 * The whole plan of a glove mold: quantities, cups, times, calendar, order, cost, warnings, and the
 * trace of its numbers. Pure: the same inputs give the same plan, to the last digit.
 *
 * A plan with a "refuse" warning is computed but may not be accepted.
 *
 * @throws PlanError listing every field that is out of range, and every reason for which nothing
 *   can be computed
 */
export function makePlan(inputs: PlanInputs): Plan {
	const checked = checkedInputs(inputs);
	try {
		const draft: Draft = {
			inputs: checked,
			surface: surfaceOf(checked.pattern.body),
			temperatureC: checked.roomTemperatureC ?? checked.shop.roomTemperatureC,
			humidityPct: checked.roomHumidityPct ?? checked.shop.roomHumidityPct,
			figures: {},
			warnings: [...pairProblems(checked.pattern, checked.materials)]
		};
		return inShopUnits(composePlan(draft), checked.shop.units);
	} catch (error) {
		// A law's limit that the inputs overstep together is a refusal, not a fault of the program.
		if (error instanceof RangeError) {
			throw new PlanError([{ path: '', message: `No plan can be computed: ${error.message}.` }], {
				cause: error
			});
		}
		if (error instanceof PlanError) {
			throw new PlanError(inShopUnits(error.problems, checked.shop.units), { cause: error });
		}
		throw error;
	}
}
