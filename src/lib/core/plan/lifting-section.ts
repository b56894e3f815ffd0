import {
	centroidLaw,
	stackCentroid,
	tippingDeg,
	tippingLaw,
	turnedOver,
	turnOverLaw,
	type MassPart
} from '../laws/centroid';
import { liftAdvice, LIFT_CAUTION } from '../laws/lifting-advice';
import {
	estimatedHorizontalMm,
	liftingLaw,
	liftingLimit,
	type LiftingLimit
} from '../laws/lifting';
import { NIOSH_METRIC, NIOSH_US } from '../laws/lifting-constants';
import { around } from '../quantity/range';
import { DEFAULTS, defaultInput } from './defaults';
import type { FramePlan } from './frame-plan';
import type { Plan } from './plan';
import { assumed, computed, inherited, traced, warn, type Draft } from './trace';
import { withinLaw } from './within-law';

type LiftingSection = NonNullable<Plan['lifting']>;

/** Farthest that the hands' distance may be asked of the law; beyond its own limit nothing may be lifted; choice of the plan. */
const FARTHEST_MM = 3000;
/** A mold is turned and set down once in a while; common practice, no source. */
const LIFTS_PER_MIN = 0.2;
/** From bench to pallet; common practice, no source. */
const TRAVEL_MM = 250;

/** Weights, centers of mass and ways to lift: the mold as built, turned over, and with a part in it. */
export function liftingSection(
	draft: Draft,
	frame: FramePlan,
	weights: Plan['weights'],
	thicknessMm: number
): LiftingSection {
	const { heightMm, exposedAreaCm2, footprintCm2 } = draft.surface;
	const { insideLengthMm, insideWidthMm } = frame.frame;
	const depthMm = Math.min(insideLengthMm, insideWidthMm) + 2 * DEFAULTS.boardMm.value;
	const limit = limitFor(draft, depthMm);
	const stackMm = heightMm + thicknessMm;
	// Walls at half height, tops at full height, so it errs high: the side on which molds fall over.
	const topShare = Math.min(1, footprintCm2 / exposedAreaCm2);
	const coatMm = heightMm * (topShare + (1 - topShare) / 2);
	const middle = { xMm: insideLengthMm / 2, yMm: depthMm / 2 };
	const at = (massG: number, zMm: number): MassPart => ({ massG, ...middle, zMm });
	const parts = [
		at(weights.gloveG, Math.min(coatMm, stackMm)),
		at(weights.shellG, Math.min(coatMm + thicknessMm / 2, stackMm)),
		at(weights.frameG, Math.min(frame.frame.heightMm / 2, stackMm))
	];
	const emptyG = weights.gloveG + weights.shellG + weights.frameG;
	const casting = at(Math.max(0, weights.filledG - emptyG), heightMm / 2);
	const lift = (index: number, what: string, all: readonly MassPart[], isTurned: boolean) =>
		liftOf(draft, { index, what, parts: all, isTurned, depthMm, stackMm, limit });
	return {
		recommendedG: limit.rwlG,
		forbidden: limit.forbidden,
		horizontalMm: horizontalMm(depthMm),
		lifts: [
			lift(0, 'The empty mold as it was built', parts, false),
			lift(1, 'The empty mold, turned over', parts, true),
			lift(2, 'The mold with a set part in it', [...parts, casting], true)
		],
		caution: LIFT_CAUTION
	};
}

const horizontalMm = (depthMm: number): number =>
	Math.min(
		FARTHEST_MM,
		estimatedHorizontalMm({
			moldDepthMm: Math.min(FARTHEST_MM, depthMm),
			originHeightMm: DEFAULTS.benchMm.value
		})
	);

function limitFor(draft: Draft, depthMm: number): LiftingLimit {
	// One published set for the whole task: that of the units the shop works in.
	const system = draft.inputs.shop.units === 'US' ? NIOSH_US : NIOSH_METRIC;
	const limit = liftingLimit(
		{
			horizontalMm: horizontalMm(depthMm),
			originHeightMm: DEFAULTS.benchMm.value,
			travelMm: TRAVEL_MM,
			twistDeg: 0,
			liftsPerMin: LIFTS_PER_MIN,
			duration: 'up to 1 h',
			coupling: 'fair'
		},
		system
	);
	traced(draft, 'lifting.recommendedG', {
		label: 'Recommended weight limit for one person',
		value: limit.rwlG,
		unit: 'g',
		law: liftingLaw,
		inputs: [
			computed(
				'H',
				'hands ahead of the ankles, from the depth of the mold',
				horizontalMm(depthMm),
				'mm'
			),
			defaultInput('V', 'benchMm'),
			assumed('D', 'lifted through (common practice, no source)', TRAVEL_MM, 'mm'),
			assumed('F', 'lifts a minute (common practice, no source)', LIFTS_PER_MIN, '1/min'),
			...Object.entries(limit.multipliers).map(([symbol, value]) =>
				computed(symbol, 'multiplier', value, 'count')
			)
		],
		...(limit.forbidden.length > 0 ? { note: `Nothing: ${limit.forbidden.join(', ')}.` } : {})
	});
	return limit;
}

