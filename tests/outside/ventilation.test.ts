import { airChangesPerH } from '../../src/lib/core/laws/air-changes';
import {
	concentrationAfter,
	halfLifeS,
	steadyPpm,
	timeToPpm
} from '../../src/lib/core/laws/buildup';
import { additiveDilutionFlow, dilutionFlow } from '../../src/lib/core/laws/dilution';
import { fireDilutionFlow } from '../../src/lib/core/laws/fire-dilution';
import { mixtureIndex } from '../../src/lib/core/laws/mixture';
import { vaporFlowM3PerH } from '../../src/lib/core/laws/ppm';
import { shiftAverage } from '../../src/lib/core/laws/shift-average';
import { outsideCase } from './outside-case';

const ACGIH = 'ACGIH, Industrial Ventilation, worked example';
const OSHA = '29 CFR 1910.1000(d)';
const M3_PER_FT3 = 0.028316846592;
const CFM = M3_PER_FT3 * 60;
/** Grams a minute of `pints` an hour, specific gravity against water at 20 °C. */
const gPerMin = (pints: number, sg: number) => (pints * 473.176473 * sg * 0.9982) / 60;
/** 70 °F, the temperature of the handbook's 403 and 387 cubic feet. */
const SEVENTY_F = (70 - 32) / 1.8;
const harmless = { sensitizer: false };

const methylChloroform = {
	...harmless,
	releaseGPerMin: gPerMin(1.5, 1.32),
	molarMassGPerMol: 133.4,
	limitPpm: 350,
	mixingFactor: 5
};
outsideCase({
	what: '1.5 pint/h of methyl chloroform to 350 ppm, perfect mixing',
	source: `${ACGIH} (from memory)`,
	unit: 'cfm',
	expected: 285,
	got: () => dilutionFlow(methylChloroform, SEVENTY_F).effectiveM3PerH / CFM,
	tolerance: { fraction: 0.005 }
});
outsideCase({
	what: 'the same, K = 5',
	source: `${ACGIH} (from memory)`,
	unit: 'cfm',
	expected: 1425,
	got: () => dilutionFlow(methylChloroform, SEVENTY_F).flowM3PerH / CFM,
	tolerance: { fraction: 0.005 }
});
outsideCase({
	what: '2 pint/h each of methyl ethyl ketone and toluene, effects added',
	source: `${ACGIH} (from memory)`,
	unit: 'cfm',
	expected: 15_627,
	got: () =>
		additiveDilutionFlow(
			[
				{
					...harmless,
					releaseGPerMin: gPerMin(2, 0.805),
					molarMassGPerMol: 72.1,
					limitPpm: 200,
					mixingFactor: 4
				},
				{
					...harmless,
					releaseGPerMin: gPerMin(2, 0.866),
					molarMassGPerMol: 92.13,
					limitPpm: 50,
					mixingFactor: 5
				}
			],
			SEVENTY_F
		).flowM3PerH / CFM,
	tolerance: { fraction: 0.001 }
});

const VAPOR: [what: string, sg: number, molar: number, expected: number][] = [
	['acetone', 0.79, 58.08, 44],
	['toluene', 0.87, 92.14, 30.4],
	['ethanol', 0.79, 46.07, 55.2],
	['methanol', 0.79, 32.04, 80.8],
	['methyl ethyl ketone', 0.81, 72.11, 36]
];
for (const [what, sg, molarMassGPerMol, expected] of VAPOR) {
	outsideCase({
		what: `vapor from a gallon of ${what}`,
		source: '29 CFR 1910.94 Table G-11 (from memory)',
		unit: 'ft³',
		expected,
		got: () =>
			vaporFlowM3PerH({
				releaseGPerMin: gPerMin(8, sg),
				molarMassGPerMol,
				temperatureC: SEVENTY_F
			}) / M3_PER_FT3,
		tolerance: { fraction: 0.02 }
	});
}
outsideCase({
	what: 'air for a gallon an hour of toluene, a quarter of its explosive limit of 1.4 %',
	source: '29 CFR 1910.94(c)(6)(ii): 4 (100 − LEL) · vapor / LEL (from memory)',
	unit: 'ft³',
	expected: (4 * (100 - 1.4) * 30.4) / 1.4,
	got: () =>
		fireDilutionFlow({
			...harmless,
			releaseGPerMin: gPerMin(8, 0.87),
			molarMassGPerMol: 92.14,
			lelPct: 1.4,
			temperatureC: SEVENTY_F
		}).flowM3PerH / M3_PER_FT3,
	// 2 % of the table, and the share 100 − LEL that the handbook's formula leaves out.
	tolerance: { fraction: 0.034 }
});

const room = (vaporCfm: number, airCfm: number, roomFt3: number) => ({
	...harmless,
	vaporM3PerH: vaporCfm * CFM,
	effectiveM3PerH: airCfm * CFM,
	roomM3: roomFt3 * M3_PER_FT3
});
const minutes = (timeS: number | null) => (timeS ?? NaN) / 60;

