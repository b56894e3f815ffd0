import { peakMoment, workableS, type CuringMaterial } from '../laws/mass-effect';
import type { Sheet } from '../materials/sheet';
import { curingMaterial } from './curing-material';
import { calibrated } from './heat-ranges';
import { remembered } from './remembered';
import type { Draft } from './trace';

export interface CupLifeRow {
	massG: number;
	/** From the end of mixing till it must be laid, s. */
	workingS: number;
	/** Hottest when it is forgotten, °C. */
	peakC: number;
}

/** Rows of the table, evenly spaced over the logarithm of the mass; numerical choice. */
const ROWS = 6;
/** The law of mass counts no further, g; numerical choice. */
const MOST_G = 100_000;

/** The life of one mass beside another's, and its heat: slow, so answers are kept. */
const ofMass = remembered(
	(material: CuringMaterial, massG: number, besideG: number, temperatureC: number) => {
		const kPerS = calibrated(material);
		const workable = (g: number) =>
			workableS(material, { kind: 'cup', massG: g }, temperatureC, kPerS);
		return {
			share: Math.min(1, workable(massG) / workable(besideG)),
			peakC: peakMoment(material, { kind: 'cup', massG }, temperatureC, kPerS).temperatureC
		};
	}
);

/**
 * What a cup still works for when more than planned went into it, by the law of mass: from the planned cup to
 * the largest of the shop, full to its brim. The planned life counts up to the mass that the sheet's pot life
 * was measured at, where that is more. Frozen with the plan, so that a bench reads it without the law.
 *
 * @returns null for a material that gives no pot life or no heat, or outside the law's limits
 */
export function cupLives(
	{ inputs: { shop }, temperatureC }: Draft,
	sheet: Sheet,
	planned: { plannedG: number; mixS: number; workingS: number }
): CupLifeRow[] | null {
	const curing = curingMaterial(sheet);
	const { mixS, workingS } = planned;
	const brimG = Math.max(...shop.cupVolumesMl) * sheet.mixedDensityGPerMl;
	const leastG = Math.max(1, planned.plannedG, sheet.potLife?.massG ?? 0);
	const mostG = Math.min(MOST_G, brimG);
	if (!curing || mostG <= leastG) return null;
	try {
		return Array.from({ length: ROWS }, (_, i) => {
			const massG = i === 0 ? leastG : leastG * (mostG / leastG) ** (i / (ROWS - 1));
			const { share, peakC } = ofMass(curing.material, massG, leastG, temperatureC);
			return {
				massG: Math.round(massG * 10) / 10,
				workingS: Math.max(0, Math.floor(share * (mixS + workingS) - mixS)),
				peakC: Math.round(peakC * 10) / 10
			};
		});
	} catch (error) {
		// The plan's own section on heat says which limit it is.
		if (error instanceof RangeError) return null;
		throw error;
	}
}
