import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G, MAX_TIME_S } from '../quantity/limits';

export const cupPaceLaw: Law = {
	id: 'cup-pace',
	name: 'The clock for the next cup',
	formula: 'gap = t_mix alone, or max(0, t_mix − t_lay) when another person mixes',
	source: 'common practice, no source',
	validity: 'equal cups, laid one after another; each person lays their own'
};

export interface CupTurn {
	cup: number;
	/** Counted from 0; who lays it. */
	person: number;
	/** Seconds after the first cup's mixing starts. */
	mixFromS: number;
	layFromS: number;
	emptyAtS: number;
}

export interface CupPace {
	turns: CupTurn[];
	/** From one person's empty cup to the first touch of the next. */
	gapS: number;
	totalS: number;
	/** Why the pace cannot be held; empty when it can. */
	warnings: string[];
}

interface Pace {
	cupsG: readonly number[];
	people: number;
	/** Whether someone who does not lay mixes the next cup meanwhile. */
	hasMixer: boolean;
	mixingTimeS: number;
	workingTimeS: number;
	layingRateGPerMin: number;
	/** How long the laid material takes a fresh one without a seam. */
	bondWindowS: number;
}

function assertPace(pace: Pace): void {
	assertWithin(pace.people, 1, 20, 'people');
	assertWithin(pace.mixingTimeS, 0, MAX_TIME_S, 'mixingTimeS');
	assertWithin(pace.workingTimeS, 1, MAX_TIME_S, 'workingTimeS');
	assertWithin(pace.layingRateGPerMin, 0.1, 100_000, 'layingRateGPerMin');
	assertWithin(pace.bondWindowS, 1, MAX_TIME_S, 'bondWindowS');
	for (const cupG of pace.cupsG) assertWithin(cupG, 0, MAX_MASS_G, 'cupG');
}

function warningsOf(pace: Pace, turns: readonly CupTurn[], gapS: number): string[] {
	const minutes = (seconds: number) => Math.round(seconds / 6) / 10;
	const warnings: string[] = [];
	const slowest = Math.max(0, ...turns.map((turn) => turn.emptyAtS - turn.mixFromS));
	if (slowest > pace.workingTimeS * (1 + 1e-9)) {
		warnings.push(
			`A cup takes ${minutes(slowest)} min from mixing to empty; it works for ${minutes(pace.workingTimeS)} min.`
		);
	}
	if (gapS > pace.bondWindowS && turns.length > pace.people) {
		warnings.push(
			`${minutes(gapS)} min pass between two cups; a fresh one bonds for ${minutes(pace.bondWindowS)} min.`
		);
	}
	return warnings;
}

/**
 * When each cup is mixed, laid and empty, and whether that pace can be held.
 *
 * Alone, a person mixes, lays, and mixes again. With a mixer, the next cup is mixed so that it is
 * ready when the last is empty; one mixer mixes one cup at a time, so many people may have to wait.
 *
 * @throws RangeError for people, times, rate or masses out of range
 */
export function cupPace(pace: Pace): CupPace {
	assertPace(pace);
	const freeAtS = Array.from({ length: pace.people }, () => 0);
	let mixerFreeAtS = 0;
	let gapS = 0;

	const turns = pace.cupsG.map((cupG, cup): CupTurn => {
		const person = cup % pace.people;
		const readyAtS = freeAtS[person] ?? 0;
		const mixFromS = pace.hasMixer ? Math.max(mixerFreeAtS, readyAtS - pace.mixingTimeS) : readyAtS;
		const layFromS = mixFromS + pace.mixingTimeS;
		const emptyAtS = layFromS + (60 * cupG) / pace.layingRateGPerMin;
		if (cup >= pace.people) gapS = Math.max(gapS, layFromS - readyAtS);
		mixerFreeAtS = layFromS;
		freeAtS[person] = emptyAtS;
		return { cup, person, mixFromS, layFromS, emptyAtS };
	});

	const totalS = Math.max(0, ...turns.map((turn) => turn.emptyAtS));
	return { turns, gapS, totalS, warnings: warningsOf(pace, turns, gapS) };
}
