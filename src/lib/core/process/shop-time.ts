const INSTANT = /\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?Z/g;

function format(at: string, zone: string, options: Intl.DateTimeFormatOptions): string {
	return new Intl.DateTimeFormat('en-US', { timeZone: zone, hourCycle: 'h23', ...options }).format(
		new Date(at)
	);
}

/** Calendar day in the shop's zone, for comparing: "2026-03-02". */
function dayOf(at: string, zone: string): string {
	return new Intl.DateTimeFormat('sv-SE', { timeZone: zone }).format(new Date(at));
}

/** Time of day as the shop's clock shows it: "14:05". */
export function clockTime(at: string, zone: string): string {
	return format(at, zone, { hour: '2-digit', minute: '2-digit' });
}

/** "14:05" today, "Tue, Mar 3, 14:05" on another day. */
export function timeText(at: string, zone: string, now: string): string {
	if (dayOf(at, zone) === dayOf(now, zone)) return clockTime(at, zone);
	return `${format(at, zone, { weekday: 'short', month: 'short', day: 'numeric' })}, ${clockTime(at, zone)}`;
}

/** A sentence of the core with its instants as the shop's clock shows them. */
export function withShopTimes(text: string, zone: string, now: string): string {
	return text.replace(INSTANT, (at) => timeText(at, zone, now));
}
