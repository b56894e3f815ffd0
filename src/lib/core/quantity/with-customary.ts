import { displayQuantity, type UnitSystem } from './display';
import type { Unit } from './unit';

const UNITS: Readonly<Record<string, Unit>> = { mm: 'mm', mL: 'mL', '°C': 'C' };
const NUMBER = String.raw`[−-]?\d[\d,]*(?:\.\d+)?`;
/**
 * Customary units that open a bracket before it, its number, another one after "to" or "and", its unit, and the
 * Fahrenheit that the text itself gives.
 */
const QUANTITY = new RegExp(
	String.raw`((?:in|ft|oz|gal|°F) \()?(${NUMBER})(?:( to | and )(${NUMBER}))? (mm|mL|°C)(?![\w/])(?: \((${NUMBER} °F)\))?`,
	'g'
);

const core = (typed: string): number => Number(typed.replace('−', '-').replaceAll(',', ''));

/** A cup of a pint holds 473.176473 mL, which no cup says. */
const short = (typed: string): string =>
	typed.length > 6 ? String(Number(core(typed).toPrecision(4))) : typed;

/**
 * "4.8 mm" as "0.189 in (4.8 mm)" wherever it stands in a sentence: the shop's units first, then what gauges,
 * cups and sheets carry. What has both already is left, or turned round.
 */
export function withCustomary(text: string, system: UnitSystem): string {
	if (system === 'SI') return text;
	return text.replace(
		QUANTITY,
		(said: string, before, from: string, between = '', to = '', unit: string, given) => {
			if (before) return said;
			const each = (word: (typed: string) => string) => word(from) + between + (to && word(to));
			const shown = each((typed) => displayQuantity(core(typed), UNITS[unit] ?? 'text', 'US'));
			return `${given ?? shown} (${each(short)} ${unit})`;
		}
	);
}
