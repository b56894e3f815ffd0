import {
	estimatedHorizontalMm,
	liftingIndex,
	liftingLimit,
	type Lift
} from '../../src/lib/core/laws/lifting';
import { teamLimitG } from '../../src/lib/core/laws/lifting-advice';
import { NIOSH_US } from '../../src/lib/core/laws/lifting-constants';
import { liftingTaskLimit } from '../../src/lib/core/laws/lifting-task';
import { frequencyMultiplier } from '../../src/lib/core/laws/lifting-frequency';
import { outsideCase } from './outside-case';

const MANUAL = 'DHHS (NIOSH) 94-110, rev. 9/2021';
const MM_PER_IN = 25.4;
const G_PER_LB = 453.59237;

interface Task {
	what: string;
	source: string;
	inches: [horizontal: number, origin: number, judged: number, travel: number];
	twistDeg: number;
	liftsPerMin: number;
	coupling: Lift['coupling'];
	/** As printed, to two decimals. */
	multipliers: [number, number, number, number, number, number];
	rwlLb: number;
	loadLb?: number;
	index?: number;
}

const TASKS: Task[] = [
	{
		what: 'punch-press stock, origin',
		source: `${MANUAL}, example 1 (from memory)`,
		inches: [23, 15, 15, 48],
		twistDeg: 0,
		liftsPerMin: 0.2,
		coupling: 'fair',
		multipliers: [0.44, 0.89, 0.86, 1, 1, 0.95],
		rwlLb: 16.3,
		loadLb: 44,
		index: 2.7
	},
	{
		what: 'punch-press stock, destination',
		source: `${MANUAL}, example 1 (from memory)`,
		inches: [23, 15, 63, 48],
		twistDeg: 0,
		liftsPerMin: 0.2,
		coupling: 'fair',
		multipliers: [0.44, 0.75, 0.86, 1, 1, 1],
		rwlLb: 14.5,
		loadLb: 44,
		index: 3
	},
	{
		what: 'supply rolls, origin',
		source: `${MANUAL}, example 2 (from memory)`,
		inches: [20, 27, 27, 17],
		twistDeg: 0,
		liftsPerMin: 0.2,
		coupling: 'poor',
		multipliers: [0.5, 0.98, 0.93, 1, 1, 0.9],
		rwlLb: 20.9,
		loadLb: 35,
		index: 1.7
	},
	{
		what: 'package inspection, origin',
		source: `${MANUAL}, example 4`,
		inches: [10, 22, 22, 37],
		twistDeg: 0,
		liftsPerMin: 3,
		coupling: 'fair',
		multipliers: [1, 0.94, 0.87, 1, 0.88, 0.95],
		rwlLb: 34.9
	},
	{
		what: 'package inspection, destination',
		source: `${MANUAL}, example 4`,
		inches: [20, 22, 59, 37],
		twistDeg: 0,
		liftsPerMin: 3,
		coupling: 'fair',
		multipliers: [0.5, 0.78, 0.87, 1, 0.88, 1],
		rwlLb: 15.2
	},
	{
		what: 'dish-washing machine, origin',
		source: `${MANUAL}, example 5 (from memory)`,
		inches: [20, 44, 44, 37],
		twistDeg: 90,
		liftsPerMin: 5,
		coupling: 'fair',
		multipliers: [0.5, 0.9, 0.87, 0.71, 0.8, 1],
		rwlLb: 11.3,
		loadLb: 20,
		index: 1.8
	}
];

for (const task of TASKS) {
	const [horizontal, origin, judged, travel] = task.inches.map((inch) => inch * MM_PER_IN);
	const limit = () =>
		liftingLimit(
			{
				horizontalMm: horizontal ?? NaN,
				originHeightMm: origin ?? NaN,
				judgedHeightMm: judged ?? NaN,
				travelMm: travel ?? NaN,
				twistDeg: task.twistDeg,
				liftsPerMin: task.liftsPerMin,
				duration: 'up to 1 h',
				coupling: task.coupling
			},
			NIOSH_US
		);
	// The manual rounds each multiplier to two decimals before it multiplies; those that are not 1
	// carry half of the last digit each, and so does the printed limit.
	const rounding = task.multipliers
		.filter((multiplier) => multiplier !== 1)
		.reduce((sum, multiplier) => sum + 0.005 / multiplier, 0.05 / task.rwlLb);
	outsideCase({
		what: `${task.what}, recommended weight limit`,
		source: task.source,
		unit: 'lb',
		expected: task.rwlLb,
		got: () => limit().rwlG / G_PER_LB,
		tolerance: { fraction: rounding }
	});
	const { loadLb, index } = task;
	if (loadLb === undefined || index === undefined) continue;
	outsideCase({
		what: `${task.what}, lifting index`,
		source: task.source,
		unit: 'count',
		expected: index,
		got: () => liftingIndex({ massG: loadLb * G_PER_LB, rwlG: limit().rwlG }) ?? NaN,
		tolerance: { fraction: rounding + 0.05 / index }
	});
}

