import { isSince, type ProcessContext } from '../context';
import type { EventOf } from '../events';
import { secondsBetween } from '../instant';
import { BENCH } from './obey';

export type Finding = 'wet' | 'open' | 'closed';
export type Tested = 'coat' | 'coat below';

/**
 * What a fingertip test means: "open" when the next coat may go on. The last coat has no next one,
 * so a hard surface is as good as a tacky one. Past its window a print does not help: the sheet's
 * clock says that the bond is gone. Abraded and accepted, the surface bonds by its roughness: it is
 * hard by nature, and open until the next coat is on it.
 */
export function finding(
	context: ProcessContext,
	{ result, at }: EventOf<'tack.tested'>,
	of: Tested
): Finding {
	if (result === 'wet') return 'wet';
	if (of === 'coat below' && context.abraded && isSince(context, 2)) return 'open';
	if (of === 'coat' && context.coatIndex + 1 >= context.coats.length) return 'open';
	const closesAt = context.windowClosesAt;
	const isOpen = context.abraded || closesAt === null || secondsBetween(at, closesAt) >= 0;
	return result === 'almost tack-free' && isOpen ? 'open' : 'closed';
}

export const found = (what: Finding, of: Tested) => ({
	type: 'obeysAndFound' as const,
	params: { rules: of === 'coat' ? BENCH : [...BENCH, 'coatBelow' as const], found: what, of }
});
