import { HAZARDS } from '$lib/core/content/vocabulary';
import { isInDate, type TrainingRecord } from '$lib/core/training/training';

/** A person's training in one line: how many kinds are in date, and which of them ran out. */
export function trainingWords(records: readonly TrainingRecord[], at: string): string {
	if (records.length === 0) return 'no training on record';
	const over = records.filter(({ expiresAt }) => !isInDate(expiresAt, at));
	const inDate = records.length - over.length;
	const kinds = inDate === 1 ? '1 training in date' : `${inDate} trainings in date`;
	if (over.length === 0) return kinds;
	return `${kinds}; ran out: ${over.map(({ kind }) => HAZARDS[kind].label.toLowerCase()).join(', ')}`;
}
