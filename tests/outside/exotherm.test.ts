import { cureCurve, peakOf, type CuringMass } from '../../src/lib/core/laws/exotherm';
import { coolingPerS } from '../../src/lib/core/laws/cooling-rate';
import { outsideCase } from './outside-case';

const mass: CuringMass = {
	kPerS: 0.003,
	referenceC: 23,
	rate: { kind: 'arrhenius', activationEnergyKjPerMol: 55 },
	heatJPerG: 200,
	specificHeatJPerGK: 1.8,
	startC: 23,
	roomC: 23,
	coolingPerS: 0
};

const RISES: [heat: number, specific: number, riseK: number][] = [
	[200, 1.8, 111.1],
	[350, 1.7, 205.9],
	[100, 1.5, 66.7],
	[450, 1.9, 236.8]
];
for (const [heatJPerG, specificHeatJPerGK, riseK] of RISES) {
	outsideCase({
		what: `adiabatic rise with ${heatJPerG} J/g and ${specificHeatJPerGK} J/(g·K)`,
		source: 'energy balance ΔH / c, by hand',
		unit: 'K',
		expected: riseK,
		got: () =>
			peakOf(cureCurve({ ...mass, heatJPerG, specificHeatJPerGK }, 20_000)).temperatureC - 23,
		// The mass counts as cured at 99.99 %; the table has one decimal.
		tolerance: 0.08
	});
}

/** The moment of a curve that ends exactly there. */
const endOf = (given: CuringMass, untilS: number) => {
	const end = cureCurve(given, untilS).at(-1);
	if (!end) throw new Error('an empty curve');
	return end;
};

for (const [what, given] of [
	['without heat of reaction', { ...mass, heatJPerG: 0 }],
	['cooled so hard that it stays at room temperature', { ...mass, coolingPerS: 10, heatJPerG: 1 }]
] as const) {
	outsideCase({
		what: `conversion after 900 s ${what}`,
		source: 'closed form of the isothermal rate law, by hand',
		unit: '1',
		// α = α0 (1 − e) / (e + α0), e = exp(−0.003 · 1.05 · 900), α0 = 0.05
		expected: 0.432898,
		got: () => endOf(given, 900).conversion,
		tolerance: { fraction: 1e-4 }
	});
}
outsideCase({
	what: 'temperature of an inert mass from 60 °C in 20 °C after one time constant',
	source: 'lumped capacitance, Incropera et al., ch. 5: excess · 1/e',
	unit: '°C',
	expected: 20 + 40 / Math.E,
	got: () =>
		endOf({ ...mass, kPerS: 0, startC: 60, roomC: 20, coolingPerS: 0.001 }, 1000).temperatureC,
	tolerance: 1e-4
});
outsideCase({
	what: 'the same after three time constants',
	source: 'lumped capacitance, Incropera et al., ch. 5: excess · 1/e³',
	unit: '°C',
	expected: 20 + 40 * Math.exp(-3),
	got: () =>
		endOf({ ...mass, kPerS: 0, startC: 60, roomC: 20, coolingPerS: 0.001 }, 3000).temperatureC,
	tolerance: 1e-4
});
outsideCase({
	what: 'time constant of an open film of 3 mm, 1.1 g/mL, 1.8 J/(g·K)',
	source: 'lumped capacitance ρ·c·t/h with h = 8 W/(m²·K), by hand',
	unit: 's',
	expected: (1100 * 1800 * 0.003) / 8,
	got: () =>
		1 /
		coolingPerS({ kind: 'film', thicknessMm: 3 }, { densityGPerMl: 1.1, specificHeatJPerGK: 1.8 }),
	tolerance: 1e-6
});
outsideCase({
	what: 'time constant of a cup 10 cm wide and high, 1 g/mL, 2 J/(g·K)',
	source: 'lumped capacitance ρ·c·V/(h·A), V/A = d/6, by hand',
	unit: 's',
	expected: (1000 * 2000 * (0.1 / 6)) / 8,
	got: () =>
		1 /
		coolingPerS({ kind: 'cup', massG: 250 * Math.PI }, { densityGPerMl: 1, specificHeatJPerGK: 2 }),
	tolerance: 1e-6
});
outsideCase({
	what: 'time constant of the same film after 540 s on a rubber backing',
	source: 'semi-infinite solid, Incropera et al., ch. 5: k·ΔT/√(π·α·t), by hand',
	unit: 's',
	// 574.456 / √(π · 540) = 13.947 W/(m²·K) beside the 8 of the air
	expected: (1100 * 1800 * 0.003) / (8 + 13.947),
	got: () =>
		1 /
		coolingPerS(
			{ kind: 'film', thicknessMm: 3, contactS: 540 },
			{ densityGPerMl: 1.1, specificHeatJPerGK: 1.8 }
		),
	tolerance: { fraction: 1e-4 }
});
