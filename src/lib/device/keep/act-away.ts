import { isEventType } from '$lib/core/bench/form-event';
import { notDone, type NotDone } from '$lib/core/bench/not-done';
import { readAct } from '$lib/core/bench/read-act';
import { refusalInWords } from '$lib/core/bench/refusal-in-words';
import { ENGLISH, type Words } from '$lib/core/language/words';
import type { ProcessEvent } from '$lib/core/process/events';
import { secondsBetween } from '$lib/core/process/instant';
import { advance, contextOf } from '$lib/core/process/job';
import { TROUBLES } from '$lib/core/process/troubles';
import {
	expiryIn,
	handlesIsocyanate,
	mixesBeside,
	outOfDateWords
} from '$lib/core/training/asked-training';
import type { FoldedJob } from './fold-waiting';
import { LONGEST_AWAY_S, titleIn, type KeptJob } from './kept-job';
import type { WaitingAct } from './waiting-act';

export interface Doer {
	id: string;
	name: string;
}

/** A mold as this device knows it, with what waits on it. */
export interface KnownJob {
	kept: KeptJob;
	folded: FoldedJob;
	/** The language of whoever stands here; English when left out. */
	words?: Words;
}

/** An act as a form of the bench says it, judged by what this device knows: to be kept, or what is wrong with it. */
export function actAway(
	form: FormData,
	{ kept, folded, words = ENGLISH }: KnownJob,
	{ doer, at }: { doer: Doer; at: string }
): { act: WaitingAct } | { notDone: NotDone } {
	const type = String(form.get('type') ?? '');
	if (secondsBetween(kept.heardAt, at) > LONGEST_AWAY_S) {
		const refusal = words.errors.tooLongAway;
		return { notDone: notDone({ type, label: type, refusal }, form) };
	}
	const { state, headSeq } = folded;
	// Of others' training a device is told nothing: the server looks, and notes it.
	const isUnknown =
		kept.training !== null && isEventType(type) && mixesBeside(type, contextOf(state));
	const alsoAsked = isUnknown ? words.questions.mixerUnknown : null;
	const read = readAct(form, { state, by: doer.id, at, texts: kept.texts, words, alsoAsked });
	if (!read.ok) return { notDone: read.notDone };
	// Never before the last act, however the clocks of two devices differ.
	const doneAt = Date.parse(at) < Date.parse(state.lastAt) ? state.lastAt : at;
	// Read by the schema's own names; the machine and the server judge it.
	const event = { ...read.event, at: doneAt, by: doer.id } as ProcessEvent;
	const { label } = read;
	const id = String(form.get('id') ?? '');
	const refusal =
		asksForServer(event, folded, words) ??
		untrained(event, { kept, folded, words }) ??
		objectionTo({ id, event }, { kept, folded, words });
	if (refusal !== null) return { notDone: notDone({ type, label, refusal }, form) };
	return {
		act: {
			id,
			jobId: kept.jobId,
			title: titleIn(kept.log),
			seq: headSeq + 1,
			event,
			byName: doer.name,
			label,
			refusal: null
		}
	};
}

/** Why the machine does not take an act on the mold as this device knows it, in words; null when it does. */
export function objectionTo(
	{ id, event }: Pick<WaitingAct, 'id' | 'event'>,
	{ kept: { zone, system, texts }, folded, words = ENGLISH }: KnownJob
): string | null {
	const step = advance(folded.state, { id, seq: folded.headSeq + 1, event }, words);
	if (step.ok) return null;
	const { briefings } = texts;
	return refusalInWords(step.reason, { zone, system, at: event.at, briefings, words });
}

/** What only the server can judge, since it knows who may sign. */
function asksForServer(
	event: ProcessEvent,
	{ state }: FoldedJob,
	{ errors }: Words
): string | null {
	const { trouble } = contextOf(state);
	return event.type === 'trouble.mended' && trouble !== null && TROUBLES[trouble.id].needsAnother
		? errors.needsServer
		: null;
}

/** What keeps somebody from handling diisocyanates whose training this device does not know to be in date. */
function untrained(
	event: ProcessEvent,
	{ kept, folded, words }: KnownJob & { words: Words }
): string | null {
	if (!kept.training || !handlesIsocyanate(event.type, contextOf(folded.state))) return null;
	return outOfDateWords(expiryIn(kept.training, event.by), event.at, words);
}
