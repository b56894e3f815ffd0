import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { neverAllClear, type AirHazard, type NeverAllClear } from './never-all-clear';

export const buildupLaw: Law = {
	id: 'buildup',
	name: 'Concentration in a room over time',
	formula: 'C = G/Q′ + (C₀ − G/Q′) · exp(−Q′ · t / V), Q′ = Q / K',
	source: 'ACGIH, Industrial Ventilation, rate of build-up and purging (from memory)',
	validity: 'Well-mixed room, steady release and flow, clean supply air.'
};

export const purgeLaw: Law = {
	id: 'purge',
	name: 'Waiting time until a concentration is reached',
	formula: 't = −(V / Q′) · ln((G − Q′ · C) / (G − Q′ · C₀))',
	source:
		'Without release, CDC, MMWR 43 (RR-13), 1994, Table S3-1: t = −ln(C2/C1) / (Q/V); with release, ACGIH, Industrial Ventilation (from memory)',
	validity: 'As for the build-up; what still evaporates from cups and waste counts as release.'
};

export interface Room extends AirHazard {
	/** Vapor released, m³/h; 0 once nothing evaporates any more. */
	vaporM3PerH: number;
	/** Flow divided by the mixing factor, m³/h. */
	effectiveM3PerH: number;
	roomM3: number;
}

const MAX_PPM = 1e6;

function assertRoom({ vaporM3PerH, effectiveM3PerH, roomM3 }: Room): void {
	assertWithin(effectiveM3PerH, 0.01, 1e7, 'effectiveM3PerH');
	assertWithin(vaporM3PerH, 0, effectiveM3PerH, 'vaporM3PerH');
	assertWithin(roomM3, 0.1, 1e6, 'roomM3');
}

/** Concentration that the room tends to, ppm; the curve's asymptote. */
export function steadyPpm(room: Room): number {
	assertRoom(room);
	return (room.vaporM3PerH / room.effectiveM3PerH) * MAX_PPM;
}

/**
 * Concentration after `afterS` seconds, ppm.
 *
 * @throws RangeError for impossible input
 */
export function concentrationAfter({
	startPpm,
	afterS,
	...room
}: Room & { startPpm: number; afterS: number }): NeverAllClear & { ppm: number } {
	assertWithin(startPpm, 0, MAX_PPM, 'startPpm');
	assertWithin(afterS, 0, 3.2e7, 'afterS');
	const steady = steadyPpm(room);
	const decay = Math.exp((-room.effectiveM3PerH * afterS) / 3600 / room.roomM3);
	return { ppm: steady + (startPpm - steady) * decay, ...neverAllClear([room]) };
}

/**
 * Seconds until the room is at `targetPpm`, up or down; 0 when it is there, null when it never gets
 * there with this release and flow.
 *
 * @throws RangeError for impossible input, and for a target of 0, which no room reaches
 */
export function timeToPpm({
	startPpm,
	targetPpm,
	...room
}: Room & { startPpm: number; targetPpm: number }): NeverAllClear & { timeS: number | null } {
	assertWithin(startPpm, 0, MAX_PPM, 'startPpm');
	assertWithin(targetPpm, 1e-9, MAX_PPM, 'targetPpm');
	const steady = steadyPpm(room);
	const cautions = neverAllClear([room]);
	if (startPpm === targetPpm) return { timeS: 0, ...cautions };
	const ratio = (targetPpm - steady) / (startPpm - steady);
	if (!(ratio > 0 && ratio < 1)) return { timeS: null, ...cautions };
	return {
		timeS: (-3600 * room.roomM3 * Math.log(ratio)) / room.effectiveM3PerH,
		...cautions
	};
}

/** Seconds in which the difference to the steady state halves. */
export function halfLifeS({
	effectiveM3PerH,
	roomM3
}: {
	effectiveM3PerH: number;
	roomM3: number;
}): number {
	assertWithin(effectiveM3PerH, 0.01, 1e7, 'effectiveM3PerH');
	assertWithin(roomM3, 0.1, 1e6, 'roomM3');
	return (3600 * Math.LN2 * roomM3) / effectiveM3PerH;
}
