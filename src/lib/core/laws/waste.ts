import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const mixWasteLaw: Law = {
	id: 'mix-waste',
	name: 'Material that is mixed and thrown away',
	formula: 'm_waste = n_cup · r_cup + n_brush · r_brush + m_trim',
	source: 'Mass balance; residues per cup and brush are the shop’s own, common practice, no source',
	validity: 'Residues weighed on a few real cups and brushes.'
};

export const partWasteLaw: Law = {
	id: 'part-waste',
	name: 'Waste per part over the life of a mold',
	formula: 'm = (m_build + m_worn mold) / n_parts + m_pour',
	source: 'Mass balance; common practice, no source',
	validity: 'The worn mold counts as waste in full; nothing is assumed recycled.'
};

/** What to do with what is left, shown with every amount of waste. */
export const WASTE_CAUTION =
	'Waste that can still react is not trash: spread it thin so it cannot heat up, let it cure in extraction, and dispose of it as the SDS and local codes say.';

export interface MixWaste {
	wasteG: number;
	/** Share of the mixed amount that is thrown away. */
	wasteFraction: number;
	caution: string;
}

/**
 * Waste of one material while a mold is built.
 *
 * @throws RangeError for impossible input, and when the waste would be more than was mixed
 */
export function mixWaste({
	mixedG,
	cupsCount,
	cupResidueG,
	brushesCount,
	brushResidueG,
	trimG = 0
}: {
	mixedG: number;
	cupsCount: number;
	cupResidueG: number;
	brushesCount: number;
	brushResidueG: number;
	trimG?: number;
}): MixWaste {
	assertWithin(mixedG, 0.1, 1e8, 'mixedG');
	assertWithin(cupsCount, 0, 10_000, 'cupsCount');
	assertWithin(cupResidueG, 0, 10_000, 'cupResidueG');
	assertWithin(brushesCount, 0, 10_000, 'brushesCount');
	assertWithin(brushResidueG, 0, 10_000, 'brushResidueG');
	assertWithin(trimG, 0, 1e8, 'trimG');
	const wasteG = cupsCount * cupResidueG + brushesCount * brushResidueG + trimG;
	assertWithin(wasteG, 0, mixedG, 'wasteG');
	return { wasteG, wasteFraction: wasteG / mixedG, caution: WASTE_CAUTION };
}

/**
 * Waste behind one good part, grams: its share of the build and of the worn mold, and what each
 * pour leaves behind.
 *
 * @throws RangeError for impossible input
 */
export function partWasteG({
	buildWasteG,
	wornMoldG,
	partsPerMold,
	pourWasteG
}: {
	buildWasteG: number;
	wornMoldG: number;
	partsPerMold: number;
	pourWasteG: number;
}): number {
	assertWithin(buildWasteG, 0, 1e8, 'buildWasteG');
	assertWithin(wornMoldG, 0, 1e8, 'wornMoldG');
	assertWithin(partsPerMold, 1, 1e6, 'partsPerMold');
	assertWithin(pourWasteG, 0, 1e8, 'pourWasteG');
	return (buildWasteG + wornMoldG) / partsPerMold + pourWasteG;
}
