import { Temporal } from 'temporal-polyfill';
import type { Shift, Shop } from './shop';

/** A stretch of working time, in milliseconds since 1970. */
export interface WorkingTime {
	fromMs: number;
	toMs: number;
}

/** Milliseconds of a day; exact. */
const DAY_MS = 86_400_000;

/**
 * The shop's working hours as instants, in order, from the day of `fromMs` for so many days; shifts
 * that touch are one. Daylight saving is taken from the zone, day by day.
 */
export function workingTimes(
	shop: Pick<Shop, 'shifts' | 'zone'>,
	fromMs: number,
	days: number
): WorkingTime[] {
	const first = Temporal.Instant.fromEpochMilliseconds(fromMs)
		.toZonedDateTimeISO(shop.zone)
		.toPlainDate();
	const times: WorkingTime[] = [];
	let date = first;
	let midnightMs = startOfDayMs(date, shop.zone);
	for (let day = 0; day < days; day += 1) {
		const next = date.add({ days: 1 });
		const nextMidnightMs = startOfDayMs(next, shop.zone);
		const isPlain = nextMidnightMs - midnightMs === DAY_MS;
		for (const shift of shop.shifts) {
			if (shift.weekday !== date.dayOfWeek) continue;
			times.push(
				isPlain
					? { fromMs: midnightMs + clockMs(shift.from), toMs: midnightMs + clockMs(shift.to) }
					: zonedShift(date, shift, shop.zone)
			);
		}
		date = next;
		midnightMs = nextMidnightMs;
	}
	return merged(times.sort((a, b) => a.fromMs - b.fromMs));
}

const startOfDayMs = (date: Temporal.PlainDate, zone: string): number =>
	date.toZonedDateTime(zone).epochMilliseconds;

function clockMs(clock: string): number {
	const [hours = 0, minutes = 0] = clock.split(':').map(Number);
	return (hours * 60 + minutes) * 60_000;
}

/** On a day on which the clock is changed, the wall clock decides. */
function zonedShift(date: Temporal.PlainDate, { from, to }: Shift, zone: string): WorkingTime {
	const at = (clock: string) =>
		date.toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from(clock) })
			.epochMilliseconds;
	return { fromMs: at(from), toMs: at(to) };
}

function merged(times: readonly WorkingTime[]): WorkingTime[] {
	const result: WorkingTime[] = [];
	for (const time of times) {
		const last = result.at(-1);
		if (last && time.fromMs <= last.toMs) last.toMs = Math.max(last.toMs, time.toMs);
		else if (time.toMs > time.fromMs) result.push({ ...time });
	}
	return result;
}
