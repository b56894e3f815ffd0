import {
	HAZARD_IDS,
	HAZARDS,
	PPE,
	type HazardId,
	type PhaseId,
	type PpeId,
	type VentilationId
} from '../content/vocabulary';
import { ENGLISH } from '../language/words';
import type { MaterialFamily, Sheet } from '../materials/sheet';
import { takenHazards } from '../materials/usual-hazards';
import { hotMaterialIds } from '../plan/hazard-warnings';
import type { Plan } from '../plan/plan';
import type { BenchTexts } from './bench-texts';

/** What cannot come out of a material of these families; anything else a step names stays. */
const NOT_OF: Partial<Record<HazardId, readonly MaterialFamily[]>> = {
	isocyanate: ['tin silicone', 'platinum silicone', 'latex', 'epoxy', 'polyester', 'plaster'],
	amine: ['tin silicone', 'platinum silicone', 'latex', 'polyester', 'plaster'],
	styrene: ['tin silicone', 'platinum silicone', 'latex', 'urethane', 'epoxy', 'plaster'],
	peroxide: ['tin silicone', 'platinum silicone', 'latex', 'urethane', 'epoxy', 'plaster'],
	'plaster-heat': ['tin silicone', 'platinum silicone', 'latex', 'urethane', 'epoxy', 'polyester']
};
const CHEMICAL: readonly HazardId[] = [
	'isocyanate',
	'amine',
	'styrene',
	'peroxide',
	'solvent',
	'sensitizer'
];
/** Steps at which the material itself is handled wet: there its own sheet's hazards are shown too. */
const WET = ['weigh-and-mix', 'detail-coat', 'build-coat', 'brush-back', 'tack-test', 'shell'];

function materialsIn(phase: PhaseId, { inputs: { materials: m } }: Plan): Sheet[] | null {
	const given = (...sheets: Array<Sheet | undefined>) => sheets.filter((sheet) => !!sheet);
	if (phase === 'detail') return given(m.detail ?? m.build);
	if (phase === 'build' || phase === 'gloveCure') return given(m.build);
	if (phase === 'shell' || phase === 'shellCure') return given(m.shell, m.reinforcement);
	return phase === 'pour' ? given(m.casting) : null;
}

/** A surface is wiped with a solvent, whatever the materials; all else that a step names must be in the plan. */
const mayCome = (id: HazardId, { hazards }: Plan): boolean =>
	id === 'solvent' || hazards.includes(id);

/**
 * What can hurt at a step: what its text names, as far as the plan, its briefings and its protection know of it and
 * without what the materials at work there cannot give off by their family, and with what their own sheets name or their heat comes to. Where in doubt it stays.
 */
export function hurtsOf(
	text: BenchTexts['steps'][string] | undefined,
	phase: PhaseId,
	plan: Plan,
	{ titles } = ENGLISH,
	/** More is in the cup than planned, and its heat comes to it. */
	isHotCup = false
) {
	const used = materialsIn(phase, plan);
	const hot = hotMaterialIds(plan);
	const named: readonly HazardId[] = text?.hurts ?? [];
	const own = WET.includes(text?.slug ?? '') ? (used ?? []).flatMap(takenHazards) : [];
	const isHot =
		WET.includes(text?.slug ?? '') && (isHotCup || (used ?? []).some(({ id }) => hot.includes(id)));
	const isOut = (id: HazardId) =>
		!mayCome(id, plan) ||
		(used !== null &&
			!used.some((sheet) => takenHazards(sheet).includes(id)) &&
			used.every(({ family }) => NOT_OF[id]?.includes(family) ?? false));
	const hazards = HAZARD_IDS.filter(
		(id) =>
			(named.includes(id) && !isOut(id)) ||
			(CHEMICAL.includes(id) && own.includes(id)) ||
			(id === 'hot-cup' && isHot)
	);
	const ventilation: VentilationId = text?.ventilation ?? 'none';
	return {
		hazards: hazards.map((id) => ({
			id,
			label: titles.hazards[id],
			sign: HAZARDS[id].sign
		})),
		ppe: (text?.ppe ?? []).map((id: PpeId) => ({
			id,
			label: titles.ppe[id],
			sign: PPE[id].sign
		})),
		ventilation
	};
}
