import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const shelfLifeLaw: Law = {
	id: 'shelf-life',
	name: 'Shelf life left on the day of use',
	formula: 'left = (made + shelf life) − use',
	source: 'arithmetic; 30 days of notice: common practice, no source',
	validity: 'unopened, stored as the data sheet says; an opened part A of a urethane has far less'
};

/** Time to order anew; common practice, no source. */
const NOTICE_S = 30 * 86_400;

export interface ShelfLife {
	/** Seconds left at the time of use; negative when it is over. */
	leftS: number;
	state: 'good' | 'ending' | 'over';
}

/**
 * @param given - instants in RFC 3339 with Z; `shelfLifeS` up to 20 years, in seconds
 * @throws RangeError for a shelf life out of range or an instant that cannot be read
 */
export function shelfLife(given: {
	madeAt: string;
	shelfLifeS: number;
	usedAt: string;
}): ShelfLife {
	assertWithin(given.shelfLifeS, 0, 20 * 366 * 86_400, 'shelfLifeS');
	const madeMs = Date.parse(given.madeAt);
	const usedMs = Date.parse(given.usedAt);
	for (const [name, ms] of [
		['madeAt', madeMs],
		['usedAt', usedMs]
	] as const) {
		if (Number.isNaN(ms)) throw new RangeError(`${name} is "${given[name]}"; accepted: RFC 3339`);
	}

	const leftS = given.shelfLifeS - (usedMs - madeMs) / 1000;
	if (leftS < 0) return { leftS, state: 'over' };
	return { leftS, state: leftS < NOTICE_S ? 'ending' : 'good' };
}
