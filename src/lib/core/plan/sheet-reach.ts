import type { Sheet } from '../materials/sheet';
import { coatReachMm } from '../mesh/reach';
import { largestHoldingMm } from '../laws/sag';

type Flow = Pick<Sheet, 'body' | 'yieldStressPa' | 'mixedDensityGPerMl'>;

/** The sag limit is known within these, Pa; they are the law's own. */
const YIELD_PA = { least: 0.1, most: 5000 };

/**
 * Reach of a first coat of a material, mm. Without a yield stress on its sheet nobody can tell how far it
 * slumps into a slot: it is taken to be as stiff as it is thick.
 */
export function sheetReachMm({ yieldStressPa, mixedDensityGPerMl }: Flow, wetMm: number): number {
	return yieldStressPa === undefined
		? wetMm
		: coatReachMm({ wetMm, yieldPa: yieldStressPa, densityGPerMl: mixedDensityGPerMl });
}

/** Thickest coat of a material that stays on a slope, mm; null when its sheet can't tell. */
export function sheetHoldingMm(
	{ yieldStressPa, mixedDensityGPerMl }: Flow,
	slopeDeg: number
): number | null {
	if (yieldStressPa === undefined) return null;
	return largestHoldingMm({
		yieldStressPa: Math.min(YIELD_PA.most, Math.max(YIELD_PA.least, yieldStressPa)),
		densityGPerMl: mixedDensityGPerMl,
		slopeDeg: Math.min(90, Math.max(1, slopeDeg))
	});
}

/**
 * Greatest slope on which a coat of this thickness stays, degrees; 90 when it stays on every wall, null
 * when the sheet can't tell. What flows freely and gives no yield stress stays on no slope.
 */
export function holdsToDeg(sheet: Flow, thicknessMm: number): number | null {
	const uprightMm = sheetHoldingMm(sheet, 90);
	if (uprightMm === null)
		return sheet.body === 'free-flowing' || sheet.body === 'liquid' ? 0 : null;
	const sine = uprightMm / thicknessMm;
	return sine >= 1 ? 90 : (Math.asin(sine) * 180) / Math.PI;
}
