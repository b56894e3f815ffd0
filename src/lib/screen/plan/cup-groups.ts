import type { Cup } from '$lib/core/plan/plan';

export interface CupGroup {
	count: number;
	/** Place of the first of them in the list of cups, for the trace of its numbers. */
	first: number;
	cup: Cup;
}

/** Cups of one size and one weighing, one after the other, as one line. */
export function cupGroups(cups: readonly Cup[]): CupGroup[] {
	const groups: CupGroup[] = [];
	cups.forEach((cup, index) => {
		const last = groups.at(-1);
		if (last && sameCup(last.cup, cup)) last.count += 1;
		else groups.push({ count: 1, first: index, cup });
	});
	return groups;
}

function sameCup(a: Cup, b: Cup): boolean {
	return (
		a.cupVolumeMl === b.cupVolumeMl &&
		a.parts.length === b.parts.length &&
		a.parts.every(({ part, massG }, i) => part === b.parts[i]?.part && massG === b.parts[i]?.massG)
	);
}
