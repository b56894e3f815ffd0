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

/** Conversion a second at a temperature and conversion. */
function cureAt(mass: CuringMass, temperatureC: number, conversion: number): number {
	const k = mass.kPerS * rawSpeedFactor(temperatureC, mass.referenceC, mass.rate);
	return conversionRatePerS(conversion, k);
}

/** Kelvin a second of a mass that cures this fast. */
const heatingAt = (mass: CuringMass, temperatureC: number, cure: number): number =>
	(mass.heatJPerG / mass.specificHeatJPerGK) * cure -
	mass.coolingPerS * (temperatureC - mass.roomC);

/** One step of Runge–Kutta 4, from the slopes at its beginning. Plain numbers: a curve takes hundreds. */
function step(
	mass: CuringMass,
	{ atS, temperatureC, conversion }: CureMoment,
	heating1: number,
	cure1: number,
	lengthS: number
): CureMoment {
	const half = lengthS / 2;
	const warmer2 = temperatureC + heating1 * half;
	const cure2 = cureAt(mass, warmer2, conversion + cure1 * half);
	const heating2 = heatingAt(mass, warmer2, cure2);
	const warmer3 = temperatureC + heating2 * half;
	const cure3 = cureAt(mass, warmer3, conversion + cure2 * half);
	const heating3 = heatingAt(mass, warmer3, cure3);
	const warmer4 = temperatureC + heating3 * lengthS;
	const cure4 = cureAt(mass, warmer4, conversion + cure3 * lengthS);
	const heating4 = heatingAt(mass, warmer4, cure4);
	const heating = (heating1 + 2 * heating2 + 2 * heating3 + heating4) / 6;
	const cure = (cure1 + 2 * cure2 + 2 * cure3 + cure4) / 6;
	return {
		atS: atS + lengthS,
		temperatureC: temperatureC + lengthS * heating,
		conversion: Math.min(1, conversion + lengthS * cure)
	};
}

/** A step over which neither the cure nor the cooling moves far, from the slopes at its beginning. */
function stepLengthS(mass: CuringMass, conversion: number, heating: number, cure: number): number {
	// Conversion stays below 1 while it is stepped, so the rate law gives its constant back.
	const k = cure / ((conversion + START_TERM) * (1 - conversion));
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
		const before = now.temperatureC;
		const cure = cureAt(mass, before, now.conversion);
		const heating = heatingAt(mass, before, cure);
		const lengthS = Math.min(stepLengthS(mass, now.conversion, heating, cure), untilS - now.atS);
		now = step(mass, now, heating, cure, lengthS);
		const isCooling = now.temperatureC < before;
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
