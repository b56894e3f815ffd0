const WITH_YEAR: Intl.DateTimeFormatOptions = {
	year: 'numeric',
	month: 'short',
	day: 'numeric',
	hour: '2-digit',
	minute: '2-digit',
	hourCycle: 'h23'
};

/** "Mar 3, 2026, 14:05" in the shop's zone: a record is read years later, so the year is said. */
export function recordTime(at: string, zone: string): string {
	return new Intl.DateTimeFormat('en-US', { ...WITH_YEAR, timeZone: zone }).format(new Date(at));
}
