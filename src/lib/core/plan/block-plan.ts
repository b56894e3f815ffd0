import {
	COMMON_BENCH_TIMES,
	processEstimateLaw,
	processEstimates,
	type BuildProcess,
	type ProcessEstimate,
	type ProcessPattern,
	type ProcessTerms
} from '../laws/process-estimate';
import { chooseProcess, processChoiceLaw, type ProcessChoice } from '../laws/process-choice';
import { evenScale } from '../laws/process-scale';
import type { Sheet } from '../materials/sheet';
import type { CalendarPlan } from './calendar-plan';
import type { Plan } from './plan';
import { computed, inherited, traced, type Draft } from './trace';

export interface BlockFacts {
	gloveMl: number;
	gloveG: number;
	shellG: number;
	gloveMm: number;
	shellMm: number;
	gapMm: number;
	calendar: CalendarPlan;
}

type EstimateKey = Exclude<keyof ProcessEstimate, 'process'>;
/** One number of one way to build, as it follows the exposed area (cm²) and the volume (mL) of the pattern. */
export type Follows = (areaCm2: number, volumeMl: number) => number;
/** That for every number of every way. */
export type EstimateAt = (process: BuildProcess, key: EstimateKey) => Follows;

/** The law of estimates takes no more days; numerical choice. */
const MOST_DAYS = 365;

/** The cheapest kit's price by weight, per kilogram; 0 when nothing is priced. */
function pricePerKg({ kits }: Sheet): number {
	const prices = kits.map(({ massG, price }) => (1000 * price) / massG);
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
): { block: Plan['block']; process: ProcessChoice; at: EstimateAt; evenAt: Follows } {
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
	const choice = chooseProcess({ pattern, terms });
	const at: EstimateAt = (process, key) => (areaCm2, volumeMl) =>
		processEstimates(standing(areaCm2, volumeMl), terms).find((way) => way.process === process)?.[
			key
		] ?? Number.NaN;
	const glove = choice.estimates.find(({ process }) => process === 'glove');
	const block = choice.estimates.find(({ process }) => process === 'solid block');
	if (!glove || !block) throw new RangeError('no estimate for glove and block');
	const better = isBlockBetter(glove, block) ? 'block' : 'glove';
	return {
		block: {
			...traceBlock(draft, facts, glove, block, at),
			better,
			why: reason(better, glove, block, inputs.shop.currency)
		},
		process: choice,
		at,
		evenAt: (areaCm2, volumeMl) => evenScale(standing(areaCm2, volumeMl), terms) ?? Number.NaN
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

/** Two ways within 5 % of each other count as equal in price; then fewer days decide. */
function isBlockBetter(glove: ProcessEstimate, block: ProcessEstimate): boolean {
	const isTie =
		Math.abs(glove.totalPrice - block.totalPrice) <=
		0.05 * Math.max(glove.totalPrice, block.totalPrice);
	return isTie ? block.daysCount < glove.daysCount : block.totalPrice < glove.totalPrice;
}

const kg = (massG: number): string => `${(massG / 1000).toPrecision(3)} kg`;

function reason(
	better: 'glove' | 'block',
	glove: ProcessEstimate,
	block: ProcessEstimate,
	currency: string
): string {
	const facts =
		`The block takes ${kg(block.rubberG)} of rubber and costs ${currency} ${block.totalPrice.toFixed(0)} in ${block.daysCount} days; ` +
		`the glove takes ${kg(glove.rubberG)} and ${kg(glove.shellG)} of shell, costs ${currency} ${glove.totalPrice.toFixed(0)} in ${glove.daysCount} days ` +
		`(materials by weight used, labor included).`;
	return better === 'block'
		? `A solid block makes more sense here. ${facts} A glove pays for larger and deeper patterns.`
		: `The glove makes more sense here. ${facts}`;
}

function traceBlock(
	draft: Draft,
	facts: BlockFacts,
	glove: ProcessEstimate,
	block: ProcessEstimate,
	at: EstimateAt
): Omit<Plan['block'], 'better' | 'why'> {
	const common = [
		computed('A', 'exposed area', draft.surface.exposedAreaCm2, 'cm2', 'surface.exposedAreaCm2'),
		computed('V_p', 'volume of the pattern', draft.surface.volumeMl, 'mL', 'surface.volumeMl'),
		computed('t', 'glove', facts.gloveMm, 'mm', 'glove.thicknessMm'),
		computed('g', 'margin of the block, as the frame’s gap', facts.gapMm, 'mm', 'frame.gapMm')
	];
	const number = (
		key: string,
		label: string,
		value: number,
		unit: 'mL' | 'g' | 'currency' | 'count',
		follows: Follows
	): number =>
		traced(draft, `block.${key}`, {
			label,
			value,
			unit,
			law: unit === 'currency' ? processChoiceLaw : processEstimateLaw,
			inputs: common,
			...inherited(draft, common, follows)
		});
	return {
		rubberMl: number(
			'rubberMl',
			'Rubber in a solid block',
			block.rubberMl,
			'mL',
			at('solid block', 'rubberMl')
		),
		rubberG: number(
			'rubberG',
			'Rubber in a solid block',
			block.rubberG,
			'g',
			at('solid block', 'rubberG')
		),
		gloveRubberG: number(
			'gloveRubberG',
			'Rubber in the glove',
			facts.gloveG,
			'g',
			at('glove', 'rubberG')
		),
		cost: number(
			'cost',
			'Solid block: rubber used and labor',
			block.totalPrice,
			'currency',
			at('solid block', 'totalPrice')
		),
		gloveCost: number(
			'gloveCost',
			'Glove: rubber and shell used, and labor',
			glove.totalPrice,
			'currency',
			at('glove', 'totalPrice')
		),
		days: number(
			'days',
			'Days for a solid block',
			block.daysCount,
			'count',
			at('solid block', 'daysCount')
		),
		gloveDays: number(
			'gloveDays',
			'Days for the glove mold',
			glove.daysCount,
			'count',
			at('glove', 'daysCount')
		)
	};
}
