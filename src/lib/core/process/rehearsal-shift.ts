import { Temporal } from 'temporal-polyfill';
import type { Shop } from '../plan/shop';
import type { ProcessContext } from './context';
import { addSeconds, secondsBetween } from './instant';

/** A shop's calendar. */
export type Hours = Pick<Shop, 'zone' | 'shifts'>;

interface Span {
	fromAt: string;
	toAt: string;
}

/** Days to look ahead for a shift; a shop with one shift a week finds it. */
const DAYS_AHEAD = 8;
/** From coming in to the first act. */
const SETTLE_S = 600;
/** A shift this young is begun, however long the work will take. */
const FRESH_S = 3600;

/** The shifts of one day of the shop's calendar, earliest first. */
function shiftsOf({ zone, shifts }: Hours, date: Temporal.PlainDate): Span[] {
	const instant = (time: string) => {
		const zoned = date.toZonedDateTime({ timeZone: zone, plainTime: time });
		return addSeconds(zoned.toInstant().toString(), 0);
	};
	return shifts
		.filter(({ weekday }) => weekday === date.dayOfWeek)
		.sort((a, b) => a.from.localeCompare(b.from))
		.map(({ from, to }) => ({ fromAt: instant(from), toAt: instant(to) }));
}

/** Shifts not over at `at`, in order; a day is worked out once. */
function* shiftsFrom(hours: Hours, known: Map<string, Span[]>, at: string): Generator<Span> {
	const today = Temporal.Instant.from(at).toZonedDateTimeISO(hours.zone).toPlainDate();
	for (let days = 0; days <= DAYS_AHEAD; days++) {
		const date = today.add({ days });
		const spans = known.get(date.toString()) ?? shiftsOf(hours, date);
		known.set(date.toString(), spans);
		for (const span of spans) if (secondsBetween(at, span.toAt) > 0) yield span;
	}
}

/** Hands-on and waiting time of the coats or the shell that are about to begin, seconds. */
function aheadS({ phase, plan }: ProcessContext): number {
	if (phase === 'shell') {
		return plan.shell.rounds.reduce(
			(sum, { cups, mixS, workingS }) => sum + cups.length * (mixS + 150 + 0.7 * workingS),
			900
		);
	}
	if (phase !== 'detail' && phase !== 'build') return 0;
	return plan.coats.reduce(
		(sum, { cups, mixS, workingS, tackTestS }) =>
			sum + tackTestS + cups.length * (mixS + 150 + 0.7 * workingS),
		900
	);
}

/**
 * When the crew begins an act that need not be done at once: within a shift, and a run of coats only
 * when the shift leaves time for it or has just begun.
 */
export function withinShifts(hours: Hours) {
	const known = new Map<string, Span[]>();
	return (at: string, context: ProcessContext): string => {
		const needS = aheadS(context);
		for (const { fromAt, toAt } of shiftsFrom(hours, known, at)) {
			const isOn = secondsBetween(fromAt, at) >= 0;
			const isFresh = !isOn || secondsBetween(fromAt, at) < FRESH_S;
			if (!isFresh && secondsBetween(at, toAt) < needS) continue;
			return isOn ? at : addSeconds(fromAt, SETTLE_S);
		}
		return at;
	};
}

/** The beginning of the shop's last shift that began at or before `at`; `at` itself when there is none. */
export function lastShiftStart(hours: Hours, at: string): string {
	const today = Temporal.Instant.from(at).toZonedDateTimeISO(hours.zone).toPlainDate();
	for (let days = 0; days <= DAYS_AHEAD; days++) {
		const begun = shiftsOf(hours, today.subtract({ days })).filter(
			({ fromAt }) => secondsBetween(fromAt, at) >= 0
		);
		const last = begun.at(-1);
		if (last) return addSeconds(last.fromAt, SETTLE_S);
	}
	return at;
}
