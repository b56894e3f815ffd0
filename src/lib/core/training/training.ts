import type { HazardId } from '../content/vocabulary';

/** A round that was passed: every question of it right. */
export interface TrainingRecord {
	kind: HazardId;
	passedAt: string;
	expiresAt: string;
}

/**
 * The instant until which a round passed at `passedAt` counts: the same day of the month, or the last
 * one of a month that has no such day.
 *
 * @param months - whole months, from 1
 */
export function expiryOf(passedAt: string, months: number): string {
	const passed = new Date(passedAt);
	const day = passed.getUTCDate();
	const then = new Date(passed);
	then.setUTCDate(1);
	then.setUTCMonth(then.getUTCMonth() + months);
	const daysInMonth = new Date(
		Date.UTC(then.getUTCFullYear(), then.getUTCMonth() + 1, 0)
	).getUTCDate();
	then.setUTCDate(Math.min(day, daysInMonth));
	return then.toISOString();
}

/** Whether a training that holds until `expiresAt` is in date at `at`; without one it is not. */
export function isInDate(expiresAt: string | undefined, at: string): boolean {
	return expiresAt !== undefined && Date.parse(at) < Date.parse(expiresAt);
}
