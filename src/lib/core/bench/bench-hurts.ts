import {
	HAZARD_IDS,
	HAZARDS,
	PPE,
	PPE_IDS,
	type HazardId,
	type PhaseId,
	type PpeId,
	type SignCode,
	type StepSlug,
	type VentilationId
} from '../content/vocabulary';
import { ENGLISH } from '../language/words';
import { ppeFor } from '../materials/hazards';
import type { Sheet } from '../materials/sheet';
import { takenHazards, usualHazards } from '../materials/usual-hazards';
import { hotMaterialIds } from '../plan/hazard-warnings';
import type { Plan } from '../plan/plan';
import type { BenchTexts } from './bench-texts';
import { materialsAt } from './materials-at';

/** Hazards that a material brings wherever it is, and that a step has only where that material is. */
const OF_MATERIALS: ReadonlySet<HazardId> = new Set([
	'isocyanate',
	'amine',
	'styrene',
	'peroxide',
	'silica-dust',
	'glass-fiber',
	'plaster-heat',
	'sensitizer',
	'hot-cup'
]);

/** What is worn against the air itself: also beside what only cures, which nobody pours. */
const AGAINST_AIR: readonly PpeId[] = ['respirator', 'dust-mask'];
/** One of these does nothing against what another is worn for, so each says what it is for. */
const TELLS_WHY: readonly PpeId[] = [...AGAINST_AIR, 'face-shield'];

interface Named<Id> {
	id: Id;
	label: string;
	sign: SignCode;
}

export interface Hurts {
	hazards: Array<Named<HazardId>>;
	/** A mask or a shield with what it is worn against, where a material asks for it: "Dust mask (silica dust)". */
	ppe: Array<Named<PpeId>>;
	ventilation: VentilationId;
}

/** A surface is wiped with a solvent, whatever the materials; all else that a step names must be in the plan. */
const mayCome = (id: HazardId, { hazards }: Plan): boolean =>
	id === 'solvent' || hazards.includes(id);

/**
 * What can hurt at a step, and what is worn against it. Where materials stand open or cure, their own sheets
 * decide: all that they bring is named, and nothing that only another material of the mold would bring. Elsewhere,
 * and for what the work itself does, the step's text decides, as far as the plan knows of it. Where in doubt it stays.
 *
 * @param phase - narrows a step that serves several materials to the one at work; null for all of them
 * @param isHotCup - more is in the cup than planned, and its heat comes to it
 */
export function hurtsOf(
	text: BenchTexts['steps'][string] | undefined,
	phase: PhaseId | null,
	plan: Plan,
	{ titles } = ENGLISH,
	isHotCup = false
): Hurts {
	const named: readonly HazardId[] = text?.hurts ?? [];
	const { open, curing } = materialsAt(text?.slug as StepSlug | undefined, phase, plan);
	const there = [...open, ...curing];
	const isShown = (id: HazardId): boolean =>
		open.some((sheet) => brings(id, sheet, plan)) ||
		(id === 'hot-cup' && isHotCup && open.length > 0) ||
		(named.includes(id) &&
			mayCome(id, plan) &&
			(there.length === 0 ||
				!OF_MATERIALS.has(id) ||
				there.some((sheet) => mayBring(id, sheet, plan))));
	const hazards = HAZARD_IDS.filter(isShown);
	const worn = new Map<PpeId, HazardId[]>((text?.ppe ?? []).map((id) => [id, []]));
	for (const id of hazards) {
		const isOpen =
			open.some((sheet) => mayBring(id, sheet, plan)) || (id === 'hot-cup' && isHotCup);
		const isCuring = curing.some((sheet) => mayBring(id, sheet, plan));
		for (const ppe of ppeFor([id])) {
			const isAsked = isOpen || (isCuring && AGAINST_AIR.includes(ppe));
			if (isAsked) worn.set(ppe, [...(worn.get(ppe) ?? []), id]);
		}
	}
	const withReason = (id: PpeId): string => {
		const against = TELLS_WHY.includes(id) ? (worn.get(id) ?? []) : [];
		const words = against.map((hazard) => titles.hazards[hazard].toLowerCase());
		return words.length > 0 ? `${titles.ppe[id]} (${words.join(', ')})` : titles.ppe[id];
	};
	return {
		hazards: hazards.map((id) => ({
			id,
			label: titles.hazards[id],
			sign: HAZARDS[id].sign
		})),
		ppe: PPE_IDS.filter((id) => worn.has(id)).map((id) => ({
			id,
			label: withReason(id),
			sign: PPE[id].sign
		})),
		ventilation: text?.ventilation ?? 'none'
	};
}

/** Its sheet says so, it is assumed of it, or the plan's heat balance comes to it. */
const brings = (id: HazardId, sheet: Sheet, plan: Plan): boolean =>
	takenHazards(sheet).includes(id) || (id === 'hot-cup' && hotMaterialIds(plan).includes(sheet.id));

/** It brings it, it is usual for its family and not ruled out, or nobody could compute that it stays cool. */
function mayBring(id: HazardId, sheet: Sheet, plan: Plan): boolean {
	const isUsual = !sheet.sdsExcludesUsual && usualHazards(sheet).includes(id);
	return brings(id, sheet, plan) || isUsual || (id === 'hot-cup' && isHeatUnknown(sheet, plan));
}

function isHeatUnknown({ id, potLife }: Sheet, { cure }: Plan): boolean {
	const known = [...(cure?.materials ?? []), ...(cure?.casting ? [cure.casting] : [])];
	return potLife !== undefined && !known.some(({ materialId }) => materialId === id);
}
