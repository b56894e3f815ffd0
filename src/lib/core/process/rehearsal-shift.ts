import { workingTimes, type WorkingTime } from '../plan/shift-hours';
import type { Shop } from '../plan/shop';
import type { ProcessContext } from './context';

/** A shop's calendar. */
export type Hours = Pick<Shop, 'zone' | 'shifts'>;

const DAY_MS = 86_400_000;
/** Days to look around for a shift; a shop with one shift a week finds it. */
const DAYS_AROUND = 8;
/** Days worked out at a time, since the calendar is asked for every act. */
const DAYS_KNOWN = 45;
/** From coming in to the first act. */
const SETTLE_MS = 600_000;
/** A shift this young is begun, however long the work will take. */
const FRESH_MS = 3_600_000;
/** Weighing a cup, and what part of its working time laying it takes; common practice, no source. */
const WEIGH_S = 150;
const LAY_FRACTION = 0.7;

const isoOf = (ms: number): string => new Date(ms).toISOString();

/** Hands-on and waiting time of the coats or the shell that are about to begin, in milliseconds. */
function aheadMs({ phase, plan }: ProcessContext): number {
	const isCoating = phase === 'detail' || phase === 'build';
	if (!isCoating && phase !== 'shell') return 0;
	const batches = isCoating ? plan.coats : plan.shell.rounds;
	const laidS = batches.reduce(
		(sum, { cups, mixS, workingS }) =>
			sum + cups.length * (mixS + WEIGH_S + LAY_FRACTION * workingS),
		0
	);
	const waitS = isCoating ? plan.coats.reduce((sum, { tackTestS }) => sum + tackTestS, 0) : 0;
	return 1000 * (laidS + waitS);
}

/**
 * When the crew begins an act that need not be done at once: within a shift, and a run of coats only
 * when the shift leaves time for it or has just begun.
 */
export function withinShifts(hours: Hours): (at: string, context: ProcessContext) => string {
	let known: WorkingTime[] = [];
	let untilMs = -Infinity;
	return (at, context) => {
		const atMs = Date.parse(at);
		if (atMs + DAYS_AROUND * DAY_MS > untilMs || atMs < (known[0]?.fromMs ?? Infinity)) {
			known = workingTimes(hours, atMs - DAY_MS, DAYS_KNOWN);
			untilMs = atMs + (DAYS_KNOWN - 2) * DAY_MS;
		}
		const needMs = aheadMs(context);
		for (const { fromMs, toMs } of known) {
			if (toMs <= atMs) continue;
			if (atMs < fromMs) return isoOf(fromMs + SETTLE_MS);
			if (atMs - fromMs < FRESH_MS || toMs - atMs >= needMs) return at;
		}
		return at;
	};
}

/** Shortly after the beginning of the shop's last shift that began before `at`; `at` when there is none. */
export function lastShiftStart(hours: Hours, at: string): string {
	const atMs = Date.parse(at);
	const last = workingTimes(hours, atMs - DAYS_AROUND * DAY_MS, DAYS_AROUND + 1)
		.filter(({ fromMs }) => fromMs + SETTLE_MS <= atMs)
		.at(-1);
	return last ? isoOf(last.fromMs + SETTLE_MS) : at;
}
