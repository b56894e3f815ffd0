const WITH_YEAR: Intl.DateTimeFormatOptions = {
	year: 'numeric',
	month: 'short',
	day: 'numeric',
	hour: '2-digit',
	minute: '2-digit',
	hourCycle: 'h23'
};

/** Making one takes far longer than using it, and a record uses hundreds. */
const formats = new Map<string, Intl.DateTimeFormat>();

/** "Mar 3, 2026, 14:05" in the shop's zone: a record is read years later, so the year is said. */
export function recordTime(at: string, zone: string): string {
	let format = formats.get(zone);
	if (!format) {
		format = new Intl.DateTimeFormat('en-US', { ...WITH_YEAR, timeZone: zone });
		formats.set(zone, format);
	}
	return format.format(new Date(at));
}
