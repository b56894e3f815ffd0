import { roundToReadability } from '../quantity/rounding';

/** "120" or "120.5": a mass with as many digits as the scale shows. */
export function scaleText(massG: number, readabilityG: number): string {
	const decimals = Math.max(0, Math.ceil(-Math.log10(readabilityG) - 1e-9));
	return roundToReadability(massG, readabilityG).toFixed(Math.min(3, decimals));
}
