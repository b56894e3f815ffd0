import type { Law } from '../quantity/figure';
import { liftingLimit, type Lift, type LiftingLimit } from './lifting';
import { NIOSH_METRIC, type LiftingSystem } from './lifting-constants';

export const liftingTaskLaw: Law = {
	id: 'lifting-task',
	name: 'Recommended weight limit of a lift that is set down with care',
	formula: 'RWL = min(RWL_origin, RWL_destination), D = |V_destination − V_origin|',
	source: 'DHHS (NIOSH) Publication 94-110, rev. 9/2021, significant control at the destination',
	validity: 'As for the lifting equation; a load that may be dropped is judged at its origin alone.'
};

/** Where the hands are at one end of a lift. */
export interface LiftEnd {
	horizontalMm: number;
	heightMm: number;
}

export interface LiftingTask extends Pick<
	Lift,
	'twistDeg' | 'liftsPerMin' | 'duration' | 'coupling'
> {
	origin: LiftEnd;
	destination: LiftEnd;
}

export interface LiftingTaskLimit extends LiftingLimit {
	/** The end with the lower limit; the origin when both are alike. */
	decidedAt: 'origin' | 'destination';
	/** Hands ahead of the ankles at that end. */
	horizontalMm: number;
	travelMm: number;
}

/**
 * Limit of a lift from one height to another with control at both ends: the lower of the two, grams.
 *
 * @throws RangeError for impossible input
 */
export function liftingTaskLimit(
	{ origin, destination, ...task }: LiftingTask,
	system: LiftingSystem = NIOSH_METRIC
): LiftingTaskLimit {
	const travelMm = Math.abs(destination.heightMm - origin.heightMm);
	const at = ({ horizontalMm, heightMm }: LiftEnd): LiftingLimit =>
		liftingLimit(
			{
				...task,
				horizontalMm,
				originHeightMm: origin.heightMm,
				judgedHeightMm: heightMm,
				travelMm
			},
			system
		);
	const atOrigin = at(origin);
	const atDestination = at(destination);
	return atDestination.rwlG < atOrigin.rwlG
		? {
				...atDestination,
				decidedAt: 'destination',
				horizontalMm: destination.horizontalMm,
				travelMm
			}
		: { ...atOrigin, decidedAt: 'origin', horizontalMm: origin.horizontalMm, travelMm };
}
