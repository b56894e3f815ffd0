import {
	centroidLaw,
	stackCentroid,
	tippingDeg,
	tippingLaw,
	turnedOver,
	turnOverLaw,
	type MassPart
} from '../laws/centroid';
import { liftingIndex, liftingLaw, type LiftingLimit } from '../laws/lifting';
import { liftAdvice } from '../laws/lifting-advice';
import { displayQuantity } from '../quantity/display';
import { around } from '../quantity/range';
import { DEFAULTS } from './defaults';
import type { Plan } from './plan';
import { computed, highEnd, inherited, traced, warn, type Draft } from './trace';
import { withinLaw } from './within-law';

type LiftingSection = NonNullable<Plan['lifting']>;

/** Weight, center of mass and tipping of one load, and the way to lift it at the upper end of its weight. */
export function liftOf(
	draft: Draft,
	given: {
		index: number;
		what: string;
		parts: readonly MassPart[];
		isTurned: boolean;
		depthMm: number;
		stackMm: number;
		limit: Pick<LiftingLimit, 'rwlG' | 'forbidden'>;
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
	const { units } = draft.inputs.shop;
	const heaviestG = highEnd(draft, `${path}.massG`, massG);
	const advice = liftAdvice({ massG: heaviestG, limit, holdsLiquid: false, units });
	const reason =
		heaviestG > massG
			? `Judged at the upper end of its likely weight: ${advice.reason}`
			: advice.reason;
	const likelyIndex = liftingIndex({ massG, rwlG: limit.rwlG });
	if (advice.way !== 'one person' && index !== 1) {
		const by = advice.way === 'hoist or pallet truck' ? 'a hoist or pallet truck' : advice.way;
		const likely =
			heaviestG > massG ? ` (likely ${displayQuantity(massG, 'g', units, heaviestG)})` : '';
		const text = `${what} can weigh ${displayQuantity(heaviestG, 'g', units)}${likely}: turn and lift it with ${by}. ${reason} ${advice.caution}`;
		warn(draft, 'warn', 'lifting', 'people', text);
	}
	if (likelyIndex !== null) {
		const asked = [
			computed('L', 'load', massG, 'g', `${path}.massG`),
			computed('RWL', 'recommended limit', limit.rwlG, 'g', 'lifting.recommendedG')
		];
		traced(draft, `${path}.index`, {
			label: `${what}: lifting index for one person`,
			value: likelyIndex,
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
		index: likelyIndex,
		limitG: advice.limitG,
		reason
	};
}
