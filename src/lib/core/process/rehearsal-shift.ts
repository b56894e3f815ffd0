import { Temporal } from 'temporal-polyfill';
import type { Shop } from '../plan/shop';
import type { ProcessContext } from './context';
import { addSeconds, secondsBetween } from './instant';

interface Span {
	fromAt: string;
	toAt: string;
}

/** Days to look ahead for a shift; a shop with one shift a week finds it. */
const DAYS_AHEAD = 8;
/** From coming in to the first act. */
const SETTLE_S = 600;

function shiftsFrom(shop: Pick<Shop, 'zone' | 'shifts'>, at: string): Span[] {
	const day = Temporal.Instant.from(at).toZonedDateTimeISO(shop.zone).toPlainDate();
	const days = Array.from({ length: DAYS_AHEAD + 1 }, (_, days) => day.add({ days }));
	const instant = (date: Temporal.PlainDate, time: string) =>
		addSeconds(
			date.toZonedDateTime({ timeZone: shop.zone, plainTime: time }).toInstant().toString(),
			0
		);
	return days
		.flatMap((date) =>
			shop.shifts
				.filter(({ weekday }) => weekday === date.dayOfWeek)
				.map(({ from, to }) => ({ fromAt: instant(date, from), toAt: instant(date, to) }))
		)
		.filter(({ toAt }) => secondsBetween(at, toAt) > 0)
		.sort((a, b) => secondsBetween(b.fromAt, a.fromAt));
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
export function withinShifts(shop: Pick<Shop, 'zone' | 'shifts'>) {
	return (at: string, context: ProcessContext): string => {
		const needS = aheadS(context);
		const found = shiftsFrom(shop, at).find(({ fromAt, toAt }) => {
			const beginAt = secondsBetween(fromAt, at) > 0 ? at : fromAt;
			const isFresh = secondsBetween(fromAt, beginAt) < 3600;
			return isFresh || secondsBetween(beginAt, toAt) >= needS;
		});
		if (!found || secondsBetween(found.fromAt, at) >= 0) return at;
		return addSeconds(found.fromAt, SETTLE_S);
	};
}
