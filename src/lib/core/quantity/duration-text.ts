const UNITS = [
	{ name: 'd', lengthS: 86_400 },
	{ name: 'h', lengthS: 3600 },
	{ name: 'min', lengthS: 60 },
	{ name: 's', lengthS: 1 }
] as const;

/** Below this part of a step a number is short of it only by rounding error; numerical choice. */
const ALMOST = 1e-9;

/** The finest step worth showing for a duration of this length. */
export function durationStepS(durationS: number): number {
	return durationS < 600 ? 1 : 60;
}

/**
 * A duration as a person says it: "45 s", "9 min", "12 h 30 min", "3 d 4 h 10 min".
 * Rounds once, and always down, so that nothing seems to last longer than it does: to a second below ten
 * minutes, to a minute beyond. No coarser, since a wait must not seem an hour shorter either.
 *
 * @param durationS - seconds; a negative one gets a minus sign
 * @returns "—" when the number is not finite
 */
export function durationText(durationS: number): string {
	if (!Number.isFinite(durationS)) return '—';

	const absoluteS = Math.abs(durationS);
	const step = durationStepS(absoluteS);
	let leftS = Math.floor(absoluteS / step + ALMOST) * step;
	if (leftS === 0) return '0 s';

	// Days only from two days on: "36 h" is easier to act on than "1 d 12 h".
	const units = leftS < 2 * 86_400 ? UNITS.slice(1) : UNITS;
	const parts: string[] = [];
	for (const { name, lengthS } of units) {
		const count = Math.floor(leftS / lengthS);
		leftS -= count * lengthS;
		if (count > 0) parts.push(`${count} ${name}`);
	}
	return (durationS < 0 ? '−' : '') + parts.join(' ');
}
