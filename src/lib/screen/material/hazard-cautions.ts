import { statedHazards } from '$lib/core/materials/hazards';
import type { Sheet } from '$lib/core/materials/sheet';
import { assumedHazards, hazardWords, usualHazards } from '$lib/core/materials/usual-hazards';

/** What a plan will take a sheet to do to people although it does not say so, or will not ask protection against. */
export function hazardCautions(sheet: Sheet): string[] {
	const assumed = assumedHazards(sheet);
	if (assumed.length > 0) {
		return [
			`Nothing is ticked of what a material of this family (${sheet.family}) usually does to people. Plans take it to have: ${hazardWords(assumed)}. Tick what its SDS names, or say that its SDS names none of it.`
		];
	}
	const usual = usualHazards(sheet);
	if (!sheet.sdsExcludesUsual || usual.length === 0) return [];
	return [
		`Plans will ask for no protection against what is usual for this family (${hazardWords(usual)}), because this sheet says that its SDS names none of it. You answer for that: read sections 2 and 3 of the SDS of this very product again, all its parts.`
	];
}

/** Why a sheet can't say that its SDS excludes the usual hazards: it names one of them; null when it names none. */
export function exclusionProblem(sheet: Sheet): string | null {
	if (!sheet.sdsExcludesUsual) return null;
	const named = new Set<string>([...sheet.hazards, ...statedHazards(sheet)]);
	const against = usualHazards(sheet).filter((id) => named.has(id));
	return against.length > 0
		? `The sheet itself names ${hazardWords(against)}, by a tick or a hazard statement; accepted: those, or this tick.`
		: null;
}