function liftOf(
	draft: Draft,
	given: {
		index: number;
		what: string;
		parts: readonly MassPart[];
		isTurned: boolean;
		depthMm: number;
		stackMm: number;
		limit: LiftingLimit;
	}
): LiftingSection['lifts'][number] {
	const { index, what, parts, isTurned, depthMm, stackMm, limit } = given;
	const path = `lifting.lifts.${index}`;
	const inputs = [
		computed('m_1', 'glove', parts[0]?.massG ?? 0, 'g', 'weights.gloveG'),
		computed('m_2', 'shell', parts[1]?.massG ?? 0, 'g', 'weights.shellG'),
		computed('m_3', 'frame', parts[2]?.massG ?? 0, 'g', 'weights.frameG'),
		...(parts[3]
			? [
					{
						...computed('m_4', 'casting', parts[3].massG, 'g'),
						...around(parts[3].massG, 2 * DEFAULTS.pourSpread.value)
					}
				]
			: [])
	];
	const stackOf = (massesG: readonly number[]) => {
		const stack = stackCentroid(
			parts.map((part, i) => ({ ...part, massG: massesG[i] ?? part.massG }))
		);
		return isTurned ? turnedOver(stack, { depthMm, heightMm: stackMm }) : stack;
	};
	const body = stackOf([]);
	const massG = traced(draft, `${path}.massG`, {
		label: what,
		value: body.massG,
		unit: 'g',
		law: centroidLaw,
		inputs,
		...inherited(draft, inputs, (...massesG) => stackOf(massesG).massG)
	});
	const centerMm = traced(draft, `${path}.centerMm`, {
		label: `${what}: height of its center of mass`,
		value: body.zMm,
		unit: 'mm',
		law: isTurned ? turnOverLaw : centroidLaw,
		inputs: [...inputs, computed('h', 'height of the stack', stackMm, 'mm')],
		...inherited(draft, inputs, (...massesG) => stackOf(massesG).zMm),
		note: 'Walls taken at half height and tops at full height.'
	});
	const advice = liftAdvice({ massG, limit, holdsLiquid: false });
	if (advice.way !== 'one person' && index !== 1) {
		const by = advice.way === 'hoist or pallet truck' ? 'a hoist or pallet truck' : advice.way;
		const text = `${what} weighs ${(massG / 1000).toFixed(1)} kg: turn and lift it with ${by}. ${advice.reason} ${advice.caution}`;
		warn(draft, 'warn', 'lifting', 'people', text);
	}
	if (advice.index !== null) {
		const asked = [
			computed('L', 'load', massG, 'g', `${path}.massG`),
			computed('RWL', 'recommended limit', limit.rwlG, 'g', 'lifting.recommendedG')
		];
		traced(draft, `${path}.index`, {
			label: `${what}: lifting index for one person`,
			value: advice.index,
			unit: 'count',
			law: liftingLaw,
			inputs: asked,
			...inherited(draft, asked, (loadG = 0, limitG = 0) => loadG / limitG)
		});
	}
	const tips = [
		computed('d', 'half of the shorter side', depthMm / 2, 'mm'),
		computed('z', 'height of the center', body.zMm, 'mm', `${path}.centerMm`)
	];
	return {
		what,
		massG,
		centerMm,
		tippingDeg: withinLaw(draft, 'people', `Angle at which it tips, ${what.toLowerCase()}`, () =>
			traced(draft, `${path}.tippingDeg`, {
				label: `${what}: tips over from`,
				value: tippingDeg({ edgeMm: depthMm / 2, heightMm: body.zMm }),
				unit: 'deg',
				law: tippingLaw,
				inputs: tips,
				...inherited(draft, tips, (edgeMm = 0, heightMm = 0) => tippingDeg({ edgeMm, heightMm }))
			})
		),
		way: advice.way,
		index: advice.index,
		limitG: advice.limitG,
		reason: advice.reason
	};
}