outsideCase({
	what: 'package inspection, the lower of its ends',
	source: `${MANUAL}, example 4`,
	unit: 'lb',
	expected: 15.2,
	got: () =>
		liftingTaskLimit(
			{
				origin: { horizontalMm: 10 * MM_PER_IN, heightMm: 22 * MM_PER_IN },
				destination: { horizontalMm: 20 * MM_PER_IN, heightMm: 59 * MM_PER_IN },
				twistDeg: 0,
				liftsPerMin: 3,
				duration: 'up to 1 h',
				coupling: 'fair'
			},
			NIOSH_US
		).rwlG / G_PER_LB,
	// Four of its multipliers and the limit itself are printed rounded.
	tolerance: {
		fraction: 0.005 / 0.5 + 0.005 / 0.78 + 0.005 / 0.87 + 0.005 / 0.88 + 0.05 / 15.2
	}
});
outsideCase({
	what: 'punch-press stock, the lower of its ends',
	source: `${MANUAL}, example 1 (from memory)`,
	unit: 'lb',
	expected: 14.5,
	got: () =>
		liftingTaskLimit(
			{
				origin: { horizontalMm: 23 * MM_PER_IN, heightMm: 15 * MM_PER_IN },
				destination: { horizontalMm: 23 * MM_PER_IN, heightMm: 63 * MM_PER_IN },
				twistDeg: 0,
				liftsPerMin: 0.2,
				duration: 'up to 1 h',
				coupling: 'fair'
			},
			NIOSH_US
		).rwlG / G_PER_LB,
	// Three of its multipliers and the limit itself are printed rounded.
	tolerance: { fraction: 0.005 / 0.44 + 0.005 / 0.75 + 0.005 / 0.86 + 0.05 / 14.5 }
});

const IDEAL: Lift = {
	horizontalMm: 250,
	originHeightMm: 750,
	travelMm: 250,
	twistDeg: 0,
	liftsPerMin: 0.2,
	duration: 'up to 1 h',
	coupling: 'good'
};
const kg = (change: Partial<Lift>) => liftingLimit({ ...IDEAL, ...change }).rwlG / 1000;
const METRIC: [what: string, change: Partial<Lift>, expected: number][] = [
	['the ideal lift is the load constant', {}, 23],
	['hands at the floor, VM 0.775', { originHeightMm: 0 }, 17.825],
	['hands at 1750 mm, VM 0.70', { originHeightMm: 1750 }, 16.1],
	['hands 630 mm away, HM 0.40', { horizontalMm: 630 }, 9.2],
	['twisted by 135°, AM 0.57', { twistDeg: 135 }, 13.11],
	['lifted through 1750 mm, DM 0.85', { travelMm: 1750 }, 19.55],
	['above 135° nothing', { twistDeg: 136 }, 0],
	['beyond 63 cm nothing', { horizontalMm: 631 }, 0]
];
for (const [what, change, expected] of METRIC) {
	outsideCase({
		what,
		source: `${MANUAL}, tables 1 to 4 (metric)`,
		unit: 'kg',
		expected,
		got: () => kg(change),
		// A multiplier printed to two decimals.
		tolerance: 0.005 * 23
	});
}

const FREQUENCIES: [number, '1 to 2 h' | 'up to 1 h' | '2 to 8 h', boolean, number][] = [
	[0.1, '2 to 8 h', false, 0.85],
	[4, 'up to 1 h', true, 0.84],
	[9, '2 to 8 h', true, 0.15],
	[11, '1 to 2 h', true, 0.23],
	[13, 'up to 1 h', false, 0],
	[16, 'up to 1 h', true, 0]
];
for (const [liftsPerMin, duration, fromKnuckleHeight, expected] of FREQUENCIES) {
	outsideCase({
		what: `${liftsPerMin} lifts a minute, ${duration}, ${fromKnuckleHeight ? 'high' : 'low'}`,
		source: `${MANUAL}, table 5`,
		unit: 'count',
		expected,
		got: () => frequencyMultiplier({ liftsPerMin, duration, fromKnuckleHeight }),
		tolerance: 1e-9
	});
}

outsideCase({
	what: 'hands for a mold 400 mm deep, when they can’t be measured',
	source: `${MANUAL}, p. 8: 20 cm + W / 2`,
	unit: 'mm',
	expected: 400,
	got: () => estimatedHorizontalMm({ moldDepthMm: 400, originHeightMm: 750 }),
	tolerance: 1e-9
});

const TEAM = 'HSE L23 guidance on team handling';
const TEAMS: [alone: number, people: 2 | 3, expected: number, source: string][] = [
	[20, 2, 26.6, `${TEAM}, a rail operator’s worked example`],
	[50, 2, 66, `${TEAM}, a trainer’s worked example`],
	[50, 3, 75, `${TEAM}, a trainer’s worked example`]
];
for (const [alone, people, expected, source] of TEAMS) {
	outsideCase({
		what: `${people} people who can lift ${alone} kg each`,
		source,
		unit: 'kg',
		expected,
		got: () => teamLimitG({ rwlG: alone * 1000, people }) / 1000,
		// Printed cut off, not rounded.
		tolerance: expected === 26.6 ? 0.1 : 1
	});
}
