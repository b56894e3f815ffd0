import { timeToConversionS } from '../../src/lib/core/laws/autocatalytic-cure';
import { brushBackS } from '../../src/lib/core/laws/brush-back';
import { largestCalmCupG, thickestCalmSpreadMm } from '../../src/lib/core/laws/calm-cup';
import { cureWindowS } from '../../src/lib/core/laws/cure-window';
import {
	calibratedKPerS,
	peakMoment,
	workableS,
	type CuringMaterial
} from '../../src/lib/core/laws/mass-effect';
import { ODE, solved } from './ode-solver';
import { outsideCase } from './outside-case';

const R = 8.314462618;
const paste: CuringMaterial = {
	densityGPerMl: 1.15,
	heatJPerG: 160,
	specificHeatJPerGK: 1.7,
	rate: { kind: 'arrhenius', activationEnergyKjPerMol: 50 },
	potLife: { timeS: 540, massG: 150, temperatureC: 23 }
};
/** The same with a pot life of an hour and a half: slow enough that a small cup stays cool. */
const slow: CuringMaterial = {
	...paste,
	potLife: { timeS: 5400, massG: 150, temperatureC: 23 }
};

/** A cup as wide as high loses h · 6/d of its excess per volume, h = 8 W/(m²·K); everything in SI. */
function lossPerS(massG: number): number {
	const widthM = Math.cbrt((4 * massG) / 1.15 / Math.PI) / 100;
	return (8 * 6) / widthM / (1150 * 1700);
}
const inCup =
	(massG: number, kPerS: number) =>
	(_s: number, [celsius = NaN, conversion = NaN]: number[]): number[] => {
		const speed = Math.exp((50_000 / R) * (1 / 296.15 - 1 / (celsius + 273.15)));
		const cure = kPerS * speed * (conversion + 0.05) * (1 - conversion);
		return [(160 / 1.7) * cure - lossPerS(massG) * (celsius - 23), cure];
	};
/** Where a rising function of the argument passes a value. */
function crossing(of: (x: number) => number, value: number, low: number, high: number): number {
	let [from, to] = [low, high];
	for (let i = 0; i < 30; i += 1) {
		const middle = (from + to) / 2;
		if (of(middle) < value) from = middle;
		else to = middle;
	}
	return (from + to) / 2;
}
const k = { paste: calibratedKPerS(paste), slow: calibratedKPerS(slow) };
const conversionAt = (massG: number, atS: number): number =>
	solved(inCup(massG, k.paste), [23, 0], atS)[1] ?? NaN;

for (const massG of [150, 60, 600]) {
	outsideCase({
		what: `time until ${massG} g of a paste no longer spread, calibrated to 9 min of 150 g`,
		source: ODE,
		unit: 's',
		expected: crossing((atS) => conversionAt(massG, atS), 0.3, 60, 2000),
		got: () => workableS(paste, { kind: 'cup', massG }, 23),
		tolerance: { fraction: 0.002 }
	});
}

/** Hottest moment, stepped through in four hundred steps. */
function hottestC(massG: number, kPerS: number, untilS: number): number {
	const stepS = untilS / 400;
	let state = [23, 0];
	let hottest = 23;
	for (let step = 0; step < 400; step += 1) {
		state = solved(inCup(massG, kPerS), state, (step + 1) * stepS, step * stepS);
		hottest = Math.max(hottest, state[0] ?? NaN);
	}
	return hottest;
}
for (const massG of [150, 600]) {
	outsideCase({
		what: `hottest moment of ${massG} g of that paste left in its cup`,
		source: ODE,
		unit: '°C',
		expected: hottestC(massG, k.paste, 1200),
		got: () => peakMoment(paste, { kind: 'cup', massG }, 23).temperatureC,
		tolerance: 0.2
	});
}
outsideCase({
	what: 'largest cup that stays at or below 70 °C, of a paste with a pot life of 90 min',
	source: ODE,
	unit: 'g',
	expected: crossing((massG) => hottestC(massG, k.slow, 20_000), 70, 1, 600),
	got: () => largestCalmCupG(slow, 23, { peakC: 70, searchUpToG: 20_000 }) ?? NaN,
	// The search ends within half a percent; a twentieth of a kelvin between its steps is as much.
	tolerance: { fraction: 0.01 }
});