outsideCase({
	what: 'time to 200 ppm, 1.2 cfm into 100 000 ft³ at 2000 cfm',
	source: `${ACGIH} (from memory)`,
	unit: 'min',
	expected: 20.3,
	got: () => minutes(timeToPpm({ ...room(1.2, 2000, 1e5), startPpm: 0, targetPpm: 200 }).timeS),
	tolerance: { fraction: 0.002 }
});
outsideCase({
	what: 'purge from 100 to 25 ppm, same room',
	source: `${ACGIH} (from memory)`,
	unit: 'min',
	expected: 69.3,
	got: () => minutes(timeToPpm({ ...room(0, 2000, 1e5), startPpm: 100, targetPpm: 25 }).timeS),
	tolerance: { fraction: 0.002 }
});
outsideCase({
	what: 'after an hour of purging from 100 ppm, same room',
	source: `${ACGIH} (from memory)`,
	unit: 'ppm',
	expected: 30.1,
	got: () => concentrationAfter({ ...room(0, 2000, 1e5), startPpm: 100, afterS: 3600 }).ppm,
	tolerance: { fraction: 0.002 }
});
outsideCase({
	what: 'after 11 min, 1.4 cfm into 75 000 ft³ at 2500 cfm',
	source: 'R package rEHS, documented example of concentration()',
	unit: 'ppm',
	expected: 171.9,
	got: () => concentrationAfter({ ...room(1.4, 2500, 75_000), startPpm: 0, afterS: 660 }).ppm,
	tolerance: 0.01
});
outsideCase({
	what: 'time to 175 ppm, same room',
	source: 'R package rEHS, documented example of time.interval()',
	unit: 'min',
	expected: 11.24,
	got: () => minutes(timeToPpm({ ...room(1.4, 2500, 75_000), startPpm: 0, targetPpm: 175 }).timeS),
	tolerance: 0.01
});
const HVAC_GUIDE =
	'Design Guide for Heating, Ventilating, and Air Conditioning Systems, 2000, rev. 2006, p. 106, worked example';
outsideCase({
	what: 'purge from 20 to 1.4 %, 1000 ft³ at 2000 cfm, mixing factor 5',
	source: HVAC_GUIDE,
	unit: 'min',
	expected: 6.65,
	got: () =>
		minutes(timeToPpm({ ...room(0, 2000 / 5, 1000), startPpm: 200_000, targetPpm: 14_000 }).timeS),
	tolerance: 0.005
});
outsideCase({
	what: 'air changes until then',
	source: HVAC_GUIDE,
	unit: '1',
	expected: 13.3,
	got: () =>
		2 *
		minutes(timeToPpm({ ...room(0, 2000 / 5, 1000), startPpm: 200_000, targetPpm: 14_000 }).timeS),
	tolerance: 0.05
});
outsideCase({
	what: 'half-life of 20 m³ at 9.9 m³/h',
	source: 'J. Jock, industrial hygiene notes, July 2013',
	unit: 'h',
	expected: 1.4,
	got: () => halfLifeS({ effectiveM3PerH: 9.9, roomM3: 20 }) / 3600,
	tolerance: 0.005
});
outsideCase({
	what: 'steady state, 1.4 cfm at 2500 cfm: G / Q',
	source: 'Burgess 1989, limit of the build-up curve',
	unit: 'ppm',
	expected: 560,
	got: () => steadyPpm(room(1.4, 2500, 75_000)),
	tolerance: 1e-9
});

const PURGE: [changes: number, percent: number, expected: number][] = [
	[1, 90, 138],
	[2, 99, 138],
	[4, 99.9, 104],
	[6, 99, 46],
	[6, 99.9, 69],
	[8, 99, 35],
	[10, 99.9, 41],
	[12, 99, 23],
	[15, 99.9, 28],
	[20, 99, 14],
	[50, 99, 6],
	[50, 99.9, 8]
];
for (const [changes, percent, expected] of PURGE) {
	outsideCase({
		what: `${percent} % removed at ${changes} air changes an hour`,
		source: 'CDC, MMWR 43 (RR-13), 1994, Table S3-1',
		unit: 'min',
		expected,
		got: () => {
			const air = { flowM3PerH: changes * 60, roomM3: 60 };
			return minutes(
				timeToPpm({
					...harmless,
					vaporM3PerH: 0,
					effectiveM3PerH: airChangesPerH(air) * air.roomM3,
					roomM3: air.roomM3,
					startPpm: 100,
					targetPpm: 100 - percent
				}).timeS
			);
		},
		// Printed in whole minutes.
		tolerance: 0.5
	});
}

const of = (concentration: number, limit: number) => ({ ...harmless, concentration, limit });
outsideCase({
	what: 'shift average: 2 h at 150, 2 h at 75, 4 h at 50 ppm',
	source: `${OSHA}(1)(ii)`,
	unit: 'ppm',
	expected: 81.25,
	got: () =>
		shiftAverage([
			{ concentration: 150, timeS: 7200 },
			{ concentration: 75, timeS: 7200 },
			{ concentration: 50, timeS: 14_400 }
		]),
	tolerance: 1e-9
});
outsideCase({
	what: 'mixture: 500 of 1000, 45 of 200, 40 of 200 ppm',
	source: `${OSHA}(2)(ii)`,
	unit: 'count',
	expected: 0.925,
	got: () => mixtureIndex([of(500, 1000), of(45, 200), of(40, 200)]).index,
	tolerance: 1e-9
});
outsideCase({
	what: 'mixture: methyl ethyl ketone 150 of 200, toluene 50 of 50 ppm',
	source: `${ACGIH} (from memory)`,
	unit: 'count',
	expected: 1.75,
	got: () => mixtureIndex([of(150, 200), of(50, 50)]).index,
	tolerance: 1e-9
});
outsideCase({
	what: 'mixture: acetone 400 of 500, sec-butyl acetate 150 of 200, MEK 100 of 200 ppm',
	source: 'ACGIH TLV booklet, appendix on mixtures (from memory)',
	unit: 'count',
	expected: 2.05,
	got: () => mixtureIndex([of(400, 500), of(150, 200), of(100, 200)]).index,
	tolerance: 1e-9
});
