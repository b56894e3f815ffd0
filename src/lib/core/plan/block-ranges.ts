import {
	COMMON_BENCH_TIMES,
	processEstimates,
	type BenchTime,
	type BuildProcess,
	type ProcessEstimate,
	type ProcessPattern,
	type ProcessTerms
} from '../laws/process-estimate';
import { evenScale } from '../laws/process-scale';
import type { FigureInput } from '../quantity/figure';
import { around } from '../quantity/range';
import { DEFAULTS } from './defaults';
import { computed, type Draft } from './trace';

/** Hands may be faster or slower than planned, at every way to build alike. */
const PACED: readonly string[] = ['laborS', 'laborPrice', 'totalPrice'];

/** Why days have no range of their own. */
export const DAYS_NOTE =
	'Whole working days; when hands are slower than planned, one more may begin.';

export type EstimateKey = Exclude<keyof ProcessEstimate, 'process'>;

/** What a number stands on, and the number again from these inputs in their order. */
export interface Follows {
	inputs: FigureInput[];
	of: (...values: number[]) => number;
}
/** That for every number of every way to build. */
export type EstimateFollows = (process: BuildProcess, key: EstimateKey) => Follows;

interface Compared {
	gloveG: number;
	shellG: number;
	terms: ProcessTerms;
	/** The pattern on its board, with another exposed area (cm²) and volume (mL). */
	standing: (areaCm2: number, volumeMl: number) => ProcessPattern;
	estimates: readonly ProcessEstimate[];
}

/**
 * How the numbers of each way follow what is uncertain. The glove's are those of the plan, with the
 * spread of its brushed thickness; a layer takes the thickness of a blanket made by hand; hours are as
 * uncertain as those of the plan.
 */
export function estimateFollows(draft: Draft, compared: Compared): EstimateFollows {
	const { terms, standing } = compared;
	const { exposedAreaCm2, volumeMl } = draft.surface;
	const area = areaInput(draft);
	const estimateOf = (
		process: BuildProcess,
		key: EstimateKey,
		pattern: ProcessPattern,
		over = terms
	) => processEstimates(pattern, over).find((way) => way.process === process)?.[key] ?? Number.NaN;
	return (process, key) => {
		const pace = PACED.includes(key) ? [paceInput()] : [];
		if (process === 'glove') return gloveFollows(compared, key, pace);
		if (process === 'solid block') {
			return {
				inputs: [
					area,
					volumeInput(draft),
					computed('g', 'margin of the block, as the frame’s gap', terms.blockGapMm, 'mm'),
					...pace
				],
				of: (areaCm2 = 0, patternMl = 0, _gapMm = 0, u = 1) =>
					estimateOf(process, key, standing(areaCm2, patternMl), paced(terms, u))
			};
		}
		return {
			inputs: [
				area,
				brushed('t_layer', 'layer, as its blanket', terms.layerMm),
				brushed('t_shell', 'shell over it', terms.shellMm),
				...pace
			],
			of: (areaCm2 = exposedAreaCm2, layerMm = 0, shellMm = 0, u = 1) =>
				estimateOf(process, key, standing(areaCm2, volumeMl), {
					...paced(terms, u),
					layerMm,
					shellMm
				})
		};
	};
}

/** Sizes from which a glove costs less than a block, as it follows area, volume, thickness and pace. */
export function evenFollows(draft: Draft, { terms, standing }: Compared): Follows {
	return {
		inputs: [
			areaInput(draft),
			volumeInput(draft),
			brushed('t', 'glove', terms.gloveMm),
			paceInput()
		],
		of: (areaCm2 = 0, volumeMl = 0, gloveMm = 0, u = 1) => {
			const even = evenScale(standing(areaCm2, volumeMl), { ...paced(terms, u), gloveMm });
			if (even === null) {
				throw new RangeError('no size from a tenth to ten times this one costs the same both ways');
			}
			return even;
		}
	};
}

function gloveFollows(
	{ gloveG, shellG, terms, estimates }: Compared,
	key: EstimateKey,
	pace: FigureInput[]
): Follows {
	const glove = estimates.find((way) => way.process === 'glove');
	return {
		inputs: [
			computed('m_1', 'glove', gloveG, 'g', 'weights.gloveG'),
			computed('m_2', 'shell', shellG, 'g', 'weights.shellG'),
			computed('t', 'hands on it', glove?.laborS ?? 0, 's'),
			...pace
		],
		of: (rubberG = 0, backG = 0, _laborS = 0, u = 1) =>
			glove ? gloveAgain(glove, terms, { rubberG, shellG: backG, u })[key] : Number.NaN
	};
}

/** The glove's estimate with other masses, paid by weight, and at another pace, paid by the hour. */
function gloveAgain(
	glove: ProcessEstimate,
	terms: ProcessTerms,
	{ rubberG, shellG, u }: { rubberG: number; shellG: number; u: number }
): ProcessEstimate {
	const materialPrice =
		(rubberG * terms.brushRubberPricePerKg + shellG * terms.shellPricePerKg) / 1000;
	return {
		...glove,
		rubberMl: rubberG / terms.brushRubberGPerMl,
		rubberG,
		shellG,
		moldG: rubberG + shellG,
		materialPrice,
		laborS: glove.laborS * u,
		laborPrice: glove.laborPrice * u,
		totalPrice: materialPrice + glove.laborPrice * u
	};
}

/** Every time at the bench, so many times as long. */
function paced(terms: ProcessTerms, u: number): ProcessTerms {
	const { benchTimes = COMMON_BENCH_TIMES } = terms;
	const longer = ({ fixedS, perM2S, daysCount }: BenchTime): BenchTime => ({
		fixedS: fixedS * u,
		perM2S: perM2S * u,
		daysCount
	});
	return {
		...terms,
		benchTimes: {
			glove: longer(benchTimes.glove),
			'solid block': longer(benchTimes['solid block']),
			'poured layer': longer(benchTimes['poured layer'])
		}
	};
}

const paceInput = (): FigureInput => ({
	symbol: 'u',
	label: 'hands on it, times the hours planned (common practice, no source)',
	value: 1,
	unit: 'count',
	origin: 'default',
	...around(1, DEFAULTS.laborSpread.value)
});

const areaInput = ({ surface }: Draft): FigureInput =>
	computed('A', 'exposed area', surface.exposedAreaCm2, 'cm2', 'surface.exposedAreaCm2');
const volumeInput = ({ surface }: Draft): FigureInput =>
	computed('V_p', 'volume of the pattern', surface.volumeMl, 'mL', 'surface.volumeMl');
const brushed = (symbol: string, label: string, thicknessMm: number): FigureInput => ({
	...computed(symbol, label, thicknessMm, 'mm'),
	...around(thicknessMm, 2 * DEFAULTS.spreadFraction.value)
});
