import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { neverAllClear, type AirHazard, type NeverAllClear } from './never-all-clear';
import { vaporFlowM3PerH } from './ppm';

export const dilutionFlowLaw: Law = {
	id: 'dilution-flow',
	name: 'Air flow to dilute a vapor to a limit',
	formula: 'Q = K · G / C',
	source:
		'University of Toledo, Industrial Ventilation, related formulae: Q = (G / C) · K; K from 1 to 10: CDC, MMWR 43 (RR-13), 1994, glossary, air mixing',
	validity:
		'Even release, worker away from it, low toxicity, clean supply air, C below 1%; K from 1 (ideal) to 10 (poor). Not for isocyanates, sensitizers, dust or fume.'
};

export interface DilutionFlow extends NeverAllClear {
	/** Flow with perfect mixing, m³/h. */
	effectiveM3PerH: number;
	/** Flow to provide: the effective one times the mixing factor, m³/h. */
	flowM3PerH: number;
}

/** One liquid that evaporates in the room. */
export interface Release extends AirHazard {
	releaseGPerMin: number;
	molarMassGPerMol: number;
	limitPpm: number;
	/** 1 where air sweeps past evenly, up to 10 in dead corners. */
	mixingFactor: number;
}

/**
 * Flow that keeps one vapor at its limit in steady state.
 *
 * @throws RangeError for impossible input, a mixing factor outside 1 to 10, or a limit above 1 %
 */
export function dilutionFlow(release: Release, temperatureC: number): DilutionFlow {
	return additiveDilutionFlow([release], temperatureC);
}

/**
 * Flow for several vapors whose effects add up: the sum of their flows, as when nothing is known
 * to the contrary.
 *
 * @throws RangeError for no release or for impossible input
 */
export function additiveDilutionFlow(
	releases: readonly Release[],
	temperatureC: number
): DilutionFlow {
	assertWithin(releases.length, 1, 100, 'number of releases');
	let effectiveM3PerH = 0;
	let flowM3PerH = 0;
	for (const { limitPpm, mixingFactor, ...release } of releases) {
		assertWithin(limitPpm, 1e-6, 10_000, 'limitPpm');
		assertWithin(mixingFactor, 1, 10, 'mixingFactor');
		const effective = (vaporFlowM3PerH({ ...release, temperatureC }) * 1e6) / limitPpm;
		effectiveM3PerH += effective;
		flowM3PerH += effective * mixingFactor;
	}
	return { effectiveM3PerH, flowM3PerH, ...neverAllClear(releases) };
}
