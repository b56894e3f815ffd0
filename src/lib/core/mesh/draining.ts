import { largestHoldingMm } from '../laws/sag';
import type { Exposed } from './exposed';

const BIN_DEG = 5;

/**
 * Area from which a coat of this wet thickness runs off, by the sag limit at each slope, cm². Level
 * faces hold everything; overhangs count as upright walls.
 */
export function drainingAreaCm2(
	{ slopeAreasCm2 }: Pick<Exposed, 'slopeAreasCm2'>,
	coat: { wetMm: number; yieldStressPa: number; densityGPerMl: number }
): number {
	return slopeAreasCm2.reduce((sum, cm2, bin) => {
		const middleDeg = (bin + 0.5) * BIN_DEG;
		// Near facing down the film hangs: it drips no less than it would run on a wall.
		const slopeDeg = Math.min(90, middleDeg);
		const { yieldStressPa, densityGPerMl } = coat;
		return coat.wetMm > largestHoldingMm({ yieldStressPa, densityGPerMl, slopeDeg })
			? sum + cm2
			: sum;
	}, 0);
}
