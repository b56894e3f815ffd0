import { batchAtWork, isLaying, type ProcessContext } from '../context';
import type { EventOf, ProcessEvent } from '../events';
import { addSeconds, secondsBetween } from '../instant';
import { deviation } from './deviations';
import type { Change } from './work';

export function cupWeighed(c: ProcessContext, e: EventOf<'cup.weighed'>): Change {
	const cup = { massesG: e.massesG, weighedAt: e.at, mixedAt: null };
	return isLaying(c) ? { cupAhead: cup } : { cup };
}

export function cupMixed(c: ProcessContext, e: EventOf<'cup.mixed'>): Change {
	const isAhead = isLaying(c);
	const isFurther = isAhead ? c.phase !== 'shell' : c.laidG > 0;
	const late = isFurther && c.windowClosesAt !== null && secondsBetween(c.windowClosesAt, e.at) > 0;
	return {
		...(e.mixedBy !== undefined && !c.workers.includes(e.mixedBy)
			? { workers: [...c.workers, e.mixedBy] }
			: {}),
		...(isAhead
			? { cupAhead: c.cupAhead && { ...c.cupAhead, mixedAt: e.at } }
			: { cup: c.cup && { ...c.cup, mixedAt: e.at } }),
		...(late && !c.abraded
			? {
					deviations: deviation(c, e, 'A further cup was mixed after the recoat window had closed.')
				}
			: {})
	};
}

/** The cup in hand is laid or set aside: the one prepared meanwhile takes its place. */
export function moveUp(c: ProcessContext): Change {
	return { cup: c.cupAhead, cupAhead: null };
}

/** The cup mixed meanwhile would have gone on the one set aside; the bare surface does not take it. */
export function bothDropped(c: ProcessContext, e: ProcessEvent): Change {
	const what =
		'The next cup was mixed already and set aside too: the surface below no longer takes it.';
	return { cup: null, cupAhead: null, deviations: deviation(c, e, what) };
}

export function cupApplied(c: ProcessContext, e: ProcessEvent): Change {
	const batch = batchAtWork(c);
	const massG = Object.values(c.cup?.massesG ?? {}).reduce((sum, part) => sum + part, 0);
	const workedS = c.cup?.mixedAt ? secondsBetween(c.cup.mixedAt, e.at) : 0;
	const limitS = batch ? batch.workingS : Infinity;
	const bare = c.phase === 'shell' || c.laidG === 0;
	const closedS =
		bare && !c.abraded && c.windowClosesAt !== null ? secondsBetween(c.windowClosesAt, e.at) : 0;
	const faults = [
		...(closedS > 0
			? [
					`A cup mixed inside the recoat window was laid ${Math.ceil(closedS / 60)} min after it had closed.`
				]
			: []),
		...(workedS > limitS
			? [
					`A cup was laid ${Math.ceil(workedS / 60)} min after mixing; its working time is ${Math.floor(limitS / 60)} min.`
				]
			: [])
	];
	return {
		...moveUp(c),
		laidAt: e.at,
		laidG: c.laidG + massG,
		cupsLaid: c.cupsLaid + 1,
		...(c.phase === 'shell' && batch
			? { finishedAt: e.at, windowClosesAt: addSeconds(e.at, batch.windowClosesS), abraded: false }
			: {}),
		deviations: faults.reduce(
			(deviations, what) => deviation({ ...c, deviations }, e, what),
			c.deviations
		)
	};
}
