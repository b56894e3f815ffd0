import { HAZARDS, HAZARD_IDS, PHASE_IDS, type SignCode } from '$lib/core/content/vocabulary';
import { PHASE_TITLES } from '$lib/core/process/titles';
import { COLLECTION_TITLES, COLLECTIONS, type Reading, type View } from './reading';

export interface ReadingGroup {
	id: string;
	title: string;
	/** ISO 7010 sign of a hazard. */
	sign: SignCode | null;
	readings: Reading[];
}

/** The reading room's texts by phase, by hazard or by kind; what fits no group comes last. */
export function groupReadings(readings: readonly Reading[], view: View): ReadingGroup[] {
	const groups: ReadingGroup[] =
		view === 'phase'
			? byPhase(readings)
			: view === 'hazard'
				? HAZARD_IDS.map((id) => ({
						id,
						title: HAZARDS[id].label,
						sign: HAZARDS[id].sign,
						readings: readings.filter(({ hazards }) => hazards.includes(id))
					}))
				: COLLECTIONS.map((id) => ({
						id,
						title: COLLECTION_TITLES[id].many,
						sign: null,
						readings: readings.filter(({ collection }) => collection === id)
					}));
	const placed = new Set(groups.flatMap((group) => group.readings));
	const rest = readings.filter((reading) => !placed.has(reading));
	return [...groups, { id: 'other', title: 'For all of it', sign: null, readings: rest }].filter(
		(group) => group.readings.length > 0
	);
}

/** What belongs to half of the phases or more stands once, on top. */
function byPhase(readings: readonly Reading[]): ReadingGroup[] {
	const isWide = ({ phases }: Reading) => phases.length >= PHASE_IDS.length / 2;
	return [
		{ id: 'any', title: 'In any phase', sign: null, readings: readings.filter(isWide) },
		...PHASE_IDS.map((id) => ({
			id,
			title: PHASE_TITLES[id],
			sign: null,
			readings: readings.filter((reading) => reading.phases.includes(id) && !isWide(reading))
		}))
	];
}
