import type { TroubleId } from '../content/vocabulary';
import type { EventOf, LoggedEvent, TroubleAnswer } from './events';
import { TROUBLE_TITLES } from './titles';
import { answersAsked, inTurn } from './troubles';

type Answers = Partial<Record<TroubleAnswer, true | string>>;

/** A trouble as it was met and ended. */
export interface AsBuiltTrouble {
	seq: number;
	at: string;
	by: string;
	id: TroubleId;
	title: string;
	place: string;
	note: string;
	/** Test cups and patches, before work went on. */
	tests: Array<{ at: string; by: string; kind: string; result: string; note: string }>;
	mended: {
		at: string;
		by: string;
		how: string;
		wayBack: string;
		/** What the supervisor confirmed first: that who was hurt was helped, that what smoked is cold. */
		answers: Answers;
	} | null;
}

/**
 * Every trouble reported, with its tests and its end.
 *
 * @param done - entries that count
 */
export function troublesOf(done: readonly LoggedEvent[], processVersion: number): AsBuiltTrouble[] {
	const found: AsBuiltTrouble[] = [];
	for (const { seq, event } of done) {
		if (event.type === 'trouble.reported') {
			const { at, by, trouble: id, note = '', place = '' } = event;
			found.push({
				seq,
				at,
				by,
				id,
				title: TROUBLE_TITLES[id],
				place,
				note,
				tests: [],
				mended: null
			});
		}
		const open = found.filter(({ mended }) => mended === null);
		const last = inTurn(open, processVersion).at(-1);
		if (event.type === 'test.judged' && last) {
			const { at, by, kind, result, note = '' } = event;
			last.tests.push({ at, by, kind, result, note });
		}
		if ((event.type === 'trouble.mended' || event.type === 'trouble.decided') && last) {
			const { at, by, how, wayBack } = event;
			const answers = event.type === 'trouble.decided' ? answersIn(event, last.id) : {};
			last.mended = { at, by, how, wayBack, answers };
		}
	}
	return found;
}

function answersIn(event: EventOf<'trouble.decided'>, id: TroubleId): Answers {
	const given = answersAsked(id).map((name) => [name, event[name]] as const);
	return Object.fromEntries(given.filter(([, answer]) => answer !== undefined));
}
