import { Temporal } from 'temporal-polyfill';
import { workingTimes, type WorkingTime } from '../../plan/shift-hours';
import type { Shop } from '../../plan/shop';

/** One calendar day of the shop, in milliseconds since 1970; 23 or 25 hours long where the clock is changed. */
export interface ShopDay {
	fromMs: number;
	toMs: number;
	/** Working hours within it, in order. */
	shifts: WorkingTime[];
}

/** The day of `nowMs` and the following ones, as the shop's own calendar has them. */
export function shopDays(
	shop: Pick<Shop, 'shifts' | 'zone'>,
	nowMs: number,
	count: number
): ShopDay[] {
	const today = Temporal.Instant.fromEpochMilliseconds(nowMs)
		.toZonedDateTimeISO(shop.zone)
		.toPlainDate();
	const midnightMs = (days: number) =>
		today.add({ days }).toZonedDateTime(shop.zone).epochMilliseconds;
	const times = workingTimes(shop, nowMs, count);
	return Array.from({ length: count }, (_, day) => {
		const fromMs = midnightMs(day);
		const toMs = midnightMs(day + 1);
		const shifts = times
			.filter((time) => time.fromMs < toMs && time.toMs > fromMs)
			.map((time) => ({
				fromMs: Math.max(time.fromMs, fromMs),
				toMs: Math.min(time.toMs, toMs)
			}));
		return { fromMs, toMs, shifts };
	});
}
