import type { EndingRelease } from '../laws/exposure-dose';
import { vaporFlowM3PerH } from '../laws/ppm';
import { SUBSTANCES, type SubstanceId } from '../laws/substances';
import type { Draft } from './trace';

/** A release into the room, from its rate (g/min), the outdoor air (m³/h), the mixing factor and the room's volume (m³). */
export type ReleaseAt = (
	rateGPerMin?: number,
	flowM3PerH?: number,
	mixingFactor?: number,
	roomM3?: number
) => EndingRelease;

/** One substance given off evenly for `releaseS`, as the build-up laws read it. */
export function releaseAt(
	{ temperatureC }: Draft,
	substanceId: SubstanceId,
	releaseS: number,
	ceilingPpm: number | null
): ReleaseAt {
	const { molarMassGPerMol, sensitizer } = SUBSTANCES[substanceId];
	return (rateGPerMin = 0, flowM3PerH = 0, mixingFactor = 1, roomM3 = 0) => ({
		effectiveM3PerH: flowM3PerH / mixingFactor,
		roomM3,
		sensitizer,
		vaporM3PerH: vaporFlowM3PerH({
			releaseGPerMin: rateGPerMin,
			molarMassGPerMol: molarMassGPerMol.value,
			temperatureC
		}),
		releaseS,
		ceilingPpm
	});
}
