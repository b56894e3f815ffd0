import { Temporal } from 'temporal-polyfill';
import { timeText } from '$lib/core/process/shop-time';
import { workingTimes } from '$lib/core/plan/shift-hours';
import type { Shop } from '$lib/core/plan/shop';

/** An instant as a wall-clock field holds it: "2026-11-30T07:30" in the shop's zone. */
export function wallClock(at: string, zone: string): string {
	const time = Temporal.Instant.from(at).toZonedDateTimeISO(zone).toPlainDateTime();
	return time.toString({ smallestUnit: 'minute' });
}

/** The instant at which the shop's clock shows this; null when it cannot be read. */
export function instantOf(text: string, zone: string): string | null {
	if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/.test(text)) return null;
	try {
		const at = Temporal.PlainDateTime.from(text, { overflow: 'reject' }).toZonedDateTime(zone);
		return new Date(at.epochMilliseconds).toISOString();
	} catch {
		return null;
	}
}

/** "Nov 30, 2026" in the shop's zone. */
export function dayText(at: string, zone: string): string {
	const day = { year: 'numeric', month: 'short', day: 'numeric' } as const;
	return new Intl.DateTimeFormat('en-US', { ...day, timeZone: zone }).format(new Date(at));
}

/** "Mon, Nov 30, 07:30" in the shop's zone, as the plan and the board say it; of another year, with that year. */
export function startText(at: string, zone: string, now: string = at): string {
	const yearOf = (instant: string) => Temporal.Instant.from(instant).toZonedDateTimeISO(zone).year;
	// Beside an instant of another day, the day is said too.
	const text = timeText(at, zone, '1970-01-01T00:00:00Z');
	return yearOf(at) === yearOf(now) ? text : `${text} (${yearOf(at)})`;
}

const SEARCH_DAYS = 21;

/** When the next shift begins: a start that stays the same until then, so that a plan does too. */
export function nextShiftStart(shop: Shop, now: string): string {
	const nowMs = Date.parse(now);
	const next = workingTimes(shop, nowMs, SEARCH_DAYS).find(({ fromMs }) => fromMs > nowMs);
	return new Date(next?.fromMs ?? Math.ceil(nowMs / 1_800_000) * 1_800_000).toISOString();
}
