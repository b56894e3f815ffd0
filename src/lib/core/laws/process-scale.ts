import type { Law } from '../quantity/figure';
import {
	assertProcessPattern,
	processEstimates,
	type ProcessPattern,
	type ProcessTerms
} from './process-estimate';

export const processScaleLaw: Law = {
	id: 'process-scale',
	name: 'Size from which a glove is cheaper than a block',
	formula: 'cost_glove(s) = cost_block(s), lengths · s, area · s², volume · s³, by bisection',
	source: 'Geometric similarity; bisection, any text of numerical analysis',
	validity:
		'Similar patterns, a tenth to ten times as large; thicknesses and gaps stay as they are.'
};

const STEPS = 60;

function scaled(pattern: ProcessPattern, scale: number): ProcessPattern {
	return {
		lengthMm: pattern.lengthMm * scale,
		widthMm: pattern.widthMm * scale,
		heightMm: pattern.heightMm * scale,
		areaCm2: pattern.areaCm2 * scale ** 2,
		volumeMl: pattern.volumeMl * scale ** 3
	};
}

/**
 * How many times as large a similar pattern must be for glove and solid block to cost the same;
 * null when one of them is the cheaper at every size from a tenth to ten times.
 *
 * @throws RangeError for impossible input
 */
export function evenScale(pattern: ProcessPattern, terms: ProcessTerms): number | null {
	assertProcessPattern(pattern);
	const sides = [pattern.lengthMm, pattern.widthMm, pattern.heightMm];
	// The ends keep every scaled pattern inside the range that an estimate accepts.
	let low = Math.max(0.1, 1.000001 / Math.min(...sides), Math.sqrt(0.0100001 / pattern.areaCm2));
	let high = Math.min(10, 9999.99 / Math.max(...sides), Math.sqrt(9.9999e6 / pattern.areaCm2));
	const gloveIsCheaper = (scale: number): boolean => {
		const [glove, block] = processEstimates(scaled(pattern, scale), terms);
		return !!glove && !!block && glove.totalPrice < block.totalPrice;
	};
	if (low >= high || gloveIsCheaper(low) || !gloveIsCheaper(high)) return null;
	for (let step = 0; step < STEPS; step++) {
		const middle = Math.sqrt(low * high);
		if (gloveIsCheaper(middle)) high = middle;
		else low = middle;
	}
	return high;
}
