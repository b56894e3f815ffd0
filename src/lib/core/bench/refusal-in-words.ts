import { withLocalDigits } from '../language/local-digits';
import { ENGLISH, type Words } from '../language/words';
import { withShopTimes } from '../process/shop-time';
import { withCustomary } from '../quantity/with-customary';
import type { UnitSystem } from '../quantity/display';
import type { BenchTexts } from './bench-texts';
import { withBriefingTitles } from './briefing-titles';

interface Reader {
	words?: Words;
	zone: string;
	system: UnitSystem;
	/** The present, so that a time of today needs no date. */
	at: string;
	briefings: BenchTexts['briefings'];
}

/** A refusal of the process as a person of this shop reads it. */
export function refusalInWords(
	reason: string,
	{ zone, system, at, briefings, words = ENGLISH }: Reader
): string {
	const said = withCustomary(withShopTimes(reason, zone, at, words.locale), system);
	return withLocalDigits(withBriefingTitles(said, briefings, words), words.locale);
}
