const CLOCK = /^(\d{1,2})(?:[:.h]?([0-5]\d))?\s*(am|pm|a|p)?$/;

/**
 * A time of day as people type it, as the shop's clock shows it: "7:30", "0730", "7", "4 pm" and "4:00 p.m." are
 * "07:30", "07:30", "07:00", "16:00" and "16:00".
 *
 * @returns null when it cannot be read
 */
export function readClock(text: string): string | null {
	const plain = text
		.trim()
		.toLowerCase()
		.replace(/([ap])\.\s?m\.?/, '$1m');
	const [, hours, minutes = '00', half] = CLOCK.exec(plain) ?? [];
	if (hours === undefined) return null;
	const typed = Number(hours);
	if (half && (typed < 1 || typed > 12)) return null;
	const hour = half ? (typed % 12) + (half.startsWith('p') ? 12 : 0) : typed;
	return hour > 23 ? null : `${String(hour).padStart(2, '0')}:${minutes}`;
}

/** What is wrong with the ends of a span on this day, or the two times as the shop's clock shows them. */
export function readSpan(
	{ from, to }: { from: string; to: string },
	day: string
): { from: string; to: string } | { error: string; at: 'from' | 'to' } {
	if (from.trim() === '' || to.trim() === '') {
		const at = from.trim() === '' ? 'from' : 'to';
		return { error: `${day} needs both times, or neither.`, at };
	}
	for (const [at, typed] of [
		['from', from],
		['to', to]
	] as const) {
		if (readClock(typed) === null) {
			const shown = typed.trim().slice(0, 20);
			return {
				error: `${day}: “${shown}” is no time of day; accepted: such as 07:30 or 16:00.`,
				at
			};
		}
	}
	const [begins, ends] = [readClock(from) ?? '', readClock(to) ?? ''];
	return begins < ends
		? { from: begins, to: ends }
		: { error: `${day} ends at ${ends}; accepted: a time after ${begins}.`, at: 'to' };
}
