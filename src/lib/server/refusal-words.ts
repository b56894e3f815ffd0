import { withShopTimes } from '$lib/core/process/shop-time';
import { now } from './clock';

/** A refusal as a whole sentence with the shop's times: a rule says it without a stop, a right with one. */
export function refusalWords(reason: string, zone: string): string {
	const words = withShopTimes(reason, zone, now());
	return /[.!?]$/.test(words) ? words : `${words}.`;
}
