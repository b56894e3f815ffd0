import type { StepSlug } from '../../content/vocabulary';
import type { ProcessContext } from '../context';
import { HOLDS } from '../holds';
import { row, type StepRow } from './row';

/** At the last hold point: what the inspection found, when the mold cannot be signed for it. */
function found({ hold, inspection }: ProcessContext): string {
	if (hold !== 'moldAccepted' || !inspection || inspection.isAccepted) return '';
	if (inspection.verdict === 'reject')
		return 'Inspected as not usable. A supervisor rejects it, or sends it back.';
	return inspection.verdict === 'needs repair'
		? 'In need of repair. Mend it and inspect it again, or let a supervisor decide.'
		: '';
}

/** The two rows of a hold point: before it is asked for, and after. */
export const holdRows = (hold: keyof typeof HOLDS): Record<string, StepRow> => ({
	[`${hold}.unasked`]: row(
		HOLDS[hold].slug as StepSlug,
		`Hold point: ${HOLDS[hold].title.toLowerCase()}`,
		(c) => found(c) || 'Stop here. Look it over, then ask a supervisor to look and sign.',
		'hold.requested',
		...(hold === 'moldAccepted' ? (['mold.repaired', 'mold.inspected'] as const) : [])
	),
	[`${hold}.asked`]: row(
		HOLDS[hold].slug as StepSlug,
		`Hold point: ${HOLDS[hold].title.toLowerCase()}`,
		(c) => found(c) || 'A supervisor has been asked. Work goes on when it is signed.',
		'hold.signed',
		'hold.sentBack',
		...(hold === 'moldAccepted'
			? (['mold.repaired', 'deviation.decided', 'mold.rejected'] as const)
			: [])
	)
});
