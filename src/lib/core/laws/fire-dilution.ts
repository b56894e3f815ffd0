import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { neverAllClear, type AirHazard, type NeverAllClear } from './never-all-clear';
import { vaporFlowM3PerH } from './ppm';

export const fireDilutionLaw: Law = {
	id: 'fire-dilution',
	name: 'Air flow to keep a vapor well below its lower explosive limit',
	formula: 'Q = G · 100 · S_f / (LEL · B)',
	source: 'ACGIH, Industrial Ventilation, dilution for fire and explosion (from memory)',
	validity:
		'Average over the room; near the liquid it can burn all the same. S_f 4 (25% of the LEL) to 12; B 1 up to 121 °C, 0.7 above.'
};

export const lelFractionLaw: Law = {
	id: 'lel-fraction',
	name: 'Share of the lower explosive limit that a flow leaves',
	formula: 'f = 100 · G / (Q · LEL)',
	source: 'Mass balance of a well-mixed room in steady state',
	validity: 'As for the flow.'
};

/** Above this air temperature a flammable vapor needs less of itself to burn (121 °C = 250 °F). */
const HOT_C = 121;
/** ACGIH, Industrial Ventilation: 0.7 of the limit when hot (from memory). */
const HOT_FACTOR = 0.7;

export interface FlammableRelease extends AirHazard {
	releaseGPerMin: number;
	molarMassGPerMol: number;
	/** Percent by volume; where lists differ, the lowest. */
	lelPct: number;
	temperatureC: number;
}

function assertLel(lelPct: number): void {
	assertWithin(lelPct, 0.1, 30, 'lelPct');
}

/**
 * Flow that keeps the room's average at 1 / `safetyFactor` of the lower explosive limit.
 *
 * @param safetyFactor - 4 for a room aired all the time, 10 to 12 for a batch oven
 * @param processC - air temperature where the vapor is, when that is an oven
 * @throws RangeError for impossible input or a safety factor outside 4 to 12
 */
export function fireDilutionFlow({
	safetyFactor = 4,
	processC,
	...release
}: FlammableRelease & { safetyFactor?: number; processC?: number }): NeverAllClear & {
	flowM3PerH: number;
} {
	assertLel(release.lelPct);
	assertWithin(safetyFactor, 4, 12, 'safetyFactor');
	if (processC !== undefined) assertWithin(processC, -20, 400, 'processC');
	const hotFactor = (processC ?? release.temperatureC) > HOT_C ? HOT_FACTOR : 1;
	const vapor = vaporFlowM3PerH(release);
	return {
		flowM3PerH: (vapor * 100 * safetyFactor) / (release.lelPct * hotFactor),
		...neverAllClear([release])
	};
}

/**
 * Share of the lower explosive limit that the room's average reaches with a given flow; 0.25 and
 * more is too much.
 *
 * @throws RangeError for impossible input
 */
export function lelFraction({
	flowM3PerH,
	...release
}: FlammableRelease & { flowM3PerH: number }): NeverAllClear & { fraction: number } {
	assertLel(release.lelPct);
	assertWithin(flowM3PerH, 0.01, 1e7, 'flowM3PerH');
	const fraction = (100 * vaporFlowM3PerH(release)) / (flowM3PerH * release.lelPct);
	return { fraction, ...neverAllClear([release]) };
}
