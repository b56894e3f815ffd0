import { assertWithin } from '../quantity/assert-within';
import { displayQuantity, type UnitSystem } from '../quantity/display';
import type { Law } from '../quantity/figure';
import { liftingIndex, type LiftingLimit } from './lifting';

export const teamLiftLaw: Law = {
	id: 'team-lift',
	name: 'What a team can lift',
	formula: 'two people: 2/3 of the sum of their limits; three people: 1/2 of the sum',
	source: 'HSE L23, Manual handling, guidance on regulation 4 (team handling), approximate guide',
	validity: 'Level ground, good grip for all, one person leading; not more than three here.'
};

export type LiftWay = 'one person' | 'two people' | 'three people' | 'hoist or pallet truck';

export interface LiftAdvice {
	way: LiftWay;
	/** Index of the lift by one person; null when nothing may be lifted this way. */
	index: number | null;
	/** Load that the advised way is good for; null for the hoist, whose own plate says it. */
	limitG: number | null;
	reason: string;
	caution: string;
}

/** Shown with every lift. */
export const LIFT_CAUTION =
	'A computed limit is for healthy people in good conditions. Anyone who is not sure, hurt or pregnant does not lift; wear safety shoes and keep hands out from under the mold.';

/** Share of the summed limits that a team of 1, 2 or 3 can lift. */
const TEAMS: readonly { way: LiftWay; people: 1 | 2 | 3; share: number }[] = [
	{ way: 'one person', people: 1, share: 1 },
	{ way: 'two people', people: 2, share: 2 / 3 },
	{ way: 'three people', people: 3, share: 1 / 2 }
];

/** Limit of a team when each member alone has the limit `rwlG`, grams. */
export function teamLimitG({ rwlG, people }: { rwlG: number; people: 1 | 2 | 3 }): number {
	assertWithin(rwlG, 0, 1e6, 'rwlG');
	assertWithin(people, 1, 3, 'people');
	return rwlG * people * (TEAMS[people - 1]?.share ?? 0);
}

/**
 * How to lift or turn `massG`. A mold with liquid in it is not lifted by hand at all: it is an
 * unsteady load, which the equation does not cover.
 *
 * @throws RangeError for an impossible mass
 */
export function liftAdvice({
	massG,
	limit,
	holdsLiquid,
	units = 'SI'
}: {
	massG: number;
	limit: Pick<LiftingLimit, 'rwlG' | 'forbidden'>;
	holdsLiquid: boolean;
	/** In which the reason names its masses. */
	units?: UnitSystem;
}): LiftAdvice {
	const mass = (g: number): string => displayQuantity(g, 'g', units);
	const index = liftingIndex({ massG, rwlG: limit.rwlG });
	const hoist = (reason: string): LiftAdvice => ({
		way: 'hoist or pallet truck',
		index,
		limitG: null,
		reason,
		caution: LIFT_CAUTION
	});
	if (holdsLiquid) {
		return hoist('Liquid shifts in the mold: pour where it can stand until it has set.');
	}
	if (limit.forbidden.length > 0) {
		return hoist(`No weight may be lifted this way: ${limit.forbidden.join(', ')}.`);
	}
	const limitOf = (people: 1 | 2 | 3) => teamLimitG({ rwlG: limit.rwlG, people });
	const team = TEAMS.find(({ people }) => massG <= limitOf(people));
	if (!team) {
		return hoist(
			`${mass(massG)} is above the ${mass(limitOf(3))} that three people can lift this way.`
		);
	}
	const limitG = limitOf(team.people);
	return {
		way: team.way,
		index,
		limitG,
		reason: `${mass(massG)} is within the ${mass(limitG)} for ${team.way} lifting this way.`,
		caution: LIFT_CAUTION
	};
}
