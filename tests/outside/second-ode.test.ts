import { concentrationAfter } from '../../src/lib/core/laws/buildup';
import { equivalentTimeS } from '../../src/lib/core/laws/cure-profile';
import { cureCurve, peakOf, type CuringMass } from '../../src/lib/core/laws/exotherm';
import { eightHourPpm } from '../../src/lib/core/laws/exposure-dose';
import { ODE, solved } from './ode-solver';
import { outsideCase } from './outside-case';

const mass: CuringMass = {
	kPerS: 0.003,
	referenceC: 23,
	rate: { kind: 'arrhenius', activationEnergyKjPerMol: 55 },
	heatJPerG: 200,
	specificHeatJPerGK: 1.8,
	startC: 23,
	roomC: 20,
	coolingPerS: 0.002
};
/** The same heat balance, written anew: temperature in °C and conversion, per second. */
const heatBalance = (_s: number, [celsius = NaN, conversion = NaN]: number[]): number[] => {
	const speed = Math.exp((55_000 / 8.314462618) * (1 / 296.15 - 1 / (celsius + 273.15)));
	const cure = 0.003 * speed * (conversion + 0.05) * (1 - conversion);
	return [(200 / 1.8) * cure - 0.002 * (celsius - 20), cure];
};
const curedBy = (untilS: number): number[] => solved(heatBalance, [23, 0], untilS);
const endOf = (untilS: number) => cureCurve(mass, untilS).at(-1);

for (const untilS of [200, 400, 600, 1200]) {
	const [celsius = NaN, conversion = NaN] = curedBy(untilS);
	outsideCase({
		what: `temperature of a cup that heats itself, after ${untilS} s`,
		source: ODE,
		unit: '°C',
		expected: celsius,
		got: () => endOf(untilS)?.temperatureC ?? NaN,
		tolerance: 0.05
	});
	outsideCase({
		what: `its conversion after ${untilS} s`,
		source: ODE,
		unit: '1',
		expected: conversion,
		got: () => endOf(untilS)?.conversion ?? NaN,
		tolerance: 0.001
	});
}
outsideCase({
	what: 'hottest moment of that cup, looked for second by second',
	source: ODE,
	unit: '°C',
	expected: Math.max(...Array.from({ length: 900 }, (_, s) => curedBy(s + 1)[0] ?? NaN)),
	got: () => peakOf(cureCurve(mass, 5000)).temperatureC,
	// The peak is looked for among the steps, not between them.
	tolerance: 0.1
});

// 0.05 m³/h of vapor into 60 m³ at 120 m³/h, for 40 min; in ppm and ppm · s.
const room = { sensitizer: false, vaporM3PerH: 0.05, effectiveM3PerH: 120, roomM3: 60 };
const roomBalance =
	(isReleased: boolean) =>
	(_s: number, [ppm = NaN]: number[]) => {
		const gained = isReleased ? (1e6 * 0.05) / 60 : 0;
		return [(gained - (120 / 60) * ppm) / 3600, ppm];
	};
const working = solved(roomBalance(true), [0, 0], 2400);
const [, dosePpmS = NaN] = solved(roomBalance(false), working, 8 * 3600 - 2400);
outsideCase({
	what: 'level in a room after 40 min of 50 L/h of vapor at two air changes an hour',
	source: ODE,
	unit: 'ppm',
	expected: working[0] ?? NaN,
	got: () => concentrationAfter({ ...room, startPpm: 0, afterS: 2400 }).ppm,
	tolerance: { fraction: 1e-6 }
});
outsideCase({
	what: 'average of that over eight hours, with what lingers',
	source: ODE,
	unit: 'ppm',
	expected: dosePpmS / (8 * 3600),
	got: () => eightHourPpm({ ...room, releaseS: 2400 }),
	tolerance: { fraction: 1e-6 }
});
const [equivalentS = NaN] = solved(
	(s) => [Math.exp((60_000 / 8.314462618) * (1 / 296.15 - 1 / (285.15 + (16 * s) / 28_800)))],
	[0],
	28_800
);
outsideCase({
	what: 'a shop that warms from 12 to 28 °C in eight hours, as time at 23 °C',
	source: ODE,
	unit: 's',
	expected: equivalentS,
	got: () =>
		equivalentTimeS(
			[
				{ atS: 0, temperatureC: 12 },
				{ atS: 28_800, temperatureC: 28 }
			],
			28_800,
			{ referenceC: 23, rate: { kind: 'arrhenius', activationEnergyKjPerMol: 60 } }
		),
	tolerance: { fraction: 1e-6 }
});
