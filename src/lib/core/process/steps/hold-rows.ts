import type { StepSlug } from '../../content/vocabulary';
import type { Words } from '../../language/words';
import type { ProcessContext } from '../context';
import { HOLDS } from '../holds';
import { row, type StepRow } from './row';

/** At the last hold point: what the inspection found, when the mold cannot be signed for it. */
function found({ steps }: Words, { hold, inspection }: ProcessContext): string {
	if (hold !== 'moldAccepted' || !inspection || inspection.isAccepted) return '';
	if (inspection.verdict === 'reject') return steps.hold.reject;
	return inspection.verdict === 'needs repair' ? steps.hold.repair : '';
}

/** The two rows of a hold point: before it is asked for, and after. */
export const holdRows = (hold: keyof typeof HOLDS): Record<string, StepRow> => {
	const title = ({ steps, titles }: Words) => steps.hold.title(titles.holds[hold]);
	return {
		[`${hold}.unasked`]: row(
			HOLDS[hold].slug as StepSlug,
			(w, c) => ({ title: title(w), what: found(w, c) || w.steps.hold.ask }),
			'hold.requested',
			...(hold === 'moldAccepted' ? (['mold.repaired', 'mold.inspected'] as const) : [])
		),
		[`${hold}.asked`]: row(
			HOLDS[hold].slug as StepSlug,
			(w, c) => ({ title: title(w), what: found(w, c) || w.steps.hold.asked }),
			'hold.signed',
			'hold.sentBack',
			...(hold === 'moldAccepted'
				? (['mold.repaired', 'deviation.decided', 'mold.rejected'] as const)
				: [])
		)
	};
};
