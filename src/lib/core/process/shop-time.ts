import type { Locale } from '../language/locale';

const INSTANT = /\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?Z/g;

const FORMS = {
	clock: { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' },
	date: { weekday: 'short', month: 'short', day: 'numeric' },
	/** For comparing: "3/2/2026". */
	day: { year: 'numeric', month: 'numeric', day: 'numeric' }
} as const satisfies Record<string, Intl.DateTimeFormatOptions>;

interface Form {
	zone: string;
	form: keyof typeof FORMS;
	locale?: Locale | undefined;
}

/** Making one takes far longer than using it, and a board uses hundreds. */
const formats = new Map<string, Intl.DateTimeFormat>();

function format(at: string, { zone, form, locale = 'en-US' }: Form): string {
	const key = `${form} ${zone} ${locale}`;
	let formatter = formats.get(key);
	if (!formatter) {
		formatter = new Intl.DateTimeFormat(locale, { timeZone: zone, ...FORMS[form] });
		formats.set(key, formatter);
	}
	return formatter.format(new Date(at));
}

/** Time of day as the shop's clock shows it: "14:05". */
export function clockTime(at: string, zone: string): string {
	return format(at, { zone, form: 'clock' });
}

/** "14:05" today, "Tue, Mar 3, 14:05" on another day. */
export function timeText(at: string, zone: string, now: string, locale?: Locale): string {
	const day = (instant: string) => format(instant, { zone, form: 'day' });
	if (day(at) === day(now)) return clockTime(at, zone);
	return `${format(at, { zone, form: 'date', locale })}, ${clockTime(at, zone)}`;
}

/** A sentence of the core with its instants as the shop's clock shows them. */
export function withShopTimes(text: string, zone: string, now: string, locale?: Locale): string {
	return text.replace(INSTANT, (at) => timeText(at, zone, now, locale));
}
