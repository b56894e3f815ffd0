import { Temporal } from 'temporal-polyfill';
import { coatThicknessesMm } from '../../src/lib/core/laws/coat-profile';
import { moldCost, partCost } from '../../src/lib/core/laws/cost';
import { cupPace } from '../../src/lib/core/laws/cup-pace';
import { kitsToBuy, type Kit } from '../../src/lib/core/laws/kits';
import { chooseProcess } from '../../src/lib/core/laws/process-choice';
import type { ProcessTerms } from '../../src/lib/core/laws/process-estimate';
import { evenScale } from '../../src/lib/core/laws/process-scale';
import { shelfLife } from '../../src/lib/core/laws/shelf-life';
import { outsideCase } from './outside-case';

const RHIND = 'Rhind Mathematical Papyrus, problem 64, in Chace’s translation of 1927, p. 102';
// Ten hekat among ten men, each an eighth more than the one before.
for (const [man, hekat] of [
	[10, 1 + 1 / 2 + 1 / 16],
	[6, 1 + 1 / 16],
	[1, 1 / 4 + 1 / 8 + 1 / 16]
] as const) {
	outsideCase({
		what: `ten coats of 10 mm in all that rise evenly, as shares of barley: number ${man}`,
		source: RHIND,
		unit: 'mm',
		expected: hekat,
		got: () => coatThicknessesMm({ targetMm: 10, coats: 10, firstMm: 7 / 16 })[man - 1] ?? NaN,
		tolerance: 1e-9
	});
}

const LAUNDRY =
	'Codecademy, Computer Architecture, lesson on pipelining: washing 30, drying 40, folding 10 min';
const laundry = { people: 1, mixingTimeS: 1800, workingTimeS: 1e5, layingRateGPerMin: 1 };
outsideCase({
	what: 'four loads one after the other, as four cups of one person',
	source: LAUNDRY,
	unit: 'min',
	expected: 320,
	got: () =>
		cupPace({ ...laundry, cupsG: [50, 50, 50, 50], hasMixer: false, bondWindowS: 1e5 }).totalS / 60,
	tolerance: 1e-9
});
outsideCase({
	what: 'four loads that overlap, as four cups that another person mixes ahead, the last one folded',
	source: LAUNDRY,
	unit: 'min',
	expected: 200,
	got: () =>
		cupPace({ ...laundry, cupsG: [40, 40, 40, 40], hasMixer: true, bondWindowS: 1e5 }).totalS / 60 +
		10,
	tolerance: 1e-9
});

const MILP = 'Python library scipy 1.17.1, optimize.milp (HiGHS)';
const kit = (massG: number, price: number): Kit => ({ massG, price });
const NEEDS: [needG: number, kits: Kit[], price: number, massG: number][] = [
	[6, [kit(1, 1), kit(3, 1), kit(4, 1)], 2, 6],
	[7300, [kit(900, 31.5), kit(1800, 58), kit(4500, 127), kit(22_700, 560)], 243, 8100],
	[12_650, [kit(650, 19.9), kit(1700, 44), kit(5200, 118)], 299.9, 12_750],
	[999, [kit(100, 10), kit(333, 30), kit(1000, 95)], 90, 999],
	[
		43_210,
		[kit(450, 14.2), kit(2270, 61), kit(9080, 221), kit(22_700, 525), kit(4540, 119)],
		1042.2,
		43_580
	]
];
for (const [needG, kits, price, massG] of NEEDS) {
	const choice = () => kitsToBuy({ needG, kits });
	outsideCase({
		what: `cheapest of ${kits.length} kit sizes for ${needG} g`,
		source: MILP,
		unit: 'currency',
		expected: price,
		got: () => choice().price,
		tolerance: 1e-6
	});
	outsideCase({
		what: `what those hold, the least among equally cheap ones`,
		source: MILP,
		unit: 'g',
		expected: massG,
		got: () => choice().massG,
		tolerance: 1e-6
	});
}

