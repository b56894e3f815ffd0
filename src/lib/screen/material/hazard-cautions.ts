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
