import type { Shop } from '$lib/core/plan/shop';
import { ENGLISH } from '$lib/core/language/words';
import type { ProcessContext } from '$lib/core/process/context';
import type { ProcessEvent } from '$lib/core/process/events';
import {
	handlerOf,
	handlesIsocyanate,
	outOfDateWords,
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
	const shop = await getShop(db);
	if (!shop?.asksTraining) return null;
	const handler = handlerOf(event);
	const held = { kind: 'isocyanate', personId: handler, at: event.at } as const;
	const words = outOfDateWords(await heldUntil(db, held), event.at, w);
	return words && handler !== event.by ? w.rules.ofMixer(words) : words;
}
