import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { timeToConversionS } from './autocatalytic-cure';
import { coolingPerS, type Body } from './cooling-rate';
import { rawSpeedFactor, type CureRate } from './cure-rate';
import { cureCurve, peakOf, type CureMoment, type CuringMass } from './exotherm';

export const massEffectLaw: Law = {
	id: 'mass-effect',
	name: 'Pot life and peak temperature of another mass',
	formula:
		'k so that α(t_pot) = 0.3 in the data sheet’s mass and temperature; then the heat balance',
	source:
		'calibration of the heat balance to one published time; workable up to conversion 0.3: default, no source',
	validity:
		'estimate for comparing masses, not a safety proof: the middle of a large cup runs hotter; 1 g to 100 kg'
};

/** Conversion at which it no longer spreads; default, no source. */
export const WORKABLE_CONVERSION = 0.3;

/** Relative error of the pot life at which a calibration ends; numerical choice. */
const CALIBRATED = 1e-6;
/** Most tries of a calibration; numerical choice. */
const MAX_SECANTS = 30;

export interface CuringMaterial {
	densityGPerMl: number;
	heatJPerG: number;
	specificHeatJPerGK: number;
	rate: CureRate;
	/** Pot life as the sheet gives it: in a cup of this mass, mixed and kept at this temperature. */
	potLife: { timeS: number; massG: number; temperatureC: number };
}

function curingMass(
	material: CuringMaterial,
	kPerS: number,
	body: Body,
	temperatureC: number
): CuringMass {
	// Most of the heat comes about one pot life after laying; by then it flows into the backing slower.
	const inContact = body.kind === 'film' ? { contactS: material.potLife.timeS, ...body } : body;
	return {
		kPerS,
		referenceC: material.potLife.temperatureC,
		rate: material.rate,
		heatJPerG: material.heatJPerG,
		specificHeatJPerGK: material.specificHeatJPerGK,
		startC: temperatureC,
		roomC: temperatureC,
		coolingPerS: coolingPerS(inContact, material)
	};
}

/**
 * The rate constant at the sheet's temperature, in 1/s, with which a cup of the sheet's mass reaches
 * the workable conversion at the sheet's pot life.
 */
export function calibratedKPerS(material: CuringMaterial): number {
	const { timeS, massG, temperatureC } = material.potLife;
	assertWithin(timeS, 30, 7 * 86_400, 'pot life timeS');
	const body: Body = { kind: 'cup', massG };
	const offAt = (logK: number) =>
		Math.log(workableS(material, body, temperatureC, Math.exp(logK)) / timeS);
	// A mass that stays cold needs the most; self-heating only shortens the time, so this is an upper end.
	let after = Math.log(timeToConversionS({ conversion: WORKABLE_CONVERSION, kPerS: 1 }) / timeS);
	let afterOff = offAt(after);
	let before = after + afterOff;
	let beforeOff = offAt(before);
	// The secant in logarithms, where the time is nearly a straight line of the rate.
	for (let i = 0; i < MAX_SECANTS && Math.abs(beforeOff) > CALIBRATED; i += 1) {
		const slope = (afterOff - beforeOff) / (after - before);
		if (!Number.isFinite(slope) || slope === 0) break;
		[after, afterOff] = [before, beforeOff];
		before -= beforeOff / slope;
		beforeOff = offAt(before);
	}
	return Math.exp(before);
}

/** Temperature and conversion of a cup or film mixed and kept at a temperature, over time. */
export function bodyCurve(
	material: CuringMaterial,
	body: Body,
	temperatureC: number,
	untilS: number,
	kPerS = calibratedKPerS(material)
): CureMoment[] {
	return cureCurve(curingMass(material, kPerS, body, temperatureC), untilS);
}

/** Time that a cup or film stays workable at a temperature, in seconds. */
export function workableS(
	material: CuringMaterial,
	body: Body,
	temperatureC: number,
	kPerS = calibratedKPerS(material)
): number {
	const mass = curingMass(material, kPerS, body, temperatureC);
	// Isothermal cure is the slowest there is, so this always suffices.
	const slowest = kPerS * rawSpeedFactor(temperatureC, mass.referenceC, mass.rate);
	const longestS = timeToConversionS({ conversion: WORKABLE_CONVERSION, kPerS: slowest });
	const curve = cureCurve(mass, 1.01 * longestS + 1, WORKABLE_CONVERSION);
	const end = curve.at(-1) as CureMoment;
	const before = curve.at(-2) ?? end;
	const rise = end.conversion - before.conversion;
	const share = rise > 0 ? (WORKABLE_CONVERSION - before.conversion) / rise : 1;
	return before.atS + share * (end.atS - before.atS);
}

/** Hottest moment of a cup or film left to cure where it was mixed. */
export function peakMoment(
	material: CuringMaterial,
	body: Body,
	temperatureC: number,
	kPerS = calibratedKPerS(material)
): CureMoment {
	const mass = curingMass(material, kPerS, body, temperatureC);
	return peakOf(cureCurve(mass, 40 * material.potLife.timeS, 1, true));
}
