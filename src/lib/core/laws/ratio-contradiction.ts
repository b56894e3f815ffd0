import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import {
	assertDensities,
	densityRatio,
	massPartsBPer100A,
	mixedDensityGPerMl,
	volumePartsBPer100A,
	type Pair
} from './volume-ratio';

export const ratioContradictionLaw: Law = {
	id: 'ratio-contradiction',
	name: 'Weight ratio, volume ratio and densities must agree',
	formula: 'd = (r_A / r_B) / (v_A / v_B) / (ρ_A / ρ_B) − 1; agree when |d| ≤ tolerance',
	source: 'definition of density (arithmetic); default tolerance 3%: common practice, no source',
	validity: 'two parts at one temperature; sheets round their ratios, so small gaps mean nothing'
};

/** Data sheets round a volume ratio to whole parts; common practice, no source. */
export const RATIO_TOLERANCE_FRACTION = 0.03;

export interface RatioContradiction {
	/** How far the weight ratio A:B lies above (+) or below (−) what volume ratio and densities ask. */
	deviationFraction: number;
	/** The number that stands alone against the others, when a mixed density tells; else null. */
	off: 'weight ratio' | 'volume ratio' | 'density' | null;
	/** What each number would need to be if it were the wrong one. */
	needed: {
		massPartsBPer100A: number;
		volumePartsBPer100A: number;
		/** ρA / ρB. */
		densityRatio: number;
		densityAGPerMl: number;
		densityBGPerMl: number;
	};
}

interface Sheet {
	massParts: Pair;
	volumeParts: Pair;
	densitiesGPerMl: Pair;
	mixedGPerMl?: number;
	toleranceFraction?: number;
}

/** Which ratio the mixed density speaks for; the other one is off. */
function whichIsOff(sheet: Sheet, mixedGPerMl: number): RatioContradiction['off'] {
	const { massParts, volumeParts, densitiesGPerMl } = sheet;
	const byMassParts = mixedDensityGPerMl({ massParts, densitiesGPerMl });
	const byVolumeParts = mixedDensityGPerMl({
		massParts: [100, massPartsBPer100A({ volumeParts, densitiesGPerMl })],
		densitiesGPerMl
	});
	const massGap = Math.abs(byMassParts / mixedGPerMl - 1);
	const volumeGap = Math.abs(byVolumeParts / mixedGPerMl - 1);
	const between = Math.abs(byMassParts / byVolumeParts - 1);
	// A mixed density outside what either ratio gives can only come from a wrong density.
	if (Math.min(massGap, volumeGap) > between) return 'density';
	if (between < 0.002) return null;
	return massGap < volumeGap ? 'volume ratio' : 'weight ratio';
}

/**
 * Checks a data sheet against itself.
 *
 * @param sheet - `toleranceFraction` 0 to 0.5, default 0.03; `mixedGPerMl` helps to tell which is off
 * @returns null when the numbers agree within the tolerance
 * @throws RangeError for parts, densities or tolerance out of range
 */
export function ratioContradiction(sheet: Sheet): RatioContradiction | null {
	const tolerance = sheet.toleranceFraction ?? RATIO_TOLERANCE_FRACTION;
	assertWithin(tolerance, 0, 0.5, 'toleranceFraction');
	assertDensities(sheet.densitiesGPerMl);
	if (sheet.mixedGPerMl !== undefined) assertDensities([sheet.mixedGPerMl]);

	const [densityA, densityB] = sheet.densitiesGPerMl;
	const neededRatio = densityRatio(sheet);
	const deviationFraction = neededRatio / (densityA / densityB) - 1;
	if (Math.abs(deviationFraction) <= tolerance) return null;

	return {
		deviationFraction,
		off: sheet.mixedGPerMl === undefined ? null : whichIsOff(sheet, sheet.mixedGPerMl),
		needed: {
			massPartsBPer100A: massPartsBPer100A(sheet),
			volumePartsBPer100A: volumePartsBPer100A(sheet),
			densityRatio: neededRatio,
			densityAGPerMl: neededRatio * densityB,
			densityBGPerMl: densityA / neededRatio
		}
	};
}
