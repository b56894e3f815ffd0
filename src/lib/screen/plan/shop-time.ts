/** "Mon, Nov 30" on the shop's calendar. */
export function shopDay(at: string, zone: string): string {
	return new Intl.DateTimeFormat('en-US', {
		timeZone: zone,
		weekday: 'short',
		month: 'short',
		day: 'numeric'
	}).format(new Date(at));
}

/** "14:05" on the shop's clock. */
export function shopClock(at: string, zone: string): string {
	return new Intl.DateTimeFormat('en-US', {
		timeZone: zone,
		hour: '2-digit',
		minute: '2-digit',
		hourCycle: 'h23'
	}).format(new Date(at));
}

/** "Mon, Nov 30, 14:05". */
export function shopTime(at: string, zone: string): string {
	return `${shopDay(at, zone)}, ${shopClock(at, zone)}`;
}

/** Entries under the day on which they begin, in their order. */
export function byDay<Entry extends { startAt: string }>(
	entries: readonly Entry[],
	zone: string
): [day: string, entries: Entry[]][] {
	const days = new Map<string, Entry[]>();
	for (const entry of entries) {
		const day = shopDay(entry.startAt, zone);
		days.set(day, [...(days.get(day) ?? []), entry]);
	}
	return [...days];
}
