import { chooseProcess, type ProcessChoice } from '../laws/process-choice';
import {
	COMMON_BENCH_TIMES,
	type ProcessPattern,
	type ProcessTerms
} from '../laws/process-estimate';
import type { Sheet } from '../materials/sheet';
import { boughtFraction } from '../materials/tap-water';
import { estimateFollows, evenFollows, type EstimateFollows, type Follows } from './block-ranges';
import { blockReason, isBlockBetter } from './block-reason';
import { traceBlock } from './block-trace';
import type { CalendarPlan } from './calendar-plan';
import type { Plan } from './plan';
import type { Draft } from './trace';

export interface BlockFacts {
	gloveMl: number;
	gloveG: number;
	shellG: number;
	gloveMm: number;
	shellMm: number;
	gapMm: number;
	calendar: CalendarPlan;
}

/** The law of estimates takes no more days; numerical choice. */
const MOST_DAYS = 365;

/** The cheapest kit's price by weight, per kilogram of the mix; 0 when nothing is priced. */
function pricePerKg(sheet: Sheet): number {
	const bought = 1000 * boughtFraction(sheet);
	const prices = sheet.kits.map(({ massG, price }) => (bought * price) / massG);
	return prices.length > 0 ? Math.min(...prices) : 0;
}

/**
 * The same pattern as a solid block of the same rubber with the same margin as the frame's gap, and
 * which of the two makes more sense. Both are priced by weight used, so that leftovers of kits do
 * not decide.
 */
export function blockPlan(
	draft: Draft,
	facts: BlockFacts
): { block: Plan['block']; process: ProcessChoice; at: EstimateFollows; evenAt: Follows } {
	const { surface, inputs } = draft;
	const { build, shell } = inputs.materials;
	const areaMl = (surface.exposedAreaCm2 * facts.gloveMm) / 10;
	const extra = Math.min(5, Math.max(0, facts.gloveMl / Math.max(1e-6, areaMl) - 1));
	// Densities as they come out of the plan, so that both sides of the comparison weigh what it says.
	const shellMl = ((surface.exposedAreaCm2 * facts.shellMm) / 10) * (1 + extra);
	const within = (gPerMl: number): number => Math.min(5, Math.max(0.1, gPerMl));
	const boxMl = (surface.lengthMm * surface.widthMm * surface.heightMm) / 1000;
	const common = otherTimes(facts.calendar.laborS, surface.exposedAreaCm2);
	const own = inputs.shop.benchTimes;
	const terms: ProcessTerms = {
		gloveMm: facts.gloveMm,
		gloveExtraFraction: extra,
		shellMm: facts.shellMm,
		blockGapMm: Math.min(200, facts.gapMm),
		layerMm: facts.gloveMm,
		layerExtraFraction: extra,
		brushRubberGPerMl: within(facts.gloveG / (areaMl * (1 + extra))),
		pourRubberGPerMl: within(build.mixedDensityGPerMl),
		shellGPerMl: within(facts.shellG / shellMl),
		brushRubberPricePerKg: pricePerKg(build),
		pourRubberPricePerKg: pricePerKg(build),
		shellPricePerKg: pricePerKg(shell),
		ratePricePerH: inputs.shop.laborPerHour,
		benchTimes: {
			'solid block': own?.['solid block'] ?? common['solid block'],
			'poured layer': own?.['poured layer'] ?? common['poured layer'],
			glove: {
				fixedS: facts.calendar.laborS,
				perM2S: 0,
				daysCount: Math.min(MOST_DAYS, Math.ceil(facts.calendar.moldDays))
			}
		}
	};
	const standing = (areaCm2: number, volumeMl: number): ProcessPattern => ({
		lengthMm: Math.max(1, surface.lengthMm),
		widthMm: Math.max(1, surface.widthMm),
		heightMm: Math.max(1, surface.heightMm),
		areaCm2: Math.max(0.01, areaCm2),
		volumeMl: Math.min(boxMl, volumeMl)
	});
	const pattern = standing(surface.exposedAreaCm2, surface.volumeMl);
	const choice = chooseProcess({ pattern, terms, units: inputs.shop.units });
	const { gloveG, shellG } = facts;
	const compared = { gloveG, shellG, terms, standing, estimates: choice.estimates };
	const at = estimateFollows(draft, compared);
	const glove = choice.estimates.find(({ process }) => process === 'glove');
	const block = choice.estimates.find(({ process }) => process === 'solid block');
	if (!glove || !block) throw new RangeError('no estimate for glove and block');
	const better = isBlockBetter(glove, block) ? 'block' : 'glove';
	return {
		block: {
			...traceBlock(draft, gloveG, glove, block, at),
			better,
			why: blockReason(better, glove, block, inputs.shop)
		},
		process: choice,
		at,
		evenAt: evenFollows(draft, compared)
	};
}

/**
 * Bench times of the other ways. The plan of the glove also counts briefing, release, hold points,
 * first pour and handover, which the common times leave out: every way takes that much more.
 */
function otherTimes(gloveLaborS: number, areaCm2: number): typeof COMMON_BENCH_TIMES {
	const { glove, 'solid block': block, 'poured layer': layer } = COMMON_BENCH_TIMES;
	const moreS = Math.max(0, gloveLaborS - glove.fixedS - (glove.perM2S * areaCm2) / 10_000);
	return {
		glove,
		'solid block': { ...block, fixedS: block.fixedS + moreS },
		'poured layer': { ...layer, fixedS: layer.fixedS + moreS }
	};
}
