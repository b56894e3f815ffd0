import { HAZARDS } from '../content/vocabulary';
import { takenHazards } from '../materials/usual-hazards';
import { hotMaterialIds } from '../plan/hazard-warnings';
import type { Coat, Plan, ShellRound } from '../plan/plan';
import { batchesLaid, type AsBuiltCup } from './as-built-batches';
import { batchAtWork, cupInPreparation, isSince, type ProcessContext } from './context';
import { additionTarget, cupAdditions, type CupAddition } from './cup-additions';
import { sheetOf } from './cup-mass';
import { contextOf, type JobState } from './job';
import { cupToWeigh } from './next-cup';

/** One cup as its label shows it: what goes in, and its times, empty till they are known. */
export interface CupLabel {
	id: string;
	/** "Build coat 2, cup 1 of 3". */
	title: string;
	materialName: string;
	/** In pouring order. */
	parts: Array<{ part: string; massG: number }>;
	/** On top of its parts. */
	additions: CupAddition[];
	hazards: string[];
	/** Hazard statements of its material's sheet. */
	hazardStatements: string[];
	/** From the end of mixing, or from when its parts met, till it must be laid. */
	usableS: number;
	/** Its time runs from when its parts met, however late it is mixed. */
	isFromMeeting: boolean;
	mixedAt: string | null;
	useByAt: string | null;
	/** Laid, and so in need of no label. */
	isLaid: boolean;
}

/**
 * A label for each cup of the plan and of coats added at the bench, in the order in which they are mixed; with its
 * times once they are known. A cup that was set aside has none: the one in its place has a number of its own.
 */
export function cupLabels(state: JobState): CupLabel[] {
	const c = contextOf(state);
	const { plan, coats, rounds } = c;
	const laid = batchesLaid(state);
	const batches = [
		...coats.map((coat) => ({
			...coat,
			title: `${coat.kind === 'detail' ? 'Detail' : 'Build'} coat ${coat.number}`
		})),
		...rounds
	];
	return batches.flatMap((batch) => {
		const { id, title, materialId, materialName, workingS, mixS, fractions } = batch;
		const isFromMeeting = fractions.length > 1 && isSince(c, 5);
		const built = builtCups(laid.findLast((section) => section.id === id)?.cups ?? []);
		const ahead = cupsAhead(c, batch, built);
		const of = Math.max(0, ...[...built, ...ahead].map(({ number }) => number));
		return [...built, ...ahead].map((cup): CupLabel => {
			const { number, parts, mixedAt = null, closesAt = null, laidAt = null } = cup;
			return {
				id: `${id} ${number - 1}`,
				title: `${title}, cup ${number} of ${of}`,
				materialName,
				parts: parts.map(({ part, targetG }) => ({ part, massG: targetG })),
				additions: cupAdditions(
					plan,
					additionTarget(batch),
					parts.reduce((sum, { targetG }) => sum + targetG, 0)
				),
				hazards: hazardsOf(plan, materialId),
				hazardStatements: sheetOf(plan, materialId)?.hazardStatements ?? [],
				usableS: (cup.workingS ?? workingS) + (isFromMeeting ? mixS : 0),
				isFromMeeting,
				mixedAt,
				useByAt: closesAt,
				isLaid: laidAt !== null
			};
		});
	});
}

type LabeledCup = Pick<AsBuiltCup, 'number'> & {
	parts: Array<{ part: string; targetG: number }>;
} & Partial<Pick<AsBuiltCup, 'mixedAt' | 'closesAt' | 'laidAt' | 'workingS'>>;

/** What was weighed and not set aside; before version 6 a cup set aside gave its number to the one in its place. */
function builtCups(cups: readonly AsBuiltCup[]): LabeledCup[] {
	return cups.filter(({ discarded }) => discarded === null);
}

/** The cups of a batch that are not weighed yet, by their numbers. */
function cupsAhead(
	c: ProcessContext,
	{ id, cups }: Coat | ShellRound,
	built: readonly LabeledCup[]
): LabeledCup[] {
	const isAtWork = batchAtWork(c)?.id === id;
	if (!isAtWork && built.length > 0) return [];
	const next = isAtWork ? cupToWeigh(c) : null;
	if (isAtWork && !next) return [];
	const first = next ? next.number + (cupInPreparation(c) ? 1 : 0) : (c.cupsBegun[id] ?? 0) + 1;
	const last = next ? next.of : first + cups.length - 1;
	return Array.from({ length: last - first + 1 }, (_, i) => ({
		number: first + i,
		// What was split anew after a short cup is weighed by the new targets.
		parts: (next?.cup ?? cups[i] ?? cups[0])?.parts.map(asTarget) ?? []
	}));
}

const asTarget = ({ part, massG }: { part: string; massG: number }) => ({ part, targetG: massG });

function hazardsOf(plan: Plan, materialId: string): string[] {
	const sheet = sheetOf(plan, materialId);
	const labels: Record<string, { label: string } | undefined> = HAZARDS;
	// A sheet may name others than those we have a sign for.
	const hot = hotMaterialIds(plan).includes(materialId) ? ['hot-cup'] : [];
	const ids = [...(sheet ? takenHazards(sheet) : []), ...hot];
	return [...new Set(ids.map((id) => labels[id]?.label ?? id))];
}
