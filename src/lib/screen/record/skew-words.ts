import { clockSkewS } from '$lib/core/process/clock-skew';
import { durationText } from '$lib/core/quantity/duration-text';

/** That the device an entry was sent from had its clock wrong, and by how much; null when it had not. */
export function skewWords({
	sentAt,
	recordedAt
}: {
	sentAt: string | null;
	recordedAt: string;
}): string | null {
	const skewS = clockSkewS({ sentAt: sentAt ?? undefined, recordedAt });
	if (skewS === null) return null;
	return `device’s clock ${durationText(Math.abs(skewS))} ${skewS > 0 ? 'ahead' : 'behind'}`;
}