const TEMPORAL = 'npm library temporal-polyfill 1.0.8';
for (const [madeAt, days, usedAt] of [
	['2026-02-27T06:00:00Z', 365, '2027-02-26T18:30:00Z'],
	['2023-12-31T23:59:59Z', 180, '2024-03-01T00:00:00Z'],
	['2024-02-28T12:00:00Z', 30, '2024-04-15T12:00:00Z']
] as const) {
	const made = Temporal.Instant.from(madeAt);
	const over = made.add({ hours: 24 * days });
	outsideCase({
		what: `of ${days} days from ${madeAt}, left on ${usedAt}`,
		source: TEMPORAL,
		unit: 's',
		expected: over.since(Temporal.Instant.from(usedAt), { largestUnit: 'second' }).seconds,
		got: () => shelfLife({ madeAt, shelfLifeS: days * 86_400, usedAt }).leftS,
		tolerance: 0
	});
}

const JOB =
	'exercise in job costing: 5,000 of material, 400 h at 6, overhead 2.50 an hour, 200 units';
outsideCase({
	what: 'a job of material, labor and overhead',
	source: JOB,
	unit: 'currency',
	expected: 8400,
	got: () =>
		moldCost({
			materialPrices: { all: 5000 },
			laborS: 400 * 3600,
			ratePricePerH: 6,
			overheadFraction: 1000 / 7400
		}).totalPrice,
	tolerance: 1e-6
});
const free = { materialPricePerPour: 0, laborSPerPour: 0, ratePricePerH: 0 };
outsideCase({
	what: 'that job on each of its 200 units',
	source: JOB,
	unit: 'currency',
	expected: 42,
	got: () =>
		partCost({ ...free, partsCount: 200, moldPrice: 8400, moldLifePours: 200 }).totalPricePerPart,
	tolerance: 1e-9
});
const SCRAP_FACTOR = 'SyteLine help, example: scrap factor';
const STANDARD = 'Microsoft support, How standard quantities are calculated in bills of materials';
for (const [partsCount, rejectFraction, expected, source] of [
	[100, 0.2, 125, SCRAP_FACTOR],
	[3, 0.05, 4, STANDARD],
	[1, 0.1, 2, STANDARD],
	[1, 0.9, 10, STANDARD]
] as const) {
	outsideCase({
		what: `made for ${partsCount} good ones when ${100 * rejectFraction} % are scrap`,
		source,
		unit: 'count',
		expected,
		got: () =>
			partCost({ ...free, partsCount, rejectFraction, moldPrice: 0, moldLifePours: 1000 })
				.poursCount,
		tolerance: 0
	});
}

// Process A costs 1,000 and 5 a unit, process B 500 and 10 a unit; a unit is a square meter here.
const CROSSOVER =
	'exercise in operations management: crossover of 1,000 + 5 x and 500 + 10 x at 100 units';
const terms: ProcessTerms = {
	gloveMm: 8,
	gloveExtraFraction: 0,
	shellMm: 10,
	blockGapMm: 25,
	layerMm: 12,
	layerExtraFraction: 0,
	brushRubberGPerMl: 1,
	pourRubberGPerMl: 1,
	shellGPerMl: 1,
	brushRubberPricePerKg: 0,
	pourRubberPricePerKg: 0,
	shellPricePerKg: 0,
	ratePricePerH: 3600,
	benchTimes: {
		glove: { fixedS: 1000, perM2S: 5, daysCount: 1 },
		'solid block': { fixedS: 500, perM2S: 10, daysCount: 1 },
		'poured layer': { fixedS: 1e5, perM2S: 0, daysCount: 1 }
	}
};
const pattern = (areaM2: number) => ({
	lengthMm: 1000,
	widthMm: 1000,
	heightMm: 1000,
	areaCm2: areaM2 * 10_000,
	volumeMl: 1000
});
outsideCase({
	what: 'units from which the process with the greater fixed cost is the cheaper',
	source: CROSSOVER,
	unit: 'count',
	expected: 100,
	got: () => 25 * (evenScale(pattern(25), terms) ?? NaN) ** 2,
	tolerance: 1e-6
});
for (const [units, process, price] of [
	[50, 'solid block', 1000],
	[200, 'glove', 2000]
] as const) {
	outsideCase({
		what: `price of ${units} units by the process chosen for them, ${process === 'glove' ? 'A' : 'B'}`,
		source: CROSSOVER,
		unit: 'currency',
		expected: price,
		got: () => {
			const { chosen, estimates } = chooseProcess({ pattern: pattern(units), terms });
			return estimates.find((way) => way.process === chosen)?.totalPrice ?? NaN;
		},
		tolerance: 1e-6
	});
}
