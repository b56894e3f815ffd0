import { isSince, type ProcessContext } from '../context';
import { isTooSoon } from '../early-test';
import type { EventOf } from '../events';
import { secondsBetween } from '../instant';
import { BENCH } from './obey';

export type Finding = 'wet' | 'early' | 'open' | 'closed';
export type Tested = 'coat' | 'coat below';

/**
 * What a fingertip test means: "open" when the next coat may go on. The last coat has no next one,
 * so a hard surface is as good as a tacky one. Past its window a print does not help: the sheet's
 * clock says that the bond is gone. Abraded and accepted, the surface bonds by its roughness: it is
 * hard by nature, and open until the next coat is on it. A print sooner than the data sheet lets expect at the
 * soonest is of a cold corner or a careless finger: it says nothing yet.
 */
export function finding(
	context: ProcessContext,
	{ result, at }: Pick<EventOf<'tack.tested'>, 'result' | 'at'>,
	of: Tested
): Finding {
	if (result === 'wet') return 'wet';
	if (of === 'coat below' && context.abraded && isSince(context, 2)) return 'open';
	const isLast = of === 'coat' && context.coatIndex + 1 >= context.coats.length;
	if ((isLast || result === 'almost tack-free') && isTooSoon(context, at)) return 'early';
	if (isLast) return 'open';
	const closesAt = context.windowClosesAt;
	const isOpen = context.abraded || closesAt === null || secondsBetween(at, closesAt) >= 0;
	return result === 'almost tack-free' && isOpen ? 'open' : 'closed';
}

export const found = (what: Finding, of: Tested) => ({
	type: 'obeysAndFound' as const,
	params: { rules: of === 'coat' ? BENCH : [...BENCH, 'coatBelow' as const], found: what, of }
});
