import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G } from '../quantity/limits';

export const coatLossesLaw: Law = {
	id: 'coat-losses',
	name: 'What stays in cups and brushes',
	formula: 'm_mixed = m_laid + n_cups · m_cup + n_brushes · m_brush',
	source: 'common practice, no source (12 g a cup, 15 g a brush for a thixotropic rubber)',
	validity: 'up to 10,000 cups; weigh an emptied cup and a used brush to know your own'
};

/** Left on the wall of a scraped cup; common practice, no source. */
export const CUP_LOSS_G = 12;
/** Left in a brush of 50 mm; common practice, no source. */
export const BRUSH_LOSS_G = 15;

/**
 * Mass to mix so that `laidG` gets onto the pattern, in grams.
 *
 * @throws RangeError for a mass or a count out of range
 */
export function mixedMassG(given: {
	laidG: number;
	cups: number;
	brushes: number;
	cupLossG?: number;
	brushLossG?: number;
}): number {
	const { laidG, cups, brushes, cupLossG = CUP_LOSS_G, brushLossG = BRUSH_LOSS_G } = given;
	assertWithin(laidG, 0, MAX_MASS_G, 'laidG');
	assertWithin(cups, 0, 10_000, 'cups');
	assertWithin(brushes, 0, 1000, 'brushes');
	assertWithin(cupLossG, 0, 1000, 'cupLossG');
	assertWithin(brushLossG, 0, 1000, 'brushLossG');
	return laidG + cups * cupLossG + brushes * brushLossG;
}
