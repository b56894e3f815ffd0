import type { Shop } from '$lib/core/plan/shop';
import { ENGLISH, type Words } from '$lib/core/language/words';
import type { ProcessContext } from '$lib/core/process/context';
import type { ProcessEvent } from '$lib/core/process/events';
import {
	handlesIsocyanate,
	mixesBeside,
	outOfDateState,
	type Expiries
} from '$lib/core/training/asked-training';
import type { Db } from '../database';
import { getShop } from '../shop.repository';
import { heldUntil } from './training.repository';

/**
 * Until when this person's training on isocyanates holds; null where the shop does not ask for it. Of others it
 * is not told: what somebody has learned is seen by themselves and by those who sign.
 */
export async function askedTraining(
	db: Db,
	shop: Shop,
	viewer: { personId: string; at: string }
): Promise<Expiries | null> {
	if (!shop.asksTraining) return null;
	const expiresAt = await heldUntil(db, { kind: 'isocyanate', ...viewer });
	return expiresAt === undefined ? {} : { [viewer.personId]: expiresAt };
}

/**
 * Why an act is refused that handles diisocyanates by somebody whose training was not in date when it was
 * done; null when it was, or when the shop does not ask.
 */
export async function untrainedWords(
	db: Db,
	event: ProcessEvent,
	context: ProcessContext,
	w = ENGLISH
): Promise<string | null> {
	if (!handlesIsocyanate(event.type, context)) return null;
	const state = await outOfDate(db, { personId: event.by, at: event.at }, w);
	return state && w.rules.trainingDo(state);
}

/**
 * What is wrong with the training of whoever mixes a cup of diisocyanates beside who lays; null when it is in date, when
 * the event is another, or when the shop does not ask.
 */
export async function mixerState(
	db: Db,
	event: ProcessEvent,
	context: ProcessContext,
	w = ENGLISH
): Promise<string | null> {
	if (event.type !== 'cup.mixed' || !mixesBeside(event.type, context)) return null;
	return outOfDate(db, { personId: event.mixedBy ?? event.by, at: event.at }, w);
}

/** The act with what the store knows of the training of whoever mixed; what the sender says of that does not count. */
export async function withTraining(
	db: Db,
	event: ProcessEvent,
	context: ProcessContext
): Promise<ProcessEvent> {
	if (event.type !== 'cup.mixed') return event;
	const mixed = { ...event };
	delete mixed.notInDate;
	return (await mixerState(db, event, context)) === null ? mixed : { ...mixed, notInDate: true };
}

async function outOfDate(
	db: Db,
	{ personId, at }: { personId: string; at: string },
	w: Words
): Promise<string | null> {
	const shop = await getShop(db);
	if (!shop?.asksTraining) return null;
	return outOfDateState(await heldUntil(db, { kind: 'isocyanate', personId, at }), at, w);
}
