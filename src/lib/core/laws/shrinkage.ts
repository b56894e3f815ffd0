import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const shrinkageLaw: Law = {
	id: 'shrinkage',
	name: 'Linear and volume shrinkage',
	formula: 'S = 1 − L / L₀, S_v = 1 − (1 − S)³',
	source: 'Definition, as in ASTM D2566 (withdrawn) for cast resins',
	validity: 'Same in all directions; negative for a material that grows, as plaster does.'
};

export const patternSizeLaw: Law = {
	id: 'pattern-size',
	name: 'Pattern oversize for a wanted part',
	formula: 'L_pattern = L_part / Π (1 − S_i)',
	source: 'Definition of linear shrinkage, applied in turn to glove and casting',
	validity: 'Free to shrink; a core or a stuck face holds it back.'
};

export const partSizeLaw: Law = {
	id: 'part-size',
	name: 'Predicted size of the part',
	formula: 'L_part = L_pattern · Π (1 − S_i)',
	source: 'Definition of linear shrinkage, applied in turn to glove and casting',
	validity: 'As for the pattern; the range comes from the ranges on the data sheets.'
};

/** Shrinkage of one stage as a fraction: likely value and its range. */
export interface ShrinkageStage {
	low: number;
	likely: number;
	high: number;
}

/** Widest that is no slip of the keyboard; common practice, no source. */
const MIN_SHRINKAGE = -0.05;
/** Widest that is no slip of the keyboard; common practice, no source. */
const MAX_SHRINKAGE = 0.25;

function assertShrinkage(fraction: number, name: string): void {
	assertWithin(fraction, MIN_SHRINKAGE, MAX_SHRINKAGE, name);
}

/** Linear shrinkage from a size before and after, a fraction. */
export function linearShrinkageFraction({
	beforeMm,
	afterMm
}: {
	beforeMm: number;
	afterMm: number;
}): number {
	assertWithin(beforeMm, 0.01, 20_000, 'beforeMm');
	assertWithin(afterMm, 0.01, 20_000, 'afterMm');
	const fraction = 1 - afterMm / beforeMm;
	assertShrinkage(fraction, 'linear shrinkage');
	return fraction;
}

/** Volume shrinkage that goes with a linear one, a fraction. */
export function volumeShrinkageFraction(linearFraction: number): number {
	assertShrinkage(linearFraction, 'linearFraction');
	return 1 - (1 - linearFraction) ** 3;
}

/** Factor by which all stages together multiply a length, at one point of their ranges. */
function remaining(stages: readonly ShrinkageStage[], key: keyof ShrinkageStage): number {
	return stages.reduce((factor, stage) => {
		assertShrinkage(stage.low, 'low shrinkage');
		assertWithin(stage.likely, stage.low, stage.high, 'likely shrinkage');
		assertShrinkage(stage.high, 'high shrinkage');
		return factor * (1 - stage[key]);
	}, 1);
}

/**
 * Size to make the pattern for a wanted part, millimeters.
 *
 * @throws RangeError outside 0.01 to 20 000 mm, or for a shrinkage outside −0.05 to 0.25
 */
export function patternSizeMm({
	partMm,
	stages
}: {
	partMm: number;
	stages: readonly ShrinkageStage[];
}): number {
	assertWithin(partMm, 0.01, 20_000, 'partMm');
	return partMm / remaining(stages, 'likely');
}

/**
 * Size that the part will have, with its range, millimeters. The range takes all stages at the same
 * end at once, so it never understates.
 *
 * @throws RangeError outside 0.01 to 20 000 mm, or for a shrinkage outside −0.05 to 0.25
 */
export function partSizeMm({
	patternMm,
	stages
}: {
	patternMm: number;
	stages: readonly ShrinkageStage[];
}): { likelyMm: number; lowMm: number; highMm: number } {
	assertWithin(patternMm, 0.01, 20_000, 'patternMm');
	return {
		likelyMm: patternMm * remaining(stages, 'likely'),
		lowMm: patternMm * remaining(stages, 'high'),
		highMm: patternMm * remaining(stages, 'low')
	};
}
