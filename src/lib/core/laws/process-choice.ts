import { assertWithin } from '../quantity/assert-within';
import { displayQuantity, type UnitSystem } from '../quantity/display';
import type { Law } from '../quantity/figure';
import { evenScale } from './process-scale';
import {
	processEstimates,
	type BuildProcess,
	type ProcessEstimate,
	type ProcessPattern,
	type ProcessTerms
} from './process-estimate';

export const processChoiceLaw: Law = {
	id: 'process-choice',
	name: 'Choice between glove, solid block and poured layer',
	formula: 'least cost among the ways that fit days and handling limit; within 5%, fewer days',
	source: 'Comparison of estimates; the 5% band is common practice, no source',
	validity: 'As good as the estimates; other grounds (finish, undercut, stock) may overrule it.'
};

/** Two ways this close in price are called equal, and the quicker one wins. */
export const PRICE_TIE_FRACTION = 0.05;

export interface ProcessChoice {
	/** Glove, solid block, poured layer, in this order. */
	estimates: ProcessEstimate[];
	/** The way to build that makes most sense; null when none fits the days and the limit. */
	chosen: BuildProcess | null;
	/** A plain sentence with the numbers that decided. */
	reason: string;
	/** Ways ruled out before cost was looked at, and why. */
	ruledOut: { process: BuildProcess; reason: string }[];
	/** See `evenScale`: from this size of a similar pattern on, a glove is cheaper than a block. */
	evenScale: number | null;
}

const massText = (massG: number, units: UnitSystem): string =>
	units === 'US'
		? displayQuantity(massG, 'g', units)
		: `${(massG / 1000).toFixed(massG < 1000 ? 2 : 1)} kg`;
const facts = (way: ProcessEstimate, units: UnitSystem): string =>
	`${massText(way.rubberG, units)} of rubber, ${(way.laborS / 3600).toFixed(1)} h at the bench and ` +
	`${way.daysCount} days`;

function reasonFor(best: ProcessEstimate, other: ProcessEstimate, units: UnitSystem): string {
	const gapPrice = other.totalPrice - best.totalPrice;
	const percent = best.totalPrice > 0 ? Math.round((100 * gapPrice) / best.totalPrice) : 0;
	const verdict =
		percent === 0
			? 'at the same cost'
			: `and costs ${Math.abs(percent)}% ${percent > 0 ? 'more' : 'less'}`;
	return `The ${best.process} takes ${facts(best, units)}; the ${other.process} takes ${facts(other, units)}, ${verdict}.`;
}

/**
 * The way to build the mold that makes most sense, and why; a small shallow pattern gets the block.
 *
 * @param daysAvailable - working days until the mold must be open
 * @param handlingLimitG - heaviest mold (rubber and shell) that the shop can turn over
 * @throws RangeError for impossible input
 */
export function chooseProcess({
	pattern,
	terms,
	daysAvailable = 365,
	handlingLimitG = 1e8,
	units = 'SI'
}: {
	pattern: ProcessPattern;
	terms: ProcessTerms;
	daysAvailable?: number;
	handlingLimitG?: number;
	/** In which the reason names its masses. */
	units?: UnitSystem;
}): ProcessChoice {
	assertWithin(daysAvailable, 0, 365, 'daysAvailable');
	assertWithin(handlingLimitG, 1, 1e8, 'handlingLimitG');
	const estimates = processEstimates(pattern, terms);
	const ruledOut = estimates.flatMap(({ process, daysCount, moldG }) => {
		if (daysCount > daysAvailable) {
			return [{ process, reason: `takes ${daysCount} days, there are ${daysAvailable}` }];
		}
		return moldG > handlingLimitG
			? [
					{
						process,
						reason: `weighs ${massText(moldG, units)}, the limit is ${massText(handlingLimitG, units)}`
					}
				]
			: [];
	});
	const even = evenScale(pattern, terms);
	const fit = estimates.filter((way) => !ruledOut.some(({ process }) => process === way.process));
	const leastPrice = Math.min(...fit.map((way) => way.totalPrice));
	const [best] = fit
		.filter((way) => way.totalPrice <= leastPrice * (1 + PRICE_TIE_FRACTION))
		.sort((a, b) => a.daysCount - b.daysCount || a.totalPrice - b.totalPrice);
	if (!best) {
		const reasons = ruledOut.map(({ process, reason }) => `the ${process} ${reason}`);
		return {
			estimates,
			chosen: null,
			reason: `No way of building fits: ${reasons.join('; ')}.`,
			ruledOut,
			evenScale: even
		};
	}
	const rival = best.process === 'glove' ? 'solid block' : 'glove';
	const other = estimates.find((way) => way.process === rival) ?? best;
	const excluded = ruledOut.map(({ process, reason }) => ` Ruled out: the ${process} ${reason}.`);
	return {
		estimates,
		chosen: best.process,
		reason: reasonFor(best, other, units) + excluded.join(''),
		ruledOut,
		evenScale: even
	};
}
