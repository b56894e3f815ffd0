import type { Sheet } from './sheet';

/** What was said of the SDS is about a sheet that takes the material to do the same to people. */
const isSameHarm = (a: Sheet, b: Sheet): boolean =>
	(['family', 'kind', 'hazards', 'hazardStatements'] as const).every(
		(name) => JSON.stringify(a[name]) === JSON.stringify(b[name])
	);

/**
 * A sheet as it is kept: with who said that its SDS names none of the usual hazards, and when, as long as it says
 * so. Saved again by somebody else, it stays the word of whoever gave it, unless what it is about has changed.
 *
 * @param before - the sheet as it was kept till then; null for a new one
 * @param reader - who saves it now: the name as people read it, and the instant
 */
export function withSdsReader(
	{ sdsReadBy: _claimed, ...sheet }: Sheet,
	before: Sheet | null,
	reader: { name: string; at: string }
): Sheet {
	if (!sheet.sdsExcludesUsual) return sheet;
	const stands =
		before?.sdsExcludesUsual && isSameHarm(before, sheet) ? before.sdsReadBy : undefined;
	return { ...sheet, sdsReadBy: stands ?? reader };
}

/** "Ines Marsh, 2026-12-01" for a sentence; null where nobody's name was kept. */
export function sdsReader({ sdsReadBy }: Pick<Sheet, 'sdsReadBy'>): string | null {
	return sdsReadBy ? `${sdsReadBy.name}, ${sdsReadBy.at.slice(0, 10)}` : null;
}
