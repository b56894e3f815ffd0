import { coatAtWork, isSince, type ProcessContext } from './context';
import { addSeconds, secondsBetween } from './instant';

/** Up to version 5 a coat that passed sooner than this part of its soonest time was noted, and believed; common practice, no source. */
const EARLY_FRACTION = 0.5;

export interface EarlyTest {
	title: string;
	tookMin: number;
	expectedMin: number;
	/** From when on a test is believed: after how many minutes, and the instant. */
	soonestMin: number;
	fromAt: string;
}

/**
 * A test at `at` of the coat laid last, when it comes sooner than its data sheet lets expect at the soonest; else
 * null. Up to version 5 only when it comes far sooner.
 */
export function earlyTest(c: ProcessContext, at: string): EarlyTest | null {
	const coat = c.laidG > 0 ? coatAtWork(c) : (c.coats[c.coatIndex - 1] ?? null);
	if (coat === null || c.finishedAt === null) return null;
	const soonestS = coat.tackSoonestS ?? coat.tackTestS;
	const tookS = secondsBetween(c.finishedAt, at);
	if (tookS >= (isSince(c, 6) ? soonestS : EARLY_FRACTION * soonestS)) return null;
	return {
		title: coat.title,
		// Up to version 5 rounded: what old logs say of it stands.
		tookMin: isSince(c, 6) ? Math.ceil(tookS / 60) : Math.round(tookS / 60),
		expectedMin: Math.round(coat.tackTestS / 60),
		soonestMin: Math.ceil(soonestS / 60),
		fromAt: addSeconds(c.finishedAt, soonestS)
	};
}

/** Whether a test that came out well at `at` is not believed, and made again. From version 6 on. */
export function isTooSoon(c: ProcessContext, at: string): boolean {
	return isSince(c, 6) && earlyTest(c, at) !== null;
}
