import { isInDate } from '$lib/core/training/training';
import type { Status } from '../design/StatusMark.svelte';

const DAY_MS = 86_400_000;
/** How long before its end a training is called due soon. */
const SOON_DAYS = 30;

/** Where one training of a person stands, as shape and words; dates as ISO 8601 has them. */
export function expiryWords(
	expiresAt: string | null,
	at: string
): { status: Status; text: string } {
	if (expiresAt === null) return { status: 'planned', text: 'Not passed yet' };
	const day = expiresAt.slice(0, 10);
	if (!isInDate(expiresAt, at)) return { status: 'late', text: `Ran out ${day}` };
	const leftDays = (Date.parse(expiresAt) - Date.parse(at)) / DAY_MS;
	return leftDays < SOON_DAYS
		? { status: 'waiting', text: `Until ${day}, soon over` }
		: { status: 'done', text: `In date until ${day}` };
}

/** "every 5 years", "every 18 months", "once a year". */
export function renewalWords(months: number): string {
	if (months === 12) return 'once a year';
	return months % 12 === 0 ? `every ${months / 12} years` : `every ${months} months`;
}
