import type { StepSlug } from '../../content/vocabulary';
import type { Words } from '../../language/words';
import type { ProcessContext } from '../context';
import type { EventType } from '../events';

interface Said {
	title: string;
	/** One line, imperative. */
	what: string;
}

/** What the bench shows in one state of the machine. */
export interface StepRow {
	slug: StepSlug;
	/** Title and line, in the words of one language. */
	says: (w: Words, c: ProcessContext) => Said;
	/** The acts that move the work on, the main one first. */
	acts: readonly EventType[];
}

/** One row; title and words may depend on the state. */
export const row = (slug: StepSlug, says: StepRow['says'], ...acts: EventType[]): StepRow => ({
	slug,
	says,
	acts
});
