import { fahrenheit, MM_PER_IN } from '../quantity/customary';
import type { UnitSystem } from '../quantity/display';

/** How a reading is typed at the bench: the unit behind the box, and the way to the core's and back. */
interface TypedUnit {
	unit: string;
	toCore: (typed: number) => number;
	fromCore: (value: number) => number;
}

const same = (unit: string): TypedUnit => ({ unit, toCore: (v) => v, fromCore: (v) => v });
const LENGTH: Record<UnitSystem, TypedUnit> = {
	SI: same('mm'),
	US: { unit: 'in', toCore: (inch) => inch * MM_PER_IN, fromCore: (mm) => mm / MM_PER_IN }
};
const TEMPERATURE: Record<UnitSystem, TypedUnit> = {
	SI: same('°C'),
	US: { unit: '°F', toCore: (f) => (f - 32) / 1.8, fromCore: fahrenheit }
};

/** The typed unit of a field in mm or °C; null for one that reads the same in both systems, as grams do. */
export function typedUnitOf(unit: string | undefined, system: UnitSystem): TypedUnit | null {
	if (unit === 'C') return TEMPERATURE[system];
	return unit === 'mm' ? LENGTH[system] : null;
}

/** The same by a datum's name, which ends in its unit. */
function typedUnitByName(name: string, system: UnitSystem): TypedUnit | null {
	if (name.endsWith('Mm')) return LENGTH[system];
	return /[a-z]C$/.test(name) ? TEMPERATURE[system] : null;
}

/**
 * An act's data with every length in mm and every temperature in °C, from the units they were typed
 * in. Twelve digits undo what binary fractions add: 0.19 in is 4.826 mm.
 */
export function inCoreUnits(
	data: Record<string, unknown>,
	system: UnitSystem
): Record<string, unknown> {
	const convert = (name: string, value: unknown): unknown => {
		if (Array.isArray(value)) return value.map((item: unknown) => convert(name, item));
		if (typeof value === 'object' && value !== null) return inCoreUnits({ ...value }, system);
		if (typeof value !== 'number' || system === 'SI') return value;
		const typed = typedUnitByName(name, system);
		return typed ? Number(typed.toCore(value).toPrecision(12)) : value;
	};
	return Object.fromEntries(
		Object.entries(data).map(([name, value]) => [name, convert(name, value)])
	);
}
