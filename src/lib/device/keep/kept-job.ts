import type { StoredEvent } from '$lib/core/log/chain';
import type { Plan } from '$lib/core/plan/plan';
import type { ProcessEvent } from '$lib/core/process/events';
import type { BenchTexts } from '$lib/core/bench/bench-texts';
import type { Expiries } from '$lib/core/training/asked-training';
import type { UnitSystem } from '$lib/core/quantity/display';

/** What a bench needs to go on with a mold while the server is out of reach. */
export interface KeptJob {
	jobId: string;
	plan: Plan;
	planHash: string;
	/** As far as the server had it when this device last heard. */
	log: StoredEvent<ProcessEvent>[];
	names: Record<string, string>;
	zone: string;
	system: UnitSystem;
	texts: BenchTexts;
	/** Training on isocyanates of whoever it was read for, when the shop asks for it in date. */
	training?: Expiries | null;
	/** Version of the app these were kept by: another one may judge, and word, otherwise. */
	version: string;
	/** When all of it was last read anew; the log alone is read on at every turn. */
	wholeAt?: string;
	/** When the server last answered this person here. */
	heardAt: string;
}

/** As long as a session lasts at most; past it nobody knows any more who stands at this device. */
export const LONGEST_AWAY_S = 12 * 3600;

/** The mold's name, as it was opened with. */
export function titleIn(log: KeptJob['log']): string {
	const [first] = log;
	return first?.event.type === 'job.opened' ? first.event.title : 'A mold';
}
