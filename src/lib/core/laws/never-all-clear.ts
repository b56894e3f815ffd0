import type { Law } from '../quantity/figure';

/**
 * Every result about air carries this: a computed concentration or flow is never permission to
 * breathe. `allClear` can't be true, so no screen can show a green light from a number.
 */
export interface NeverAllClear {
	allClear: false;
	/** Why not, in sentences to show beside the number; never empty. */
	cautions: string[];
}

export const neverAllClearLaw: Law = {
	id: 'never-all-clear',
	name: 'A number is never an all-clear',
	formula: 'allClear = false, always',
	source: 'Common practice of industrial hygiene, no source',
	validity: 'Every computed concentration, flow and waiting time.'
};

export interface AirHazard {
	/** Skin or airway sensitizer, isocyanates included. */
	sensitizer: boolean;
}

const ALWAYS =
	'Computed for air that mixes evenly; nobody can know from it what is in a breathing zone. Measure, and follow the SDS and local codes.';
const SENSITIZER =
	'Contains a sensitizer: no concentration is known to be safe for a sensitized person, and dilution is not a control for it. Local exhaust or enclosure and the respirator on the SDS come first; ask an occupational hygienist.';

/** The cautions for a result about these substances, in the form that results carry. */
export function neverAllClear(hazards: readonly AirHazard[]): NeverAllClear {
	const sensitizer = hazards.some((hazard) => hazard.sensitizer);
	return { allClear: false, cautions: sensitizer ? [SENSITIZER, ALWAYS] : [ALWAYS] };
}
