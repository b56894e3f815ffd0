import { secondsBetween } from './instant';

/** Nearer than this, two clocks are one for the work; the same as an act may run ahead of the server. Common practice, no source. */
export const LARGEST_SKEW_S = 30;

/**
 * By how much a device's clock was off as it sent an entry, in seconds: positive when it ran ahead of the
 * server's. Null within `LARGEST_SKEW_S`, and for entries that no device of ours sent.
 *
 * @param sentAt - what the device's clock said as it sent the entry
 * @param recordedAt - what the server's clock said as it took it
 */
export function clockSkewS({
	sentAt,
	recordedAt
}: {
	sentAt?: string | undefined;
	recordedAt: string;
}): number | null {
	if (sentAt === undefined) return null;
	const skewS = secondsBetween(recordedAt, sentAt);
	return Math.abs(skewS) > LARGEST_SKEW_S ? skewS : null;
}
