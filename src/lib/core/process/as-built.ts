import type { Lang } from '../language/locale';
import { ENTRY_LABELS } from './entry-labels';
import { entryWords } from './entry-words';
import { batchesLaid, type AsBuiltSection } from './as-built-batches';
import { troublesOf, type AsBuiltTrouble } from './as-built-troubles';
import { waitsKept, type AsBuiltWait } from './as-built-waits';
import type { Deviation } from './context';
import type { EventOf, EventType, HoldId, LoggedEvent } from './events';
import { HOLDS } from './holds';
import { contextOf, type JobState } from './job';
import { PHASE_TITLES } from './titles';

interface Done {
	seq: number;
	at: string;
	by: string;
}

export interface AsBuiltThickness extends Done {
	leastMm: number;
	thinnestMm: number;
	points: EventOf<'thickness.measured'>['points'];
}

export interface AsBuiltRoom extends Done {
	temperatureC: number;
	humidityPct: number;
	surfaceC: number | null;
	extractionOn: boolean;
	plannedTemperatureC: number;
	plannedHumidityPct: number;
}

/** What was really made and by whom, beside what was planned: for hold points and the record. */
export interface AsBuilt {
	/** Coats and shell rounds in the order they were begun; one laid twice is there twice. */
	sections: AsBuiltSection[];
	waits: AsBuiltWait[];
	thickness: AsBuiltThickness[];
	rooms: AsBuiltRoom[];
	shores: Array<Done & { what: string; shoreA: number; plannedShoreA: number | null }>;
	deviations: Deviation[];
	/** Every signature given, also one that a later send-back made void. */
	signatures: Array<Done & { hold: HoldId; title: string; note: string; standing: boolean }>;
	sendBacks: Array<Done & { hold: HoldId; title: string; to: string; reason: string }>;
	/** Who confirmed that SDSs are read, PPE is out, the spill kit known and training in date. */
	confirmed: Done[];
	troubles: AsBuiltTrouble[];
	/** Entries taken back: they stand in the log, and do not count. */
	undone: Array<
		Done & { type: EventType; label: string; said: string; reason: string; undoneAt: string }
	>;
	/** `lang`: the language it was read in; `openS`: for how long the text was open, null in entries of before. */
	briefings: Array<{
		person: string;
		slug: string;
		hash: string;
		lang: Lang;
		at: string;
		openS: number | null;
	}>;
	photos: Array<Done & { hash: string; label: string }>;
	/** Person ids of all who made an entry that counts, in order of their first. */
	people: string[];
}

/**
 * The job as built against its plan. Pure: entries that were undone are listed as such and counted
 * nowhere else.
 *
 * @param log - the whole log that `state` was folded from, undone entries and undoings included
 */
export function asBuilt(state: JobState, log: readonly LoggedEvent[]): AsBuilt {
	const c = contextOf(state);
	const { plan } = c;
	const done = state.effective;
	const of = <T extends EventType>(type: T) =>
		done.flatMap(({ seq, event }) =>
			event.type === type ? [{ seq, ...(event as EventOf<T>) }] : []
		);
	const who = ({ seq, at, by }: Done): Done => ({ seq, at, by });

	return {
		sections: batchesLaid(state),
		waits: waitsKept(state),
		thickness: of('thickness.measured').map((e) => ({
			...who(e),
			leastMm: plan.glove.leastMm,
			thinnestMm: Math.min(...e.points.map((point) => point.thicknessMm)),
			points: e.points
		})),
		rooms: of('room.read').map((e) => ({
			...who(e),
			temperatureC: e.temperatureC,
			humidityPct: e.humidityPct,
			surfaceC: e.surfaceC ?? null,
			extractionOn: e.extractionOn,
			plannedTemperatureC: plan.roomTemperatureC,
			plannedHumidityPct: plan.roomHumidityPct
		})),
		shores: [
			...of('glove.tested').map((e) => ({ ...e, what: 'Glove, cure test' })),
			...of('mold.inspected').map((e) => ({ ...e, what: 'Glove, inspection' }))
		].flatMap((e) =>
			e.shoreA === undefined
				? []
				: [{ ...who(e), what: e.what, shoreA: e.shoreA, plannedShoreA: plan.glove.shoreA }]
		),
		deviations: c.deviations,
		signatures: of('hold.signed').map((e) => ({
			...who(e),
			hold: e.hold,
			title: HOLDS[e.hold].title,
			note: e.note ?? '',
			standing: c.signatures[e.hold]?.at === e.at
		})),
		sendBacks: of('hold.sentBack').map((e) => ({
			...who(e),
			hold: e.hold,
			title: HOLDS[e.hold].title,
			to: PHASE_TITLES[e.to],
			reason: e.reason
		})),
		confirmed: of('brief.finished').map(who),
		troubles: troublesOf(done, plan.processVersion),
		undone: undoneOf(state, log),
		briefings: of('briefing.read').map(
			({ by, briefing, contentHash, lang = 'en', at, openS = null }) => ({
				person: by,
				slug: briefing,
				hash: contentHash,
				lang,
				at,
				openS
			})
		),
		photos: done.flatMap(({ seq, event }) =>
			(event.photos ?? []).map((hash) => ({
				seq,
				at: event.at,
				by: event.by,
				hash,
				label: ENTRY_LABELS[event.type]
			}))
		),
		people: [
			...new Set(
				done.flatMap(({ event }) =>
					'mixedBy' in event && event.mixedBy ? [event.by, event.mixedBy] : [event.by]
				)
			)
		]
	};
}

function undoneOf(state: JobState, log: readonly LoggedEvent[]): AsBuilt['undone'] {
	const undoings = new Map(
		log.flatMap(({ event }) =>
			event.type === 'act.undone' || event.type === 'act.takenBack' ? [[event.undoes, event]] : []
		)
	);
	return log.flatMap(({ id, seq, event }) => {
		const reason = state.undone[id];
		if (reason === undefined) return [];
		const { type, at, by } = event;
		const undoneAt = undoings.get(id)?.at ?? at;
		return [
			{ seq, at, by, type, label: ENTRY_LABELS[type], said: entryWords(event), reason, undoneAt }
		];
	});
}
