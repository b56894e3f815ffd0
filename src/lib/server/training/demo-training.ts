import type { HazardId } from '$lib/core/content/vocabulary';
import { addSeconds } from '$lib/core/process/instant';
import { ROUND_SIZE } from '$lib/core/training/round';
import { expiryOf } from '$lib/core/training/training';
import { pools } from '../content';
import type { Db } from '../database';
import { insertRound } from './training.repository';

const HOUR = 3600;
const DAY = 24 * HOUR;

interface DemoRound {
	/** Id in the demo; everybody when left out. */
	who?: string;
	kind: HazardId;
	beforeS: number;
	/** The first question of the pool was missed, so nothing was passed. */
	isMissed?: boolean;
}

/** Five years, of which two are leap years or one is, and two hours: over since this morning. */
const JUST_OVER_S = 5 * 365.25 * DAY + 26 * HOUR;

/** What the invented people answered before the shop is looked at. */
const ROUNDS: readonly DemoRound[] = [
	...['ximena', 'tendai', 'marisol', 'anh', 'yusuf', 'priya', 'leilani'].map(
		(who, i): DemoRound => ({ who, kind: 'isocyanate', beforeS: (90 + i * 140) * DAY })
	),
	{ who: 'mateusz', kind: 'isocyanate', beforeS: JUST_OVER_S },
	{ kind: 'solvent', beforeS: 120 * DAY },
	{ who: 'yusuf', kind: 'sanding-dust', beforeS: 380 * DAY },
	{ who: 'anh', kind: 'heavy-lift', beforeS: 715 * DAY },
	{ who: 'leilani', kind: 'hot-cup', beforeS: 2 * DAY, isMissed: true }
];

/**
 * Writes the invented rounds under the people of a store.
 *
 * @param personIds - ids in the store by ids in the demo
 */
export async function trainDemo(
	trx: Db,
	{ personIds, at }: { personIds: ReadonlyMap<string, string>; at: string }
): Promise<void> {
	for (const { who, kind, beforeS, isMissed = false } of ROUNDS) {
		const pool = pools.get(kind);
		if (!pool) throw new Error(`content/questions: no pool about ${kind}`);
		const passedAt = addSeconds(at, -beforeS);
		for (const [demoId, personId] of personIds) {
			if (who !== undefined && who !== demoId) continue;
			await insertRound(trx, {
				round: `demo-${kind}-${demoId}`,
				personId,
				kind,
				at: passedAt,
				textHash: pool.hash,
				answers: pool.questions.slice(0, ROUND_SIZE).map(({ id }, i) => ({
					question: id,
					isRight: !(isMissed && i === 0)
				})),
				expiresAt: isMissed ? null : expiryOf(passedAt, pool.renewMonths)
			});
		}
	}
}
