import type { EventOf, EventType } from '$lib/core/process/events';
import type { JobState } from '$lib/core/process/job';

/** What the end of a mold's making says about it. */
export interface JobFinish {
	/** What stands on glove and shell, so that they stay together. */
	mark: string | null;
	inspections: EventOf<'mold.inspected'>[];
	shells: EventOf<'shell.finished'>[];
	pours: Array<EventOf<'part.poured'> & { released: EventOf<'part.released'> | null }>;
	/** How to use, store and repair it, once it was handed over. */
	handedOver: EventOf<'mold.handedOver'> | null;
}

/** The mark, and the keys of a plain parting line. */
function markOf(marked: EventOf<'mold.marked'> | undefined): string | null {
	if (!marked) return null;
	return marked.keys ? `${marked.mark}, with keys: ${marked.keys}` : marked.mark;
}

/** Inspection, first pour and handover from the entries that count. */
export function finishOfJob(state: JobState): JobFinish {
	const all = <T extends EventType>(type: T): EventOf<T>[] =>
		state.effective.flatMap(({ event }) => (event.type === type ? [event as EventOf<T>] : []));
	const released = all('part.released');
	const pours = all('part.poured');
	return {
		mark: markOf(all('mold.marked').at(-1)),
		inspections: all('mold.inspected'),
		shells: all('shell.finished'),
		pours: pours.map((pour, i) => {
			const next = pours[i + 1]?.at;
			const own = released.find(({ at }) => at >= pour.at && (!next || at < next));
			return { ...pour, released: own ?? null };
		}),
		handedOver: all('mold.handedOver').at(-1) ?? null
	};
}
