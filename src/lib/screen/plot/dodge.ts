/**
 * Places for labels that would like to stand at `wanted`, none closer than `gap` to the next, in the
 * same order from top to bottom, all between `low` and `high` as far as they fit.
 */
export function dodged(
	wanted: readonly number[],
	gap: number,
	low: number,
	high: number
): number[] {
	const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
	const places = wanted.map((each) => Math.min(Math.max(each, low), high));
	let above = -Infinity;
	for (const i of order) {
		places[i] = Math.max(places[i] ?? low, above + gap);
		above = places[i];
	}
	// What was pushed below the lower edge pushes back.
	let below = high + gap;
	for (const i of order.reverse()) {
		places[i] = Math.min(places[i] ?? high, below - gap);
		below = places[i];
	}
	return places;
}
