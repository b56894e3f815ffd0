import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const airChangesLaw: Law = {
	id: 'air-changes',
	name: 'Air changes an hour',
	formula: 'n = Q / V',
	source: 'CDC, MMWR 43 (RR-13), 1994, glossary, air changes: flow through a space over its volume',
	validity: 'Outdoor air only; air that is turned round in the room doesn’t count.'
};

export const measuredFlowLaw: Law = {
	id: 'measured-flow',
	name: 'Flow of a fan from the air speed at its grille',
	formula: 'Q = v · A · k',
	source: 'Continuity; k is the free share of the grille, common practice, no source',
	validity: 'Speed as the mean of a grid of at least nine readings; anemometer in calibration.'
};

/**
 * Air changes an hour.
 *
 * @throws RangeError outside 0 to 1e7 m³/h or 0.1 to 1e6 m³
 */
export function airChangesPerH({
	flowM3PerH,
	roomM3
}: {
	flowM3PerH: number;
	roomM3: number;
}): number {
	assertWithin(flowM3PerH, 0, 1e7, 'flowM3PerH');
	assertWithin(roomM3, 0.1, 1e6, 'roomM3');
	return flowM3PerH / roomM3;
}

/**
 * Flow from the mean air speed at an opening, m³/h.
 *
 * @param freeFraction - share of the opening that is not blades or mesh, 0.1 to 1
 * @throws RangeError for impossible input
 */
export function measuredFlowM3PerH({
	meanMPerS,
	areaCm2,
	freeFraction = 1
}: {
	meanMPerS: number;
	areaCm2: number;
	freeFraction?: number;
}): number {
	assertWithin(meanMPerS, 0, 60, 'meanMPerS');
	assertWithin(areaCm2, 1, 1e6, 'areaCm2');
	assertWithin(freeFraction, 0.1, 1, 'freeFraction');
	return meanMPerS * areaCm2 * 1e-4 * freeFraction * 3600;
}
