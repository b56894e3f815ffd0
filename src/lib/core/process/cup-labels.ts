import { HAZARDS } from '../content/vocabulary';
import type { Sheet } from '../materials/sheet';
import { takenHazards } from '../materials/usual-hazards';
import { hotMaterialIds } from '../plan/hazard-warnings';
import type { Plan } from '../plan/plan';
import { batchesLaid, type AsBuiltCup } from './as-built-batches';
import { addSeconds } from './instant';
import { contextOf, type JobState } from './job';

/** One cup as its label shows it: what goes in, and its times, empty till they are known. */
export interface CupLabel {
	id: string;
	/** "Build coat 2, cup 1 of 3". */
	title: string;
	materialName: string;
	/** In pouring order. */
	parts: Array<{ part: string; massG: number }>;
	hazards: string[];
	/** Hazard statements of its material's sheet. */
	hazardStatements: string[];
	/** From the end of mixing till it must be laid. */
	workingS: number;
	mixedAt: string | null;
	useByAt: string | null;
	/** Laid, and so in need of no label. */
	isLaid: boolean;
}

/** A label for each cup of the plan and of coats added at the bench, in the order in which they are mixed; with its times once they are known. */
export function cupLabels(state: JobState): CupLabel[] {
	const { plan, coats, rounds } = contextOf(state);
	const laid = batchesLaid(state);
	const batches = [
		...coats.map((coat) => ({
			...coat,
			title: `${coat.kind === 'detail' ? 'Detail' : 'Build'} coat ${coat.number}`
		})),
		...rounds
	];
	return batches.flatMap(({ id, title, materialId, materialName, cups, workingS }) => {
		const done = laid.filter((section) => section.id === id).at(-1)?.cups ?? [];
		return cups.map(({ parts }, i): CupLabel => {
			const built = builtCup(done, i + 1);
			const mixedAt = built?.mixedAt ?? null;
			return {
				id: `${id} ${i}`,
				title: `${title}, cup ${i + 1} of ${cups.length}`,
				materialName,
				// What was split anew after a short cup is weighed by the new targets.
				parts: built?.parts.map(({ part, targetG }) => ({ part, massG: targetG })) ?? parts,
				hazards: hazardsOf(plan, materialId),
				hazardStatements: sheetOf(plan, materialId)?.hazardStatements ?? [],
				workingS,
				mixedAt,
				useByAt: mixedAt === null ? null : addSeconds(mixedAt, workingS),
				isLaid: built !== undefined && built.laidAt !== null
			};
		});
	});
}

/** A cup set aside gives its number to the one that takes its place. */
function builtCup(cups: readonly AsBuiltCup[], number: number): AsBuiltCup | undefined {
	return cups.filter((cup) => cup.number === number && cup.discarded === null).at(-1);
}

function hazardsOf(plan: Plan, materialId: string): string[] {
	const sheet = sheetOf(plan, materialId);
	const labels: Record<string, { label: string } | undefined> = HAZARDS;
	// A sheet may name others than those we have a sign for.
	const hot = hotMaterialIds(plan).includes(materialId) ? ['hot-cup'] : [];
	const ids = [...(sheet ? takenHazards(sheet) : []), ...hot];
	return [...new Set(ids.map((id) => labels[id]?.label ?? id))];
}

function sheetOf({ inputs }: Plan, materialId: string): Sheet | undefined {
	return Object.values(inputs.materials).find(({ id }) => id === materialId);
}
