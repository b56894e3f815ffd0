import type { HazardId } from '../content/vocabulary';
import { statedHazards } from '../materials/stated-hazards';
import type { Sheet } from '../materials/sheet';
import { assumedHazards } from '../materials/usual-hazards';

/** Its data sheet names it; the plan's heat balance comes to it; or it is usual for the family and the sheet is silent. */
export type Ground = 'named' | 'computed' | 'assumed';

export interface HazardGrounds {
	grounds: Ground[];
	/** Hazard statements of the sheet that mean this hazard, and no others. */
	statements: string[];
}

/**
 * Why a material brings a hazard to a mold; null when it does not.
 *
 * @param isHot - the plan computes that it gets too hot to be left alone
 */
export function hazardGrounds(id: HazardId, sheet: Sheet, isHot: boolean): HazardGrounds | null {
	const { family, hazards, hazardStatements } = sheet;
	const grounds: Ground[] = [];
	if (hazards.includes(id)) grounds.push('named');
	if (id === 'hot-cup' && isHot) grounds.push('computed');
	if (assumedHazards(sheet).includes(id)) grounds.push('assumed');
	const statements = hazardStatements.filter((statement) =>
		statedHazards({ family, hazardStatements: [statement] }).includes(id)
	);
	return grounds.length + statements.length > 0 ? { grounds, statements } : null;
}
