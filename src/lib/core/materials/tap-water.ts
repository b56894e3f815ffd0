import { weightRatio } from './mix-ratio';
import type { Sheet } from './sheet';

/** Index of the part that comes from the tap, as in a plaster of powder and water; -1 when all parts are bought. */
export function waterPartOf({ parts }: Pick<Sheet, 'parts'>): number {
	return parts.findIndex(({ part }) => part.toLowerCase() === 'water');
}

/** Share of the mix, by mass, that is bought: all of it but water from the tap; above 0, at most 1. */
export function boughtFraction(sheet: Sheet): number {
	const ratio = weightRatio(sheet);
	const water = ratio?.[waterPartOf(sheet)];
	if (!ratio || water === undefined || ratio.length < 2) return 1;
	return 1 - water / ratio.reduce((sum, share) => sum + share, 0);
}