for (const conversion of [0.3, 0.9]) {
	const isothermal = (_s: number, [x = NaN]: number[]): number[] => [0.004 * (x + 0.05) * (1 - x)];
	outsideCase({
		what: `time to conversion ${conversion} at one temperature, k = 0.004 1/s`,
		source: ODE,
		unit: 's',
		expected: crossing((s) => solved(isothermal, [0], s)[0] ?? NaN, conversion, 1, 5000),
		got: () => timeToConversionS({ conversion, kPerS: 0.004 }),
		tolerance: { fraction: 1e-6 }
	});
}

const speedAt = (celsius: number): number =>
	Math.exp((60_000 / R) * (1 / 296.15 - 1 / (celsius + 273.15)));
const curedAfter = (celsius: number, s: number): number =>
	solved(() => [speedAt(celsius)], [0], s)[0] ?? NaN;
for (const [end, sheetS, celsius] of [
	['openS', 2700, 16],
	['shutS', 10_800, 20]
] as const) {
	outsideCase({
		what: `recoat window of 45 to 180 min at 23 °C in a shop of 18 ± 2 °C, ${end}`,
		source: ODE,
		unit: 's',
		expected: crossing((s) => curedAfter(celsius, s), sheetS, 1, 50_000),
		got: () =>
			cureWindowS(
				{ openS: 2700, shutS: 10_800, temperatureC: 23 },
				{ temperatureC: 18, spreadK: 2 },
				{ kind: 'arrhenius', activationEnergyKjPerMol: 60 }
			)[end] ?? NaN,
		// Told in whole minutes, to the safe side.
		tolerance: 60
	});
}

// A coat thins as h² = z / (ρ·g·∫ dt/μ); its viscosity rises from 2 to 1000 Pa·s until the gel, and on.
const fluidity = (s: number): number[] => [1 / (2 * (1000 / 2) ** (s / 1200))];
const flowedFrom = (s: number): number => solved(fluidity, [0], 6000, s)[0] ?? NaN;
outsideCase({
	what: 'when 0.5 mm of 2 Pa·s, gelled after 20 min, still covers a wall 20 mm below its edge',
	source: ODE,
	unit: 's',
	expected: crossing((s) => -flowedFrom(s), -0.02 / (0.0005 ** 2 * 1100 * 9.80665), 0, 1200),
	got: () => brushBackS({ thicknessMm: 0.5, viscosityPaS: 2, densityGPerMl: 1.1, gelTimeS: 1200 }),
	tolerance: { fraction: 1e-6 }
});

/** A coat loses (h + e/√(π·t)) / d of its excess per volume, e = √(0.2 · 1100 · 1500), t the pot life. */
const inSpread =
	(thicknessMm: number, kPerS: number) =>
	(_s: number, [celsius = NaN, conversion = NaN]: number[]): number[] => {
		const loss =
			(8 + Math.sqrt(0.2 * 1100 * 1500) / Math.sqrt(Math.PI * 540)) / (thicknessMm / 1000);
		const speed = Math.exp((50_000 / R) * (1 / 296.15 - 1 / (celsius + 273.15)));
		const cure = kPerS * speed * (conversion + 0.05) * (1 - conversion);
		return [(160 / 1.7) * cure - (loss / (1150 * 1700)) * (celsius - 23), cure];
	};
function hottestSpreadC(thicknessMm: number): number {
	let state = [23, 0];
	let hottest = 23;
	for (let step = 0; step < 200; step += 1) {
		state = solved(inSpread(thicknessMm, k.paste), state, (step + 1) * 10, step * 10);
		hottest = Math.max(hottest, state[0] ?? NaN);
	}
	return hottest;
}
outsideCase({
	what: 'thickest smear of that paste that stays at or below 60 °C',
	source: ODE,
	unit: 'mm',
	expected: crossing(hottestSpreadC, 60, 0.2, 20),
	got: () => thickestCalmSpreadMm(paste, 23, 60) ?? NaN,
	tolerance: { fraction: 0.01 }
});
