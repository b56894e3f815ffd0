import type { ProcessContext } from '../context';
import type { EventOf, ProcessEvent } from '../events';

/** What an event changes in what the machine remembers. */
export type Change = Partial<ProcessContext>;

export function worked(c: ProcessContext, e: ProcessEvent): Change {
	return {
		lastAt: e.at,
		worker: e.by,
		workers: c.workers.includes(e.by) ? c.workers : [...c.workers, e.by]
	};
}

export function briefingRead(c: ProcessContext, e: EventOf<'briefing.read'>): Change {
	const read = c.briefingsRead[e.by] ?? [];
	return {
		lastAt: e.at,
		briefingsRead: { ...c.briefingsRead, [e.by]: [...new Set([...read, e.briefing])] }
	};
}
