import type { TroubleId } from '../content/vocabulary';
import { ENGLISH } from '../language/words';
import { isSince, type ProcessContext } from './context';

/** Troubles with people and rooms: they leave no place on the mold. */
const OFF_THE_MOLD: readonly TroubleId[] = ['spill', 'skin-contact', 'breathing', 'waste-smoke'];
/** What is shown of a note that stands for a place nobody named. */
const SHORT_NOTE = 80;

export interface PlaceToLookAt {
	/** Its number among the troubles met, as a name in the event. */
	key: string;
	text: string;
}

/** Where the inspection looks because this mold had trouble there. Asked for from version 3 on. */
export function placesToLookAt(c: ProcessContext, w = ENGLISH): PlaceToLookAt[] {
	if (!isSince(c, 3)) return [];
	return c.troublesMet.flatMap(({ id, place, note }, index) => {
		if (OFF_THE_MOLD.includes(id)) return [];
		const where = place || w.rules.placeNotNoted(note.slice(0, SHORT_NOTE));
		return [{ key: `${index + 1}`, text: `${w.titles.troubles[id]}: ${where}` }];
	});
}
