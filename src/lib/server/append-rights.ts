import { ENGLISH } from '$lib/core/language/words';
import type { ProcessEvent } from '$lib/core/process/events';
import { contextOf, type JobState } from '$lib/core/process/job';
import { TROUBLES } from '$lib/core/process/troubles';
import type { Db } from './database';
import { untrainedWords } from './training/asked-training';
import { getPerson, maySign, type Person } from './people.repository';

/** Whether this person may give up a mold that `worker` has in hand. Taking over is open to all, so an apprentice's hands are not enough. */
export function mayAbandon(person: Pick<Person, 'id' | 'role'>, worker: string | null): boolean {
	return maySign(person) || (person.role === 'mold maker' && person.id === worker);
}

/** What the process cannot judge, since it knows who worked, not who may sign; null when all is well. */
export async function unfitPerson(
	db: Db,
	event: ProcessEvent,
	state: JobState,
	w = ENGLISH
): Promise<string | null> {
	const context = contextOf(state);
	const untrained = await untrainedWords(db, event, context, w);
	if (untrained) return untrained;
	if (event.type !== 'trouble.mended' && event.type !== 'job.abandoned') return null;
	const { trouble, worker } = context;
	const person = await getPerson(db, event.by);
	if (event.type === 'trouble.mended' && trouble && TROUBLES[trouble.id].needsAnother) {
		if (person && maySign(person)) return null;
		return w.rules.troubleNeedsSupervisor;
	}
	if (event.type === 'job.abandoned' && !(person && mayAbandon(person, worker))) {
		return w.rules.abandonedBy;
	}
	return null;
}

/** The first photo named in an act that the store does not have, by its field; null when all are there. */
export async function missingPhoto(
	db: Db,
	event: ProcessEvent
): Promise<{ field: string; reason: string } | null> {
	const hashes = event.photos ?? [];
	if (hashes.length === 0) return null;
	const rows = await db.selectFrom('photo').select('hash').where('hash', 'in', hashes).execute();
	const kept = new Set(rows.map(({ hash }) => hash));
	const index = hashes.findIndex((hash) => !kept.has(hash));
	if (index === -1) return null;
	return {
		field: `photos.${index}`,
		reason: 'This photo is not in the store. Send the photo first, then the act with its hash.'
	};
}
