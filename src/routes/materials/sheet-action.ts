import type { Sheet } from '$lib/core/materials/sheet';
import type { UnitSystem } from '$lib/core/quantity/display';
import { formTree } from '$lib/screen/form/form-tree';
import type { FieldErrors } from '$lib/screen/form/read-entries';
import { fitToKind } from '$lib/screen/material/kind-fields';
import { readSheet } from '$lib/screen/material/read-sheet';
import {
	emptySheet,
	sheetDraftSchema,
	withRows,
	type SheetDraft
} from '$lib/screen/material/sheet-draft';

export type PostedSheet =
	{ sheet: Sheet } | { sheet: null; draft: SheetDraft; errors: FieldErrors | undefined };

/** What a posted form says: a sheet to keep, or the draft to show again with what is wrong in it. */
export function postedSheet(
	form: FormData,
	system: UnitSystem,
	kept: { id: string; retired: boolean }
): PostedSheet {
	const parsed = sheetDraftSchema.safeParse(formTree(form));
	if (!parsed.success) {
		const errors = { name: 'The form could not be read; it is shown blank.' };
		return { sheet: null, draft: emptySheet(), errors };
	}
	const change = String(form.get('change') ?? '');
	const draft = fitToKind(parsed.data);
	if (change) return { sheet: null, draft: withRows(draft, change), errors: undefined };
	const { sheet, errors } = readSheet(draft, system, kept);
	return sheet ? { sheet } : { sheet: null, draft, errors };
}

/** An id for a new sheet, from its name; `tail` keeps two of one name apart. */
export function sheetId(name: string, tail: string): string {
	const slug = name
		.normalize('NFKD')
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, '-')
		.slice(0, 44)
		.replace(/^-|-$/g, '');
	return `${slug || 'material'}-${tail}`;
}
