import { ratioDeviationFraction } from '../laws/weighing-check';
import type { Coat, ShellRound } from '../plan/plan';

type Batch = Pick<Coat | ShellRound, 'fractions' | 'toleranceFraction'>;

/** Parts of the batch that were not weighed, or weighed as nothing. */
export function missingParts(batch: Batch, massesG: Record<string, number>): string[] {
	return batch.fractions.filter(({ part }) => !((massesG[part] ?? 0) > 0)).map(({ part }) => part);
}

/** Names in a weighing that the batch does not have. */
export function strangeParts(batch: Batch, massesG: Record<string, number>): string[] {
	return Object.keys(massesG).filter((part) => !batch.fractions.some((f) => f.part === part));
}

/**
 * Relative deviation of a weighing from the batch's ratio; 0 is exact.
 *
 * @returns null when a part is missing, so that there is no ratio to judge
 */
export function cupDeviationFraction(batch: Batch, massesG: Record<string, number>): number | null {
	if (missingParts(batch, massesG).length > 0) return null;
	if (batch.fractions.length === 1) return 0;
	return ratioDeviationFraction({
		actualG: batch.fractions.map(({ part }) => massesG[part] ?? 0),
		parts: batch.fractions.map(({ fraction }) => fraction)
	});
}

/** Whether the weighing is within the material's tolerance. */
export function isOnRatio(batch: Batch, massesG: Record<string, number>): boolean {
	const deviation = cupDeviationFraction(batch, massesG);
	// A scale's readout is decimal: a deviation that equals the tolerance must not fail by a rounding bit.
	return deviation !== null && deviation <= batch.toleranceFraction + 1e-9;
}

/** A part that is too much or too little for what was poured before it. */
export interface OffPart {
	part: string;
	/** Of its own mass: above 0 too much of it, below 0 too little. */
	fraction: number;
}

/**
 * Which part is off, and which way: of two the one poured last, against the first; of more the one that is
 * over-poured most.
 *
 * @param order - part names in pouring order
 * @returns null when a part is missing or there is but one
 */
export function offPart(
	batch: Batch,
	massesG: Record<string, number>,
	order: readonly string[]
): OffPart | null {
	const fraction = cupDeviationFraction(batch, massesG);
	const shares = order.map((part) => ({
		part,
		share: (massesG[part] ?? 0) / (batch.fractions.find((f) => f.part === part)?.fraction ?? NaN)
	}));
	const [first, last] = [shares[0], shares.at(-1)];
	if (fraction === null || !first || !last || shares.length < 2) return null;
	if (shares.length === 2) return { part: last.part, fraction: last.share / first.share - 1 };
	const most = shares.reduce((a, b) => (b.share > a.share ? b : a));
	return { part: most.part, fraction };
}
