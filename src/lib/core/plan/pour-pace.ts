import { largestCupG, largestCupLaw } from '../laws/cups';
import { workableS } from '../laws/mass-effect';
import type { FigureInput } from '../quantity/figure';
import { isOneNumber, type Range } from '../quantity/range';
import { roundDownTo } from '../quantity/rounding';
import { curingMaterial } from './curing-material';
import { DEFAULTS, defaultInput } from './defaults';
import { isMelted } from './is-melted';
import { calibrated } from './heat-ranges';
import { remembered } from './remembered';
import { roomTime } from './room-time';
import { computed, fromSheet, traced, type Draft } from './trace';

/** How fast the first pour must be mixed and poured, and how much of it at a time. */
export interface PourPace {
	largestG: number;
	largestRange: Range;
	mixS: number;
	/** Likely ends of the pot life as shares of the shortest, which is what `workS` tells: `low` is 1. */
	potShare: Range;
	potInputs: FigureInput[];
	/** Shortest likely pot life in a batch of this mass at the room's temperature; a larger one heats itself. */
	workS: (massG: number) => number;
	isLimitedByTime: boolean;
	/** Melted, not mixed: it has no pot life, and only its weight says how much is carried at a time. */
	isMelted: boolean;
}

/** How closely the largest batch is searched; numerical choice. */
const CLOSE_ENOUGH = 1.002;
/** Lightest mass that the heat law takes, g; the law's own. */
const LIGHTEST_G = 1;

/** A search asks for the pot life of a dozen masses, at every keystroke. */
const workableIn = remembered(workableS);

/** The largest mass that is mixed and poured while it is workable in that mass, by halving; 0 when none is. */
function largestInTimeG(
	pace: { mixS: number; rateGPerMin: number; limitG: number },
	workS: (massG: number) => number
): number {
	const { mixS, rateGPerMin, limitG } = pace;
	const isInTime = (massG: number): boolean => {
		const byTimeG = largestCupG({
			workingTimeS: Math.max(1, workS(massG)),
			mixingTimeS: mixS,
			layingRateGPerMin: rateGPerMin,
			limitG
		});
		return byTimeG !== null && byTimeG >= massG;
	};
	if (!isInTime(LIGHTEST_G)) return 0;
	if (isInTime(limitG)) return limitG;
	let fits = LIGHTEST_G;
	let fails = limitG;
	while (fails / fits > CLOSE_ENOUGH) {
		const middle = Math.sqrt(fits * fails);
		if (isInTime(middle)) fits = middle;
		else fails = middle;
	}
	return fits;
}

/** What is melted is carried by weight alone. */
function meltedPace(stepG: number): PourPace {
	const largestG = roundDownTo(DEFAULTS.pourBucketG.value, stepG);
	return {
		largestG,
		largestRange: { low: largestG, high: largestG },
		mixS: 0,
		potShare: { low: 1, high: 1 },
		potInputs: [],
		workS: () => Number.POSITIVE_INFINITY,
		isLimitedByTime: false,
		isMelted: true
	};
}

/**
 * The pace of the first pour; null when the casting's sheet gives no pot life, unless it is melted.
 * `largestG` is 0 when nothing can be mixed in time.
 */
export function pourPace(draft: Draft): PourPace | null {
	const { materials, shop } = draft.inputs;
	const { casting } = materials;
	if (isMelted(casting)) return meltedPace(shop.scaleReadabilityG);
	if (!casting.potLife) return null;
	const mixS = casting.mixS ?? DEFAULTS.mixS.value;
	const pot = roomTime({
		label: 'pot life',
		sheet: casting.potLife,
		fallback: 'mixS',
		temperatureC: draft.temperatureC,
		spreadK: shop.roomSpreadK,
		safe: 'exact'
	});
	const curing = curingMaterial(casting);
	const kPerS = curing && calibrated(curing.material);
	const ends = pot.range ?? { low: pot.timeS, high: pot.timeS };
	const shortest = ends.low / pot.timeS;
	const workS = (massG: number): number =>
		curing && kPerS !== null
			? shortest *
				workableIn(
					curing.material,
					{ kind: 'cup', massG: Math.max(LIGHTEST_G, massG) },
					draft.temperatureC,
					kPerS
				)
			: ends.low;
	const limitG = DEFAULTS.pourBucketG.value;
	const { value: rateGPerMin, range: rates } = DEFAULTS.pourGPerMin;
	const potShare = { low: 1, high: ends.high / ends.low };
	const used = 1 - DEFAULTS.pourSpare.value;
	const at = (rate: number, share: number): number =>
		largestInTimeG({ mixS, rateGPerMin: rate, limitG }, (massG) => used * share * workS(massG));
	const exactG = at(rateGPerMin, 1);
	const largestG = roundDownTo(exactG, shop.scaleReadabilityG);
	return {
		largestG,
		largestRange: {
			low: Math.min(largestG, at(rates.low, potShare.low)),
			high: Math.max(largestG, at(rates.high, potShare.high))
		},
		mixS,
		potShare,
		potInputs: [
			...pot.inputs,
			...(curing?.inputs.filter(({ symbol }) => symbol !== 't_pot') ?? [])
		],
		workS,
		isLimitedByTime: exactG < limitG,
		isMelted: false
	};
}

/** Leaves the trace of the largest batch. */
export function traceLargestBatch(draft: Draft, pace: PourPace): number {
	const { largestG, largestRange, mixS, workS, isLimitedByTime } = pace;
	const { casting } = draft.inputs.materials;
	return traced(draft, 'pour.batches.largestG', {
		label: pace.isMelted
			? 'Most that one person carries and pours at a time'
			: 'Largest batch that one person mixes and pours in time',
		value: largestG,
		unit: 'g',
		law: largestCupLaw,
		inputs: [
			...(pace.isMelted
				? []
				: [
						defaultInput('q', 'pourGPerMin'),
						computed(
							't_work',
							'shortest likely pot life in that mass, at room temperature',
							workS(largestG),
							's'
						),
						casting.mixS ? fromSheet('t_mix', 'mixing', mixS, 's') : defaultInput('t_mix', 'mixS'),
						defaultInput('s_spare', 'pourSpare')
					]),
			defaultInput('m_bucket', 'pourBucketG')
		],
		...(isOneNumber(largestRange)
			? { noRange: 'No range is given: the bucket decides at both ends.' }
			: largestRange),
		note: isLimitedByTime
			? 'Set by the time it takes to mix and pour it.'
			: 'Set by what one person lifts and pours, not by time.'
	});
}
