import type { ShopDay } from '$lib/core/process/ahead/shop-days';
import { clockTime } from '$lib/core/process/shop-time';
import type { DayAxis } from './day-axis';

/** Hours nearer to each other than this share of the width are not both written. */
const APART_PCT = 4.2;

/** "Tue" in the shop's zone. */
export function weekday(day: ShopDay, zone: string): string {
	return named(day, zone, { weekday: 'short' });
}

/** "Tuesday, December 1" in the shop's zone. */
export function dayTitle(day: ShopDay, zone: string): string {
	return named(day, zone, { weekday: 'long', month: 'long', day: 'numeric' });
}

// Noon is on the same date in the zone, whatever the clock does at midnight.
function named(day: ShopDay, zone: string, form: Intl.DateTimeFormatOptions): string {
	const noonMs = (day.fromMs + day.toMs) / 2;
	return new Intl.DateTimeFormat('en-US', { timeZone: zone, ...form }).format(new Date(noonMs));
}

interface Hour {
	/** In percent of the width. */
	at: number;
	text: string;
	isToday: boolean;
}

/** The hours to write over the days: full hours of the present shift ahead, and where each other shift begins and ends. */
export function hoursOfScale(
	axis: DayAxis,
	days: readonly ShopDay[],
	nowMs: number,
	zone: string
): Hour[] {
	const edges = days.flatMap(({ shifts }, index) =>
		shifts.flatMap(({ fromMs, toMs }) => [fromMs, toMs].map((ms) => ({ ms, isToday: index === 0 })))
	);
	const full = (days[0]?.shifts ?? []).flatMap(({ fromMs, toMs }) => {
		const firstMs = Math.ceil(Math.max(fromMs, nowMs) / 3_600_000) * 3_600_000;
		const count = Math.max(0, Math.ceil((toMs - firstMs) / 3_600_000));
		return Array.from({ length: count }, (_, i) => ({
			ms: firstMs + i * 3_600_000,
			isToday: true
		}));
	});
	const hours: Hour[] = [];
	// Ends of shifts are written first: what stands too near to one gives way.
	for (const { ms, isToday } of [...edges, ...full]) {
		const at = axis.at(ms);
		if (hours.some((hour) => Math.abs(hour.at - at) < APART_PCT)) continue;
		hours.push({ at, text: clockTime(new Date(ms).toISOString(), zone), isToday });
	}
	return hours;
}
