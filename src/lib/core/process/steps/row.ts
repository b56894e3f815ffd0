import type { StepSlug } from '../../content/vocabulary';
import type { ProcessContext } from '../context';
import type { EventType } from '../events';

/** What the bench shows in one state of the machine. */
export interface StepRow {
	slug: StepSlug;
	title: (c: ProcessContext) => string;
	/** One line, imperative. */
	what: (c: ProcessContext) => string;
	/** The acts that move the work on, the main one first. */
	acts: readonly EventType[];
}

/** One row; title and words may depend on the state. */
export const row = (
	slug: StepSlug,
	title: string | ((c: ProcessContext) => string),
	what: string | ((c: ProcessContext) => string),
	...acts: EventType[]
): StepRow => ({
	slug,
	title: typeof title === 'string' ? () => title : title,
	what: typeof what === 'string' ? () => what : what,
	acts
});
