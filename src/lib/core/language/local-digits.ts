import type { Locale } from './locale';

/** A number with a point for its decimals, perhaps with commas between thousands, that is no part of a code. */
const NUMBER = /(?<![\w.,-])\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\w])|(?<![\w.,])\d+\.\d+(?![\w.])/g;

/**
 * A sentence with its numbers written as `locale` writes them: "12.5 g" as "12,5 g" where a comma is used.
 * The core writes every number with a point, so this stands at the edge, like the units of a shop.
 */
export function withLocalDigits(text: string, locale: Locale): string {
	if (locale !== 'es-ES') return text;
	return text.replace(NUMBER, (number) =>
		// A thin no-break space between thousands: ISO 80000-1, 7.3.1.
		number.replace(/[.,]/g, (mark) => (mark === '.' ? ',' : '\u202f'))
	);
}

/** A number as it was typed, with the point that the core reads: "12,5" was meant as 12.5 where a comma is used. */
export function withPoint(typed: string, locale: Locale): string {
	return locale === 'es-ES' && /^\s*-?\d+,\d+\s*$/.test(typed) ? typed.replace(',', '.') : typed;
}
