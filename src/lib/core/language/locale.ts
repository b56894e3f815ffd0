/** Languages that texts and messages exist in. English is complete; the others are held to it. */
export const LANGS = ['en', 'es'] as const;
export type Lang = (typeof LANGS)[number];

/** What a person may choose: a language, and how numbers and dates are written in it (BCP 47). */
export const LOCALES = ['en-US', 'en-GB', 'es-US', 'es-ES'] as const;
export type Locale = (typeof LOCALES)[number];

/** What each is called by those who choose it, with a number and a date as it writes them. */
export const LOCALE_TITLES: Readonly<Record<Locale, string>> = {
	'en-US': 'English: 12.5, Mar 3',
	'en-GB': 'English: 12.5, 3 Mar',
	'es-US': 'Español: 12.5, 3 mar',
	'es-ES': 'Español: 12,5, 3 mar'
};

export const langOf = (locale: Locale): Lang => (locale.startsWith('es') ? 'es' : 'en');

export function isLocale(text: unknown): text is Locale {
	return (LOCALES as readonly unknown[]).includes(text);
}

/** Countries that write a decimal point in Spanish; in the others it is a comma. Source: CLDR, from memory. */
const POINT_IN_SPANISH = ['US', 'MX', 'GT', 'HN', 'NI', 'PA', 'PE', 'PR', 'SV', 'DO'];

function closest(tag: string): Locale | null {
	const [language = '', ...rest] = tag.split('-');
	const country = rest.find((part) => /^[a-z]{2}$/i.test(part))?.toUpperCase();
	if (language.toLowerCase() === 'es') {
		return country !== undefined && !POINT_IN_SPANISH.includes(country) ? 'es-ES' : 'es-US';
	}
	if (language.toLowerCase() === 'en') {
		return country === undefined || country === 'US' ? 'en-US' : 'en-GB';
	}
	return null;
}

/**
 * What a browser asks for, as far as there is any of it; American English where there is none.
 *
 * @param header - Accept-Language, RFC 9110 section 12.5.4; null when none was sent
 */
export function localeFor(header: string | null): Locale {
	const asked = (header ?? '')
		.slice(0, 500)
		.split(',')
		.map((item) => {
			const [tag = '', ...parameters] = item.trim().split(';');
			const q = parameters.map((p) => /^\s*q=([\d.]+)\s*$/.exec(p)?.[1]).find((n) => n);
			return { tag: tag.trim(), q: q === undefined ? 1 : Number(q) };
		})
		.filter(({ q }) => q > 0)
		.sort((a, b) => b.q - a.q);
	for (const { tag } of asked) {
		const found = closest(tag);
		if (found) return found;
	}
	return 'en-US';
}
