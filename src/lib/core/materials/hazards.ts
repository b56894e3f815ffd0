import type { BriefingSlug, HazardId, PpeId } from '../content/vocabulary';
import type { Sheet } from './sheet';
import { takenHazards } from './usual-hazards';

/** What each hazard asks for at the least; the SDS of the material comes before this table. */
const ANSWERS: Readonly<Record<HazardId, { ppe: readonly PpeId[]; briefing: BriefingSlug }>> = {
	isocyanate: {
		ppe: ['gloves', 'eye-protection', 'sleeves', 'apron', 'respirator'],
		briefing: 'isocyanates'
	},
	amine: {
		ppe: ['gloves', 'eye-protection', 'sleeves', 'apron'],
		briefing: 'amines-and-catalysts'
	},
	sensitizer: { ppe: ['gloves', 'sleeves'], briefing: 'amines-and-catalysts' },
	styrene: { ppe: ['gloves', 'eye-protection', 'respirator'], briefing: 'styrene-and-peroxides' },
	peroxide: { ppe: ['gloves', 'eye-protection', 'face-shield'], briefing: 'styrene-and-peroxides' },
	solvent: { ppe: ['gloves', 'eye-protection'], briefing: 'solvents-and-vapor' },
	'silica-dust': { ppe: ['dust-mask', 'eye-protection'], briefing: 'dust-and-fiber' },
	'glass-fiber': {
		ppe: ['gloves', 'sleeves', 'dust-mask', 'eye-protection'],
		briefing: 'dust-and-fiber'
	},
	'sanding-dust': { ppe: ['dust-mask', 'eye-protection'], briefing: 'dust-and-fiber' },
	knife: { ppe: ['eye-protection'], briefing: 'cuts-and-lifting' },
	'heavy-lift': { ppe: ['safety-shoes'], briefing: 'cuts-and-lifting' },
	slip: { ppe: ['safety-shoes'], briefing: 'first-aid-and-spill' },
	'hot-cup': { ppe: ['gloves', 'eye-protection'], briefing: 'exotherm-and-waste' },
	'plaster-heat': { ppe: ['gloves', 'eye-protection', 'dust-mask'], briefing: 'exotherm-and-waste' }
};

/** Present in every mold, whatever the materials: blades, wedges, sanding a frame clean, wet floors. */
const ALWAYS: readonly HazardId[] = ['knife', 'heavy-lift', 'sanding-dust', 'slip'];

/** A sheet may name others than those of the vocabulary. */
export const isHazard = (id: string): id is HazardId => id in ANSWERS;

/**
 * Hazard ids of a mold built of these materials, in the order of the vocabulary.
 *
 * @param computed - those that the plan itself finds, for example a cup that gets hot
 */
export function hazardsOf(
	sheets: readonly Sheet[],
	computed: readonly HazardId[] = []
): HazardId[] {
	const found = new Set<HazardId>([...ALWAYS, ...computed]);
	for (const sheet of sheets) {
		for (const id of takenHazards(sheet)) if (isHazard(id)) found.add(id);
	}
	return (Object.keys(ANSWERS) as HazardId[]).filter((id) => found.has(id));
}

/** Least protective equipment for these hazards. */
export function ppeFor(hazards: readonly HazardId[]): PpeId[] {
	return [...new Set(hazards.flatMap((id) => ANSWERS[id].ppe))].sort();
}

/** Briefings to read before the chemistry is touched; first aid is always among them. */
export function briefingsFor(hazards: readonly HazardId[]): BriefingSlug[] {
	// The briefing on isocyanates tells of sensitization itself.
	const told = hazards.includes('isocyanate')
		? hazards.filter((id) => id !== 'sensitizer')
		: hazards;
	const slugs = told.map((id) => ANSWERS[id].briefing);
	return [...new Set<BriefingSlug>([...slugs, 'first-aid-and-spill'])];
}
