import type { Sheet } from '../materials/sheet';
import { warn, type Draft } from './trace';

type TimeField = 'tackFree' | 'recoatCloses' | 'demold';

const SAID: Readonly<Record<TimeField, string>> = {
	tackFree: 'when it is almost tack-free',
	recoatCloses: 'when its recoat window shuts',
	demold: 'its demold time'
};

/** Says which times a data sheet leaves out, so that common practice stands in for them. */
export function warnOfSheetGaps(draft: Draft, usesDetail: boolean): void {
	const { detail, build, shell } = draft.inputs.materials;
	const coats: [Sheet, TimeField[]][] = [
		...(usesDetail && detail
			? [[detail, ['tackFree', 'recoatCloses']] satisfies [Sheet, TimeField[]]]
			: []),
		[build, ['tackFree', 'recoatCloses', 'demold']],
		[shell, ['recoatCloses', 'demold']]
	];
	for (const [sheet, fields] of coats) {
		const missing = fields.filter((field) => !sheet[field]).map((field) => SAID[field]);
		if (missing.length === 0) continue;
		const text = `The data sheet of ${sheet.name} does not say ${missing.join(' nor ')}; common practice, no source, stands in for it. Test, and ask the maker.`;
		warn(draft, 'warn', 'sheet-gap', 'materials', text);
	}
}
