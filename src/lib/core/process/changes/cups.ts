import { batchAtWork, type ProcessContext } from '../context';
import type { EventOf, ProcessEvent } from '../events';
import { addSeconds, secondsBetween } from '../instant';
import { deviation } from './deviations';
import type { Change } from './work';

export function cupWeighed(e: EventOf<'cup.weighed'>): Change {
	return { cup: { massesG: e.massesG, weighedAt: e.at, mixedAt: null } };
}

export function cupMixed(c: ProcessContext, e: ProcessEvent): Change {
	const late =
		c.laidG > 0 && c.windowClosesAt !== null && secondsBetween(c.windowClosesAt, e.at) > 0;
	return {
		cup: c.cup && { ...c.cup, mixedAt: e.at },
		...(late && !c.abraded
			? {
					deviations: deviation(c, e, 'A further cup was mixed after the recoat window had closed.')
				}
			: {})
	};
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
		cup: null,
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
