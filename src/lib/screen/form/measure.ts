import {
	CM2_PER_FT2,
	CM2_PER_IN2,
	fahrenheit,
	G_PER_LB,
	G_PER_OZ,
	M3_PER_FT3,
	ML_PER_US_FL_OZ,
	MM_PER_FT,
	MM_PER_IN,
	N_PER_LBF,
	PA_PER_PSI
} from '$lib/core/quantity/customary';
import type { UnitSystem } from '$lib/core/quantity/display';

/** How a quantity is typed: the unit behind the box, and the way to the core's unit and back. */
export interface Measure {
	unit: string;
	toCore: (typed: number) => number;
	fromCore: (value: number) => number;
	/** The core's unit where the box has another; it may be typed behind a number. */
	metric?: string;
	/** Nothing but whole numbers make sense. */
	isWhole?: boolean;
}

const times = (unit: string, factor: number): Measure => ({
	unit,
	toCore: (typed) => typed * factor,
	fromCore: (value) => value / factor
});
const as = (unit: string): Measure => times(unit, 1);

const CM2_PER_YD2 = 9 * CM2_PER_FT2;

/** What does not differ between the two systems: a data sheet's own units. */
const SHEET = {
	plain: as(''),
	count: { ...as(''), isWhole: true },
	percent: as('%'),
	grams: as('g'),
	density: as('g/mL'),
	stress: as('Pa'),
	degrees: as('°'),
	minutes: times('min', 60),
	hours: times('h', 3600),
	days: as('d'),
	areal: as('g/m²'),
	rate: as('g/min'),
	milliliters: as('mL'),
	fractionPct: times('%', 0.01),
	heat: as('J/g'),
	heatCapacity: as('J/(g·K)')
};

const SI = {
	...SHEET,
	length: as('mm'),
	area: as('cm²'),
	volume: as('mL'),
	mass: as('g'),
	temperature: as('°C'),
	viscosity: times('mPa·s', 0.001),
	tear: as('N/mm'),
	modulus: as('MPa'),
	room: as('m³'),
	airFlow: as('m³/h'),
	airSpeed: as('m/s'),
	difference: as('K'),
	hoursPerArea: times('h/m²', 3600)
};
export type MeasureId = keyof typeof SI;

const US: Record<MeasureId, Measure> = {
	...SI,
	length: times('in', MM_PER_IN),
	area: times('in²', CM2_PER_IN2),
	volume: times('fl oz', ML_PER_US_FL_OZ),
	mass: times('lb', G_PER_LB),
	temperature: { unit: '°F', toCore: (f) => (f - 32) / 1.8, fromCore: fahrenheit },
	viscosity: times('cP', 0.001),
	tear: times('lbf/in', N_PER_LBF / MM_PER_IN),
	modulus: times('psi', PA_PER_PSI / 1e6),
	room: times('ft³', M3_PER_FT3),
	airFlow: times('ft³/min', 60 * M3_PER_FT3),
	airSpeed: times('ft/min', MM_PER_FT / 60_000),
	difference: times('°F', 1 / 1.8),
	hoursPerArea: times('h/ft²', (3600 * 10_000) / CM2_PER_FT2),
	areal: times('oz/yd²', (G_PER_OZ * 10_000) / CM2_PER_YD2),
	stress: times('lbf/ft²', (N_PER_LBF * 10_000) / CM2_PER_FT2)
};

/** The unit in which a shop of this system types a quantity. */
export function measureOf(id: MeasureId, system: UnitSystem): Measure {
	if (system === 'SI') return SI[id];
	const { unit, fromCore } = SI[id];
	const isCore = US[id].unit !== unit && fromCore(1) === 1;
	return isCore ? { ...US[id], metric: unit } : US[id];
}

/** A typed number in the core's unit. Twelve digits undo what binary fractions add: 3.3 in is 83.82 mm. */
export function coreValue(typed: number, measure: Measure): number {
	return Number(measure.toCore(typed).toPrecision(12));
}

/** A foreign unit in a box: a number that needs more digits than this is better said in its own. */
const MOST_DIGITS = 7;

/**
 * A core value as it stands in a field: the shortest text that reads back as exactly this value. A cup of 100 mL is
 * "100 mL" in a shop that types fluid ounces, not 3.3814022702.
 */
export function fieldText(value: number | undefined, measure: Measure): string {
	if (value === undefined) return '';
	const shown = measure.fromCore(value);
	for (let digits = 1; digits < 17; digits += 1) {
		if (digits > MOST_DIGITS && measure.metric) return `${value} ${measure.metric}`;
		const text = Number(shown.toPrecision(digits));
		if (coreValue(text, measure) === value) return String(text);
	}
	return String(shown);
}
