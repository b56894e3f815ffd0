import {
	CM2_PER_FT2,
	CM2_PER_IN2,
	fahrenheit,
	G_PER_GRAIN,
	G_PER_LB,
	G_PER_OZ,
	M3_PER_FT3,
	ML_PER_US_FL_OZ,
	ML_PER_US_GAL,
	MM_PER_FT,
	MM_PER_IN,
	N_PER_LBF,
	PA_PER_PSI
} from './customary';
import type { Unit } from './unit';

export type UnitSystem = 'SI' | 'US';

/** One way to show a quantity: from which size on, in what unit, how finely. */
export interface DisplayScale {
	unit: string;
	convert: (value: number) => number;
	/** Smallest absolute core value that is shown on this scale. */
	from: number;
	/** At least this many significant digits; whole numbers keep all of theirs. */
	digits: number;
	/** At least this many digits after the point, however large the value. */
	decimals: number;
}

const per = (factor: number) => (value: number) => value / factor;
const same = per(1);
const scale = (
	unit: string,
	convert: (value: number) => number,
	from = 0,
	digits = 3,
	decimals = 0
): DisplayScale => ({ unit, convert, from, digits, decimals });

/** Scales per unit, smallest first; a unit that is not listed is shown as it is. */
const SI: Partial<Record<Unit, DisplayScale[]>> = {
	mm: [scale('mm', same), scale('m', per(1000), 2000)],
	cm2: [scale('cm²', same), scale('m²', per(10_000), 10_000)],
	mL: [scale('mL', same), scale('L', per(1000), 1000)],
	g: [scale('g', same, 0, 3, 1), scale('kg', per(1000), 10_000, 4)],
	C: [scale('°C', same)],
	'Pa·s': [scale('mPa·s', per(0.001)), scale('Pa·s', same, 1)],
	Pa: [scale('Pa', same), scale('kPa', per(1000), 1000), scale('MPa', per(1e6), 1e6)],
	'%': [scale('%', same)],
	fraction: [scale('%', per(0.01))],
	count: [scale('', same)],
	text: [scale('', same, 0, 15)],
	deg: [scale('°', same)],
	'g/m3': [scale('g/m³', same)],
	'mg/m3': [scale('mg/m³', same)],
	m3: [scale('m³', same)],
	'm3/h': [scale('m³/h', same)],
	'1/h': [scale('per hour', same)],
	'1/min': [scale('per minute', same)],
	'g/(m2·h)': [scale('g/(m²·h)', same)],
	'cm2/min': [scale('cm²/min', same)],
	'g/min': [
		scale('µg/min', per(1e-6)),
		scale('mg/min', per(0.001), 0.001),
		scale('g/min', same, 0.1)
	]
};

const US: Partial<Record<Unit, DisplayScale[]>> = {
	...SI,
	mm: [scale('in', per(MM_PER_IN)), scale('ft', per(MM_PER_FT), 8 * MM_PER_FT)],
	cm2: [scale('in²', per(CM2_PER_IN2)), scale('ft²', per(CM2_PER_FT2), CM2_PER_FT2)],
	mL: [scale('fl oz', per(ML_PER_US_FL_OZ)), scale('gal', per(ML_PER_US_GAL), ML_PER_US_GAL)],
	// Scales at the bench read grams in every shop, so small masses stay grams.
	g: [scale('g', same, 0, 3, 1), scale('lb', per(G_PER_LB), 10_000, 4)],
	C: [scale('°F', fahrenheit)],
	K: [scale('°F', per(1 / 1.8))],
	'g/mL': [scale('lb/gal', per(G_PER_LB / ML_PER_US_GAL))],
	'Pa·s': [scale('cP', per(0.001))],
	Pa: [scale('psi', per(PA_PER_PSI))],
	N: [scale('lbf', per(N_PER_LBF))],
	'g/m3': [scale('gr/ft³', per(G_PER_GRAIN / M3_PER_FT3))],
	m3: [scale('ft³', per(M3_PER_FT3))],
	'm3/h': [scale('ft³/min', per(60 * M3_PER_FT3))],
	'N/mm': [scale('lbf/in', per(N_PER_LBF / MM_PER_IN))],
	'mm/s': [scale('in/s', per(MM_PER_IN))],
	'm/s': [scale('ft/min', per(MM_PER_FT / 60_000))],
	'g/min': [
		scale('µg/min', per(1e-6)),
		scale('mg/min', per(0.001), 0.001),
		scale('oz/min', per(G_PER_OZ), 0.1)
	],
	'cm2/min': [scale('in²/min', per(CM2_PER_IN2))]
};

/** The scale on which a value of this size is shown: the largest one that it reaches. */
export function displayScale(value: number, unit: Unit, system: UnitSystem): DisplayScale {
	const scales = (system === 'US' ? US : SI)[unit] ?? [scale(unit, same)];
	return scales.findLast(({ from }) => Math.abs(value) >= from) ?? scale(unit, same);
}
