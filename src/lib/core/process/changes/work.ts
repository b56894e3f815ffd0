import { isSince, type ProcessContext } from '../context';
import { inEnglish } from '../deviation-words';
import type { EventOf, ProcessEvent } from '../events';
import { roomFaults } from '../room-check';
import { deviation } from './deviations';

/** What an event changes in what the machine remembers. */
export type Change = Partial<ProcessContext>;

export function worked(c: ProcessContext, e: ProcessEvent): Change {
	return {
		lastAt: e.at,
		worker: e.by,
		workers: c.workers.includes(e.by) ? c.workers : [...c.workers, e.by]
	};
}

/** A reading stands beside the plan; from version 6 on what it says against it is noted, once as long as it is open. */
export function roomRead(c: ProcessContext, e: EventOf<'room.read'>): Change {
	const faults = isSince(c, 6) ? roomFaults(c, e) : [];
	const deviations = faults.reduce((all, said) => {
		const isNoted = all.some(({ what, decided }) => decided === null && what === inEnglish(said));
		return isNoted ? all : deviation({ ...c, deviations: all }, e, said);
	}, c.deviations);
	return { lastAt: e.at, room: e, deviations };
}

export function briefingRead(c: ProcessContext, e: EventOf<'briefing.read'>): Change {
	const read = c.briefingsRead[e.by] ?? [];
	return {
		lastAt: e.at,
		briefingsRead: { ...c.briefingsRead, [e.by]: [...new Set([...read, e.briefing])] }
	};
}
