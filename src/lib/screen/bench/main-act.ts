import type { EventType } from '$lib/core/process/events';
import type { Act } from '$lib/core/process/step';

/** Offered beside a step; never the reason why it cannot go on. */
const SIDE: readonly EventType[] = [
	'room.read',
	'tack.tested',
	'surface.abraded',
	'trouble.reported',
	'job.paused',
	'job.takenOver',
	'job.abandoned',
	'deviation.decided',
	'trouble.decided'
];
/** A supervisor's word beside the work, not at a hold point. */
const DECISIONS: readonly EventType[] = ['deviation.decided', 'trouble.decided'];
/** What is done for the next cup while one is laid. */
const NEXT_CUP: readonly EventType[] = ['cup.weighed', 'cup.mixed'];
/** What is worth a person's touch beside the main act, in this order. */
const SHOWN_BLOCKED: readonly EventType[] = ['cup.mixed', 'brief.finished', 'trouble.mended'];

export interface MainAct {
	/** What to put in the middle of the screen; null when nothing can be done by this person now. */
	act: Act | null;
	/** The briefings come before anything else. */
	readFirst: boolean;
	/** A supervisor's word is what is waited for. */
	sign: boolean;
	/** Beside the work a supervisor may decide to let it be. */
	mayDecide: boolean;
	/** What cannot be done yet, and why. */
	notYet: Act[];
	/** Beneath the main act: the next cup, while one is laid. */
	nextCup: Act[];
	/** The cup past its time was laid all the same: never the way on, but what happened is entered. */
	laidLate: Act | null;
	/** The cup on the scale that cannot be mixed as it is: it can also be set aside. */
	aside: Act | null;
	/** Everything else this person may do here. */
	others: Act[];
}

/** Sorts the acts of a step for one person: the main one, what stands in its way, and the rest. */
export function mainAct(
	acts: readonly Act[],
	given: { unread: number; isBrief: boolean; isOthers: boolean }
): MainAct {
	const find = (type: EventType) => acts.find((act) => act.type === type && act.blocked === null);
	const primary = acts.find((act) => act.primary) ?? null;
	const isStopped = acts.some(
		({ type, why }) => type === 'trouble.mended' && why.includes('troubleMendedByCrew')
	);
	const sign =
		acts.some((act) => act.signature && !DECISIONS.includes(act.type)) ||
		primary?.type === 'deviation.decided' ||
		isStopped;
	const mayDecide = !sign && acts.some(({ type }) => DECISIONS.includes(type));
	const readFirst =
		given.unread > 0 && (given.isBrief || (primary?.why.includes('briefed') ?? false));
	const free = primary?.blocked === null && !primary.signature ? primary : null;
	const act =
		given.isOthers && find('job.takenOver')
			? (find('job.takenOver') ?? null)
			: readFirst
				? null
				: (free ??
					(primary?.why.some((rule) => rule.startsWith('room'))
						? (find('room.read') ?? null)
						: null));
	const nextCup =
		act?.type === 'cup.applied' ? acts.filter(({ type }) => NEXT_CUP.includes(type)) : [];
	const laidLate = act?.type === 'cup.discarded' ? (find('cup.applied') ?? null) : null;
	const aside = act?.type === 'cup.weighed' ? (find('cup.discarded') ?? null) : null;
	const notYet = acts.filter(
		(a) =>
			a.blocked !== null &&
			a !== act &&
			!nextCup.includes(a) &&
			(a === primary || SHOWN_BLOCKED.includes(a.type))
	);
	const others = acts.filter(
		(a) =>
			a !== act &&
			a !== laidLate &&
			a !== aside &&
			!nextCup.includes(a) &&
			a.blocked === null &&
			!a.signature &&
			a.type !== 'trouble.reported' &&
			(a.type !== 'job.takenOver' || given.isOthers) &&
			!(readFirst && !SIDE.includes(a.type))
	);
	return {
		act,
		readFirst: readFirst && act === null,
		sign,
		mayDecide,
		notYet,
		nextCup,
		laidLate,
		aside,
		others
	};
}
