import {
	HAZARD_IDS,
	HAZARDS,
	PPE,
	PPE_IDS,
	STEP_SLUGS,
	type HazardId,
	type PpeId,
	type SignCode,
	type StepSlug,
	type VentilationId
} from '../content/vocabulary';
import { ENGLISH, type Words } from '../language/words';
import { hazardsOf } from '../materials/hazards';
import { hotMaterialIds } from '../plan/hazard-warnings';
import type { Plan } from '../plan/plan';
import { contextOf, type JobState } from '../process/job';
import { hurtsOf, type Hurts } from './bench-hurts';
import { containersOf, type ContainerFacts } from './container-facts';
import { usedSheets } from './materials-at';
import type { BenchTexts } from './bench-texts';
import { hazardGrounds, type HazardGrounds } from './hazard-grounds';
import type { PhaseId } from '../content/vocabulary';

interface Named<Id> {
	id: Id;
	label: string;
	sign: SignCode;
}

/** Something that hurts on this mold, and where it comes from. */
export interface TalkHazard extends Named<HazardId> {
	/**
	 * A material brings it; the work does, whatever the materials; the plan names it, of no material in particular;
	 * or it is usual at a step and no sheet rules it out.
	 */
	reason: 'material' | 'work' | 'plan' | 'usual';
	/** Materials that bring it, with what they are for and why. */
	materials: Array<{ name: string; use: string } & HazardGrounds>;
	/** Steps of this mold at which it is met. */
	steps: string[];
}

export interface TalkStep {
	title: string;
	phase: string;
	hazards: Hurts['hazards'];
	ppe: Hurts['ppe'];
	ventilation: VentilationId;
	/** What stands open at it, as on the labels. */
	containers: ContainerFacts[];
}

/** What has to be said before hands are put on one mold: only what applies to it, each with its reason. */
export interface ToolboxTalk {
	hazards: TalkHazard[];
	/** Every material of this mold with what its containers say. */
	containers: ContainerFacts[];
	ppe: Array<Named<PpeId>>;
	steps: TalkStep[];
	briefings: Array<{
		slug: string;
		title: string;
		summary: string;
		signs: readonly SignCode[];
		/** Who has read it themselves, and when. */
		read: Array<{ by: string; at: string }>;
	}>;
}

/** Steps that a plan can do without. */
const NEEDED: Partial<Record<StepSlug, (plan: Plan) => boolean>> = {
	seal: ({ release }) => release.sealerG > 0,
	wax: ({ release }) => release.waxCoats > 0,
	film: ({ release }) => release.filmPasses > 0,
	'detail-coat': ({ coats }) => coats.some(({ kind }) => kind === 'detail'),
	'brush-back': ({ coats }) => coats.some(({ brushBackS }) => brushBackS !== null),
	'shell-release': ({ shellRelease }) => shellRelease.waxCoats > 0
};

/** Hazards that no material brings: every mold has them, and `hazardsOf` names them for any sheet. */
const OF_THE_WORK: ReadonlySet<HazardId> = new Set(hazardsOf([]));

/** The talk before a mold, from its plan, the texts of the steps, and who has read which briefing. */
export function toolboxTalk(
	plan: Plan,
	state: JobState,
	texts: BenchTexts & { phases: Readonly<Record<string, PhaseId>> },
	w = ENGLISH
): ToolboxTalk {
	const containers = containersOf(plan, w.containers);
	const steps = STEP_SLUGS.filter((slug) => NEEDED[slug]?.(plan) ?? true).flatMap((slug) => {
		const text = texts.steps[slug];
		const phase = texts.phases[slug];
		if (!text || !phase) return [];
		const hurts = hurtsOf(text, null, plan, w);
		return [
			{
				title: text.title,
				phase: w.titles.phases[phase],
				...hurts,
				containers: containers.filter(({ steps: open }) => open.includes(slug))
			}
		];
	});
	const found = new Set<string>([
		...plan.hazards,
		...steps.flatMap(({ hazards }) => hazards.map(({ id }) => id))
	]);
	const worn = new Set<string>([
		...plan.ppe,
		...steps.flatMap(({ ppe }) => ppe.map(({ id }) => id))
	]);
	return {
		hazards: HAZARD_IDS.filter((id) => found.has(id)).map((id) => {
			const materials = materialsWith(id, plan, w);
			const met = steps.filter(({ hazards }) => hazards.some((hazard) => hazard.id === id));
			return {
				id,
				label: w.titles.hazards[id],
				sign: HAZARDS[id].sign,
				reason: reasonOf(id, plan, materials.length > 0),
				materials,
				steps: met.map(({ title }) => title)
			};
		}),
		containers,
		ppe: PPE_IDS.filter((id) => worn.has(id)).map((id) => ({
			id,
			label: w.titles.ppe[id],
			sign: PPE[id].sign
		})),
		steps: steps.filter(
			({ hazards, ppe, containers: open }) => hazards.length + ppe.length + open.length > 0
		),
		briefings: plan.briefings.flatMap((slug) => {
			const text = texts.briefings[slug];
			if (!text) return [];
			const { title, summary, signs } = text;
			return [{ slug, title, summary, signs, read: readersOf(slug, state) }];
		})
	};
}

function reasonOf(id: HazardId, plan: Plan, hasMaterial: boolean): TalkHazard['reason'] {
	if (OF_THE_WORK.has(id)) return 'work';
	if (hasMaterial) return 'material';
	return plan.hazards.includes(id) ? 'plan' : 'usual';
}

function materialsWith(id: HazardId, plan: Plan, w: Words): TalkHazard['materials'] {
	if (OF_THE_WORK.has(id) || !plan.hazards.includes(id)) return [];
	const hot = hotMaterialIds(plan);
	return usedSheets(plan).flatMap(({ use, sheet }) => {
		const why = hazardGrounds(id, sheet, hot.includes(sheet.id));
		return why ? [{ name: sheet.name, use: w.containers.uses[use], ...why }] : [];
	});
}

function readersOf(slug: string, state: JobState): Array<{ by: string; at: string }> {
	const isStill = contextOf(state).briefingsRead;
	return state.effective.flatMap(({ event }) =>
		event.type === 'briefing.read' &&
		event.briefing === slug &&
		(isStill[event.by] ?? []).includes(slug)
			? [{ by: event.by, at: event.at }]
			: []
	);
}
