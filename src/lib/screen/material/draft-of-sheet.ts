import type { Sheet } from '$lib/core/materials/sheet';
import type { UnitSystem } from '$lib/core/quantity/display';
import { fieldTexts } from '../form/field-texts';
import { sheetDraftSchema, type SheetDraft } from './sheet-draft';
import { SHEET_NUMBERS } from './sheet-numbers';

/** A kept data sheet as it stands in the form, in the shop's units. */
export function draftOfSheet(sheet: Sheet, system: UnitSystem): SheetDraft {
	const blanks = sheet.parts.map(() => '');
	const shown = fieldTexts(sheet, SHEET_NUMBERS, system);
	return sheetDraftSchema.parse({
		...Object(shown),
		ratioByWeight: Object(shown).ratioByWeight ?? blanks,
		ratioByVolume: Object(shown).ratioByVolume ?? blanks,
		hazardStatements: sheet.hazardStatements.join(', '),
		hasNoVolatiles: sheet.volatiles?.length === 0 ? 'on' : '',
		sdsExcludesUsual: sheet.sdsExcludesUsual ? 'on' : '',
		needsRelease: sheet.needsRelease ? 'on' : ''
	});
}
