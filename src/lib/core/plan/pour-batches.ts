import { massEffectLaw } from '../laws/mass-effect';
import { q10Law } from '../laws/cure-rate';
import { readableSplitLaw } from '../laws/readable-split';
import { isOneNumber, roundedOutward, type Range } from '../quantity/range';
import { curingMaterial } from './curing-material';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { traceLargestBatch, type PourPace } from './pour-pace';
import { computed, entered, fromSheet, traced, tradeLaw, type Draft } from './trace';

export type PourBatches = NonNullable<Plan['pour']['batches']>;

const countLaw = tradeLaw(
	'pour-batches',
	'Batches of the first pour',
	'n = ⌈M / m_largest⌉, each M / n',
	'equal batches; each is mixed whole and poured at once'
);
const spanLaw = tradeLaw(
	'pour-span',
	'From the first mixing to the last batch’s being in',
	't = ⌈n / n_people⌉ · (t_mix + 60 · m / q)',
	'every person mixes and pours batches of their own, one after another'
);

const spread = (range: Range): Partial<Range> & { noRange?: string } =>
	isOneNumber(range) ? { noRange: 'No range is given: both ends come to the same.' } : range;

/** The batches of the first pour with their times, each number with its trace. */
export function pourBatches(
	draft: Draft,
	pace: PourPace,
	given: { count: number; massG: number; parts: PourBatches['parts']; totalG: number }
): PourBatches {
	const { count, massG, parts, totalG } = given;
	const { mixS, largestRange, potShare, workS } = pace;
	const { people, materials, shop } = draft.inputs;
	const { casting } = materials;
	const { value: rateGPerMin, range: rates } = DEFAULTS.pourGPerMin;
	const largestG = traceLargestBatch(draft, pace);
	const mix = casting.mixS
		? fromSheet('t_mix', 'mixing', mixS, 's')
		: defaultInput('t_mix', 'mixS');
	const batch = computed('m', 'each batch', massG, 'g');
	const needed = draft.figures['pour.massG'];
	const ofEach = (share: number): Partial<Range> =>
		needed?.low === undefined || needed.high === undefined
			? {}
			: roundedOutward(
					{ low: (share * needed.low) / count, high: (share * needed.high) / count },
					shop.scaleReadabilityG
				);
	const afterMixingS = (share: number): number =>
		Math.max(0, Math.floor(share * workS(massG) - mixS));
	const rounds = Math.ceil(count / people);
	const spanS = (rate: number): number => rounds * (mixS + (60 * massG) / rate);
	return {
		count: traced(draft, 'pour.batches.count', {
			label: 'Batches of the first pour',
			value: count,
			unit: 'count',
			law: countLaw,
			inputs: [
				computed('M', 'first pour', totalG, 'g', 'pour.massG'),
				computed('m_largest', 'largest batch', largestG, 'g', 'pour.batches.largestG')
			],
			...spread({
				low: Math.min(count, Math.ceil((needed?.low ?? totalG) / largestRange.high - 1e-9)),
				high: Math.max(
					count,
					Math.ceil((needed?.high ?? totalG) / Math.max(1, largestRange.low) - 1e-9)
				)
			})
		}),
		massG: traced(draft, 'pour.batches.massG', {
			label: 'First pour: each batch',
			value: massG,
			unit: 'g',
			law: countLaw,
			inputs: [
				computed('M', 'first pour', totalG, 'g', 'pour.massG'),
				computed('n', 'batches', count, 'count')
			],
			...ofEach(1)
		}),
		parts: parts.map(({ part, massG: partG }, i) => ({
			part,
			massG: traced(draft, `pour.batches.parts.${i}.massG`, {
				label: `First pour: ${part} in each batch`,
				value: partG,
				unit: 'g',
				law: readableSplitLaw,
				inputs: [
					computed('m', 'each batch', massG, 'g', 'pour.batches.massG'),
					computed('s', `share of ${part}`, partG / massG, 'fraction'),
					entered('d', 'smallest step of the scale', shop.scaleReadabilityG, 'g')
				],
				...ofEach(partG / massG)
			})
		})),
		largestG,
		...(!pace.isMelted && {
			mixS,
			workingS: traced(draft, 'pour.batches.workingS', {
				label: 'First pour: time to pour a batch after mixing',
				value: afterMixingS(1),
				unit: 's',
				law: curingMaterial(casting) ? massEffectLaw : q10Law,
				inputs: [...pace.potInputs, batch, mix],
				...spread({ low: afterMixingS(potShare.low), high: afterMixingS(potShare.high) }),
				note: 'Shortest likely pot life in the mass of a batch, at the room’s temperature, less the mixing, in whole seconds.'
			})
		}),
		spanS: traced(draft, 'pour.batches.spanS', {
			label: pace.isMelted
				? 'First pour: from the first pail to the last one’s being in'
				: 'First pour: from the first mixing to the last batch’s being in',
			value: spanS(rateGPerMin),
			unit: 's',
			law: spanLaw,
			inputs: [
				computed('n', 'batches', count, 'count'),
				entered('n_people', 'people', people, 'count'),
				...(pace.isMelted ? [] : [mix]),
				batch,
				defaultInput('q', 'pourGPerMin')
			],
			...spread({ low: spanS(rates.high), high: spanS(rates.low) })
		})
	};
}
