import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { laborPrice } from './cost';

export const processEstimateLaw: Law = {
	id: 'process-estimate',
	name: 'Rubber, mass, cost and days of a way to build the mold',
	formula:
		'glove: V = A · t · (1 + o); block: V = (l + 2g)(w + 2g)(h + g) − V_p; poured layer: V = A · t · (1 + o)',
	source: 'Mensuration; allowances, bench times and days are common practice, no source',
	validity: 'One pattern standing on a board; an estimate to compare ways, not an order.'
};

export type BuildProcess = 'glove' | 'solid block' | 'poured layer';

/** The pattern as it stands on the board: bounding box, exposed area and volume. */
export interface ProcessPattern {
	lengthMm: number;
	widthMm: number;
	heightMm: number;
	areaCm2: number;
	volumeMl: number;
}

/** Bench time of a way to build: a fixed part and a part that grows with the exposed area. */
export interface BenchTime {
	fixedS: number;
	perM2S: number;
	/** Working days from first mix to open mold, overnight cures included. */
	daysCount: number;
}

/**
 * Common practice, no source: attended time only. A glove is laid in five or six coats and gets a
 * shell; a block is one pour; a layer needs a clay blanket, then the shell, then the pour.
 */
export const COMMON_BENCH_TIMES: Readonly<Record<BuildProcess, BenchTime>> = {
	glove: { fixedS: 5 * 3600, perM2S: 9 * 3600, daysCount: 3 },
	'solid block': { fixedS: 2 * 3600, perM2S: 1 * 3600, daysCount: 2 },
	'poured layer': { fixedS: 7 * 3600, perM2S: 8 * 3600, daysCount: 4 }
};

export interface ProcessTerms {
	gloveMm: number;
	/** Flange, edges and cup losses as a share of area × thickness, so that the real plan fits. */
	gloveExtraFraction: number;
	shellMm: number;
	blockGapMm: number;
	layerMm: number;
	layerExtraFraction: number;
	brushRubberGPerMl: number;
	pourRubberGPerMl: number;
	shellGPerMl: number;
	brushRubberPricePerKg: number;
	pourRubberPricePerKg: number;
	shellPricePerKg: number;
	ratePricePerH: number;
	benchTimes?: Readonly<Record<BuildProcess, BenchTime>>;
}

export interface ProcessEstimate {
	process: BuildProcess;
	rubberMl: number;
	rubberG: number;
	shellG: number;
	/** Rubber and shell, without frame and casting. */
	moldG: number;
	materialPrice: number;
	laborS: number;
	laborPrice: number;
	totalPrice: number;
	daysCount: number;
}

/** @throws RangeError naming the first value out of range */
export function assertProcessPattern(pattern: ProcessPattern): void {
	assertWithin(pattern.lengthMm, 1, 10_000, 'lengthMm');
	assertWithin(pattern.widthMm, 1, 10_000, 'widthMm');
	assertWithin(pattern.heightMm, 1, 10_000, 'heightMm');
	assertWithin(pattern.areaCm2, 0.01, 1e7, 'areaCm2');
	const boxMl = (pattern.lengthMm * pattern.widthMm * pattern.heightMm) / 1000;
	assertWithin(pattern.volumeMl, 0, boxMl * 1.000001, 'volumeMl');
}

function assertTerms(terms: ProcessTerms): void {
	for (const key of ['gloveMm', 'shellMm', 'blockGapMm', 'layerMm'] as const) {
		assertWithin(terms[key], 0.5, 200, key);
	}
	assertWithin(terms.gloveExtraFraction, 0, 5, 'gloveExtraFraction');
	assertWithin(terms.layerExtraFraction, 0, 5, 'layerExtraFraction');
	for (const key of ['brushRubberGPerMl', 'pourRubberGPerMl', 'shellGPerMl'] as const) {
		assertWithin(terms[key], 0.1, 5, key);
	}
	for (const key of ['brushRubberPricePerKg', 'pourRubberPricePerKg', 'shellPricePerKg'] as const) {
		assertWithin(terms[key], 0, 1e6, key);
	}
}

/**
 * What each way to build the mold takes, glove first. The glove's and the layer's shell cover the
 * same area as the rubber; the block needs none.
 *
 * @throws RangeError naming the first input out of range
 */
export function processEstimates(pattern: ProcessPattern, terms: ProcessTerms): ProcessEstimate[] {
	assertProcessPattern(pattern);
	assertTerms(terms);
	const { lengthMm, widthMm, heightMm, areaCm2, volumeMl } = pattern;
	const gap = terms.blockGapMm;
	const areaMl = (thicknessMm: number, extraFraction: number) =>
		(areaCm2 * thicknessMm * (1 + extraFraction)) / 10;
	const shellMl = areaMl(terms.shellMm, terms.gloveExtraFraction);
	const boxMl = ((lengthMm + 2 * gap) * (widthMm + 2 * gap) * (heightMm + gap)) / 1000;
	const brush = [terms.brushRubberGPerMl, terms.brushRubberPricePerKg] as const;
	const pour = [terms.pourRubberGPerMl, terms.pourRubberPricePerKg] as const;
	const ways = [
		['glove', areaMl(terms.gloveMm, terms.gloveExtraFraction), brush, shellMl],
		['solid block', boxMl - volumeMl, pour, 0],
		['poured layer', areaMl(terms.layerMm, terms.layerExtraFraction), pour, shellMl]
	] as const;
	return ways.map(([process, rubberMl, [rubberGPerMl, rubberPricePerKg], wayShellMl]) => {
		const time = (terms.benchTimes ?? COMMON_BENCH_TIMES)[process];
		assertWithin(time.daysCount, 0, 365, `daysCount of ${process}`);
		const rubberG = rubberMl * rubberGPerMl;
		const shellG = wayShellMl * terms.shellGPerMl;
		const materialPrice = (rubberG * rubberPricePerKg + shellG * terms.shellPricePerKg) / 1000;
		const laborS = time.fixedS + (time.perM2S * areaCm2) / 1e4;
		const labor = laborPrice({ laborS, ratePricePerH: terms.ratePricePerH });
		return {
			process,
			rubberMl,
			rubberG,
			shellG,
			moldG: rubberG + shellG,
			materialPrice,
			laborS,
			laborPrice: labor,
			totalPrice: materialPrice + labor,
			daysCount: time.daysCount
		};
	});
}
