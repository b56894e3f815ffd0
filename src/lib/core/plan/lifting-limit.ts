import { estimatedHorizontalMm, horizontalLaw } from '../laws/lifting';
import { NIOSH_METRIC, NIOSH_US } from '../laws/lifting-constants';
import {
	liftingTaskLaw,
	liftingTaskLimit,
	type LiftEnd,
	type LiftingTaskLimit
} from '../laws/lifting-task';
import { displayQuantity } from '../quantity/display';
import { DEFAULTS, defaultInput } from './defaults';
import { assumed, computed, traced, type Draft } from './trace';

/** Farthest that the hands' distance may be asked of the law; beyond its own limit nothing may be lifted; choice of the plan. */
const FARTHEST_MM = 3000;
/** A mold is turned and set down once in a while; common practice, no source. */
const LIFTS_PER_MIN = 0.2;

/** What one person may lift from the bench to a pallet and set down there with care. */
export function liftingLimitOf(draft: Draft, depthMm: number): LiftingTaskLimit {
	const { units } = draft.inputs.shop;
	const limit = liftingTaskLimit(
		{
			origin: endAt(depthMm, DEFAULTS.benchMm.value),
			destination: endAt(depthMm, DEFAULTS.palletMm.value),
			twistDeg: 0,
			liftsPerMin: LIFTS_PER_MIN,
			duration: 'up to 1 h',
			coupling: 'fair'
		},
		// One published set for the whole task: that of the units the shop works in.
		units === 'US' ? NIOSH_US : NIOSH_METRIC
	);
	const end = limit.decidedAt === 'origin' ? 'picked up from the bench' : 'set down on the pallet';
	const horizontal = tracedHorizontal(draft, depthMm, limit.horizontalMm, limit.decidedAt);
	const none = limit.forbidden.length > 0 ? ` Nothing: ${limit.forbidden.join(', ')}.` : '';
	traced(draft, 'lifting.recommendedG', {
		label: 'Recommended weight limit for one person',
		value: limit.rwlG,
		unit: 'g',
		law: liftingTaskLaw,
		inputs: [
			computed(
				'H',
				'hands ahead of the ankles, from the depth of the mold',
				limit.horizontalMm,
				'mm',
				horizontal
			),
			defaultInput('V_origin', 'benchMm'),
			defaultInput('V_destination', 'palletMm'),
			computed('D', 'lifted through', limit.travelMm, 'mm'),
			assumed('F', 'lifts a minute (common practice, no source)', LIFTS_PER_MIN, '1/min'),
			...Object.entries(limit.multipliers).map(([symbol, value]) =>
				computed(symbol, `multiplier where it is ${end}`, value, 'count')
			)
		],
		note: `The lower of both ends, where it is ${end}; a pallet raised to ${displayQuantity(DEFAULTS.benchMm.value, 'mm', units)} spares the back.${none}`
	});
	return limit;
}

function endAt(depthMm: number, heightMm: number): LiftEnd {
	const horizontalMm = estimatedHorizontalMm({
		moldDepthMm: Math.min(FARTHEST_MM, depthMm),
		originHeightMm: heightMm
	});
	return { horizontalMm: Math.min(FARTHEST_MM, horizontalMm), heightMm };
}

/** Leaves the trace of the hands' distance where the task is decided, and says under which path. */
function tracedHorizontal(
	draft: Draft,
	depthMm: number,
	horizontalMm: number,
	decidedAt: LiftingTaskLimit['decidedAt']
): string {
	const path = 'lifting.horizontalMm';
	traced(draft, path, {
		label: 'Hands ahead of the ankles',
		value: horizontalMm,
		unit: 'mm',
		law: horizontalLaw,
		inputs: [
			computed('W', 'depth of the mold, away from the body', depthMm, 'mm'),
			defaultInput('V', decidedAt === 'origin' ? 'benchMm' : 'palletMm')
		]
	});
	return path;
}
