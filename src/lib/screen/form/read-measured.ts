import { MM_PER_FT, MM_PER_IN } from '$lib/core/quantity/customary';
import { coreValue, type Measure } from './measure';
import { readNumber } from './read-number';

const MM_PER: Readonly<Record<string, number>> = {
	mm: 1,
	cm: 10,
	m: 1000,
	'"': MM_PER_IN,
	in: MM_PER_IN,
	"'": MM_PER_FT,
	ft: MM_PER_FT
};
const LENGTH = /^(.+?)\s*(mm|cm|m|"|in\.?|'|ft\.?)$/;
const FEET_AND_INCHES = /^(\d+)\s*(?:'|ft\.?)\s*-?\s*(\d.*?)\s*(?:"|in\.?)?$/;

/**
 * What was typed in a box of this unit, in the core's unit: a bare number is in the box's own unit, which may
 * also stand behind it. A length may name another one: 6", 1' 6 1/2", 15 cm.
 *
 * @returns null when it cannot be read
 */
export function readMeasured(text: string, measure: Measure): number | null {
	const plain = text.trim();
	const number = readNumber(plain) ?? readNumber(withoutUnit(plain, measure.unit));
	if (number !== null) return coreValue(number, measure);
	if (measure.metric && plain.endsWith(measure.metric)) {
		return readNumber(withoutUnit(plain, measure.metric));
	}
	return measure.unit === 'mm' || measure.unit === 'in' ? readLengthMm(plain) : null;
}

function withoutUnit(text: string, unit: string): string {
	return unit !== '' && text.toLowerCase().endsWith(unit.toLowerCase())
		? text.slice(0, -unit.length).trim()
		: text;
}

function readLengthMm(text: string): number | null {
	const plain = text
		.toLowerCase()
		.replace(/[″”“]|''|′′/g, '"')
		.replace(/[′’]/g, "'");
	const [, feet, inches] = FEET_AND_INCHES.exec(plain) ?? [];
	if (feet !== undefined && inches !== undefined) {
		const number = readNumber(inches);
		return number === null ? null : rounded(Number(feet) * MM_PER_FT + number * MM_PER_IN);
	}
	const [, typed = '', unit = ''] = LENGTH.exec(plain) ?? [];
	const number = readNumber(typed);
	const mmPer = MM_PER[unit.replace('.', '')];
	return number === null || mmPer === undefined ? null : rounded(number * mmPer);
}

const rounded = (mm: number) => Number(mm.toPrecision(12));
