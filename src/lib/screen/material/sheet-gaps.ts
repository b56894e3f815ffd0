import { weightRatio } from '$lib/core/materials/mix-ratio';
import type { Sheet } from '$lib/core/materials/sheet';
import type { FieldErrors } from '../form/read-entries';

/** What is laid in coats from a cup: without a pot life no cup can be sized. */
export const needsPotLife = (kind: string): boolean => kind === 'glove' || kind === 'shell';

/** What a sheet must say before any mold can be planned with it, by field. */
export function sheetGaps(sheet: Sheet): FieldErrors {
	const gaps: FieldErrors = {};
	if (!weightRatio(sheet)) {
		gaps['ratioByWeight.0'] =
			`Nothing is entered that tells how ${sheet.parts.length} parts are mixed; accepted: a ratio by weight, or one by volume with every part’s density. A material of one part has one row.`;
	}
	if (needsPotLife(sheet.kind) && !sheet.potLife) {
		gaps['potLife.timeS'] =
			'Nothing is entered; without time, mass and temperature no cup can be sized. They stand on the data sheet.';
	}
	return gaps;
}
