import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_TIME_S } from '../quantity/limits';
import { conversionRatePerS, START_TERM } from './autocatalytic-cure';
import { assertCureRate, CURE_RANGE_C, rawSpeedFactor, type CureRate } from './cure-rate';

export const exothermLaw: Law = {
	id: 'exotherm',
	name: 'Heat balance of a curing mass',
	formula: 'dT/dt = (ΔH / c) · dα/dt − λ · (T − T_room)',
	source:
		'lumped heat balance (Incropera et al., Fundamentals of Heat and Mass Transfer, ch. 5), integrated by Runge–Kutta 4',
	validity:
		'one temperature for the whole mass: the middle of a cup runs hotter than this when h·V/(A·k) is above 0.1, so it errs low; reaction heat 0 to 1,000 J/g'
};

export interface CuringMass {
	/** Rate constant at `referenceC`, in 1/s. */
	kPerS: number;
	referenceC: number;
	rate: CureRate;
	heatJPerG: number;
	specificHeatJPerGK: number;
	startC: number;
	roomC: number;
	/** Share of its excess temperature that the mass loses a second, in 1/s. */
	coolingPerS: number;
}

export interface CureMoment {
	atS: number;
	temperatureC: number;
	conversion: number;
}

/** Beyond this conversion no heat worth counting is left and the mass only cools. */
const DONE = 0.9999;
/** Steps over the shortest of the times of cure and cooling, and one a kelvin; numerical choice. */
const STEPS_PER_TIME = 8;
/** End of a curve that would never end; numerical choice. */
const MAX_STEPS = 200_000;

function assertMass(mass: CuringMass): void {
	assertWithin(mass.kPerS, 0, 100, 'kPerS');
	assertWithin(mass.heatJPerG, 0, 1000, 'heatJPerG');
	assertWithin(mass.specificHeatJPerGK, 0.5, 5, 'specificHeatJPerGK');
	assertWithin(mass.coolingPerS, 0, 10, 'coolingPerS');
	for (const temperatureC of [mass.referenceC, mass.startC, mass.roomC]) {
		assertWithin(temperatureC, CURE_RANGE_C.min, CURE_RANGE_C.max, 'temperatureC');
	}
	assertCureRate(mass.rate);
}

function rates(mass: CuringMass, temperatureC: number, conversion: number): [number, number] {
	const k = mass.kPerS * rawSpeedFactor(temperatureC, mass.referenceC, mass.rate);
	const cure = conversionRatePerS(conversion, k);
	const heating = (mass.heatJPerG / mass.specificHeatJPerGK) * cure;
	return [heating - mass.coolingPerS * (temperatureC - mass.roomC), cure];
}

function step(mass: CuringMass, now: CureMoment, lengthS: number): CureMoment {
	const at = (slope: readonly [number, number], share: number): [number, number] =>
		rates(
			mass,
			now.temperatureC + slope[0] * share * lengthS,
			now.conversion + slope[1] * share * lengthS
		);
	const k1 = at([0, 0], 0);
	const k2 = at(k1, 0.5);
	const k3 = at(k2, 0.5);
	const k4 = at(k3, 1);
	const mean = (i: 0 | 1) => (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]) / 6;
	return {
		atS: now.atS + lengthS,
		temperatureC: now.temperatureC + lengthS * mean(0),
		conversion: Math.min(1, now.conversion + lengthS * mean(1))
	};
}

/** A step over which neither the cure nor the cooling moves far. */
function stepLengthS(mass: CuringMass, now: CureMoment): number {
	const k = mass.kPerS * rawSpeedFactor(now.temperatureC, mass.referenceC, mass.rate);
	const [heating] = rates(mass, now.temperatureC, now.conversion);
	const fastest = k * (1 + START_TERM) + mass.coolingPerS;
	return 1 / (STEPS_PER_TIME * fastest + Math.abs(heating) + 1e-6);
}

/**
 * Temperature and conversion of a mass over time, from mixing until `untilS`.
 *
 * @param untilS - end of the curve, 1 s to 60 days
 * @param stopAtConversion - ends earlier, with the first moment at or past this conversion
 * @param stopAtPeak - ends earlier, with the first moment that is past the peak
 * @throws RangeError for a mass or time out of range
 */
export function cureCurve(
	mass: CuringMass,
	untilS: number,
	stopAtConversion = 1,
	stopAtPeak = false
): CureMoment[] {
	assertMass(mass);
	assertWithin(untilS, 1, MAX_TIME_S, 'untilS');
	assertWithin(stopAtConversion, 0, 1, 'stopAtConversion');

	let now: CureMoment = { atS: 0, temperatureC: mass.startC, conversion: 0 };
	const curve = [now];
	while (now.atS < untilS && now.conversion < Math.min(DONE, stopAtConversion)) {
		if (curve.length > MAX_STEPS) {
			throw new RangeError(`untilS is ${untilS}; accepted: less, for a mass that cures this fast`);
		}
		now = step(mass, now, Math.min(stepLengthS(mass, now), untilS - now.atS));
		const isCooling = now.temperatureC < (curve.at(-1)?.temperatureC ?? now.temperatureC);
		curve.push(now);
		// Past half of the conversion the cure only slows down, so no second peak can come.
		if (stopAtPeak && isCooling && now.conversion > 0.5) return curve;
	}
	return now.conversion >= DONE ? [...curve, ...coolingTail(mass, now, untilS)] : curve;
}

/** What is left once the cure is done: plain cooling, in closed form. */
function coolingTail(mass: CuringMass, from: CureMoment, untilS: number): CureMoment[] {
	const POINTS = 40;
	return Array.from({ length: POINTS }, (_, i) => {
		const afterS = ((untilS - from.atS) * (i + 1)) / POINTS;
		const excessK = (from.temperatureC - mass.roomC) * Math.exp(-mass.coolingPerS * afterS);
		return {
			atS: from.atS + afterS,
			temperatureC: mass.roomC + excessK,
			conversion: from.conversion
		};
	});
}

/** The hottest moment of a curve. */
export function peakOf(curve: readonly CureMoment[]): CureMoment {
	return curve.reduce((peak, moment) => (moment.temperatureC > peak.temperatureC ? moment : peak));
}
