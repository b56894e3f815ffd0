import { HAZARDS, type HazardId } from '../content/vocabulary';
import type { MaterialFamily, Sheet } from './sheet';
import { statedHazards } from './stated-hazards';

/**
 * What materials of a family usually do to people; the one that makes the family dangerous first.
 * Common practice, no source; the SDS comes before it.
 */
const USUAL: Readonly<Record<MaterialFamily, readonly HazardId[]>> = {
	urethane: ['isocyanate', 'sensitizer'],
	'tin silicone': ['solvent', 'sensitizer'],
	'platinum silicone': [],
	latex: ['sensitizer'],
	epoxy: ['amine', 'sensitizer'],
	polyester: ['styrene', 'peroxide', 'solvent'],
	acrylic: ['solvent', 'sensitizer', 'peroxide'],
	plaster: ['plaster-heat', 'silica-dust'],
	concrete: ['silica-dust', 'sensitizer'],
	'casting wax': ['hot-cup'],
	'paste wax': ['solvent'],
	'polyvinyl alcohol': ['solvent'],
	shellac: ['solvent'],
	'glass fiber': ['glass-fiber'],
	'plant fiber': ['sanding-dust']
};

type Harm = Pick<Sheet, 'family' | 'kind' | 'hazards' | 'hazardStatements' | 'sdsExcludesUsual'>;

/** Hazards usual for materials of this family in this use, whatever a sheet says; the defining one first. */
export function usualHazards({
	family,
	kind
}: Pick<Sheet, 'family' | 'kind'>): readonly HazardId[] {
	// An acrylic sealer is a dispersion in water; as a casting or a shell, acrylic is a monomer with its peroxide.
	return family === 'acrylic' && kind === 'sealer' ? [] : USUAL[family];
}

/**
 * Usual hazards that a sheet does not name and that a plan takes it to have: a blank box is not
 * harmless. None once the sheet names the one that defines its family, or says that its SDS excludes them.
 */
export function assumedHazards(sheet: Harm): HazardId[] {
	const usual = usualHazards(sheet);
	// Catalysts of tin silicones differ: one of the two is word enough.
	const telling = sheet.family === 'tin silicone' ? usual : usual.slice(0, 1);
	const isSaid = usual.length === 0 || telling.some((id) => sheet.hazards.includes(id));
	return isSaid || sheet.sdsExcludesUsual ? [] : usual.filter((id) => !sheet.hazards.includes(id));
}

/** Hazards that a sheet names, those that are assumed of it, and those that its hazard statements mean; in this order. */
export function takenHazards(sheet: Harm): string[] {
	return [...new Set([...sheet.hazards, ...assumedHazards(sheet), ...statedHazards(sheet)])];
}

/** Why a sheet can't say that its SDS excludes the usual hazards: it names one of them; null when it names none. */
export function exclusionProblem(sheet: Harm): string | null {
	if (!sheet.sdsExcludesUsual) return null;
	const named = takenHazards(sheet);
	const against = usualHazards(sheet).filter((id) => named.includes(id));
	return against.length > 0
		? `The sheet itself names ${hazardWords(against)}, by a tick or a hazard statement; accepted: those, or this tick.`
		: null;
}

/** Names of hazards as a sentence takes them: "isocyanate; allergy, for life". */
export const hazardWords = (ids: readonly HazardId[]): string =>
	ids.map((id) => HAZARDS[id].label.toLowerCase()).join('; ');
