import { batchAtWork, coatAtWork, cupInPreparation, isSince, type ProcessContext } from './context';
import { cupDeviationFraction, isOnRatio, missingParts, strangeParts } from './cup-check';
import type { EventOf, EventType, ProcessEvent } from './events';
import { HOLDS } from './holds';
import { addSeconds, secondsBetween } from './instant';
import { cupAfter } from './next-cup';
import { TROUBLES, waysBackFrom } from './troubles';

/** Hours for which a reading of the room is taken as true; common practice, no source. */
const ROOM_READING_S = 12 * 3600;
/** A coat or round counts as laid from this part of its planned mass on; common practice, no source. */
export const LAID_FRACTION = 0.85;
/** A shell counts as thick enough from this part of its planned thickness on; common practice, no source. */
export const SHELL_FRACTION = 0.85;

/** One condition of an act: whether it holds, and what to say to the person when it does not. */
interface Rule {
	holds: (context: ProcessContext, event: ProcessEvent) => boolean;
	says: (context: ProcessContext, event: ProcessEvent) => string;
	/** For a wait: the instant from which the rule holds, when it depends on the clock alone. */
	fromAt?: (context: ProcessContext) => string | null;
}

const is = <T extends EventType>(event: ProcessEvent, type: T): event is EventOf<T> =>
	event.type === type;

/** A rule that holds once `seconds` have passed since `since`. */
function after(
	since: (c: ProcessContext) => string | null,
	seconds: (c: ProcessContext) => number,
	what: string
): Rule {
	const fromAt = (c: ProcessContext) => {
		const at = since(c);
		return at === null ? null : addSeconds(at, seconds(c));
	};
	return {
		holds: (c, e) => {
			const at = fromAt(c);
			return at === null || secondsBetween(at, e.at) >= 0;
		},
		says: (c) => `${what} not before ${fromAt(c) ?? ''}`,
		fromAt
	};
}

function unreadBriefings(context: ProcessContext, person: string): string[] {
	const read = context.briefingsRead[person] ?? [];
	return context.plan.briefings.filter((slug) => !read.includes(slug));
}

function roomFault(c: ProcessContext, at: string): string | null {
	if (!c.room) return 'read the room first: temperature, humidity, extraction';
	if (secondsBetween(c.room.at, at) > ROOM_READING_S)
		return 'the room was read over 12 hours ago: read it again';
	if (!c.room.extractionOn) return 'switch the extraction on, then read the room again';
	const { materials } = c.plan.inputs;
	const coating = coatAtWork(c)?.kind === 'detail' ? materials.detail : materials.build;
	const range = (c.phase === 'shell' ? materials.shell : coating)?.useTemperature;
	const roomC = c.room.temperatureC;
	return range && (roomC < range.minC || roomC > range.maxC)
		? `the room is ${roomC} °C; the data sheet asks for ${range.minC} to ${range.maxC} °C`
		: null;
}

function isWindowOpen(c: ProcessContext, at: string): boolean {
	return c.abraded || c.windowClosesAt === null || secondsBetween(at, c.windowClosesAt) >= 0;
}

export const RULES = {
	/** The log is in order of time. */
	afterLast: {
		holds: (c, e) => secondsBetween(c.lastAt, e.at) >= 0,
		says: (c, e) => `it is dated ${e.at}, before the last entry at ${c.lastAt}`
	},
	inHand: {
		holds: (c, e) => c.worker === null || c.worker === e.by,
		says: () => 'another person has this mold in hand: take it over first'
	},
	notInHand: {
		holds: (c, e) => c.worker !== e.by,
		says: () => 'you have this mold in hand already'
	},
	notOwnWork: {
		holds: (c, e) => !c.workers.includes(e.by),
		says: () => 'nobody signs their own work: ask a supervisor who has not worked on this mold'
	},
	briefed: {
		holds: (c, e) => unreadBriefings(c, e.by).length === 0,
		says: (c, e) => `read the briefings first: ${unreadBriefings(c, e.by).join(', ')}`
	},
	roomFits: {
		holds: (c, e) => roomFault(c, e.at) === null,
		says: (c, e) => roomFault(c, e.at) ?? ''
	},
	waxHazed: after(
		(c) => c.waitSinceAt,
		(c) => c.plan.release.waxHazeS,
		'the wax has not hazed: buff'
	),
	filmDry: after(
		(c) => c.waitSinceAt,
		(c) => c.plan.release.filmDryS,
		'the film is not dry: check it'
	),
	moreWax: {
		holds: (c) => c.waxCoats < c.plan.release.waxCoats,
		says: (c) => `all ${c.plan.release.waxCoats} coats of wax are on`
	},
	moreFilm: {
		holds: (c) => c.filmPasses < c.plan.release.filmPasses,
		says: (c) => `all ${c.plan.release.filmPasses} passes of film are on`
	},
	holdNamed: {
		holds: (c, e) => !('hold' in e) || e.hold === c.hold,
		says: (c) => `this mold waits at another hold point: ${c.hold ? HOLDS[c.hold].title : 'none'}`
	},
	holdMayReturnTo: {
		holds: (c, e) => is(e, 'hold.sentBack') && HOLDS[e.hold].sendBack.includes(e.to),
		says: (c) =>
			`from here it can go back to: ${c.hold ? HOLDS[c.hold].sendBack.join(', ') : 'nowhere'}`
	},
	/** A mold is accepted only as its inspection found it. */
	fitToAccept: {
		holds: (c) =>
			c.hold !== 'moldAccepted' ||
			!isSince(c, 2) ||
			c.inspection?.verdict === 'sound' ||
			(c.inspection?.verdict === 'needs repair' && c.inspection.isAccepted),
		says: (c) =>
			c.inspection?.verdict === 'reject'
				? 'the inspection found it not usable: reject the mold, or send it back'
				: 'the inspection found it in need of repair: have it mended and inspected again, or decide that deviation first'
	},
	repairAsked: {
		holds: (c) => c.inspection?.verdict === 'needs repair' && !c.inspection.isAccepted,
		says: (c) =>
			c.inspection?.verdict === 'reject'
				? 'the inspection found it not usable: reject the mold, or send it back'
				: 'the inspection asks for no repair'
	},
	knownParts: {
		holds: (c, e) => {
			const batch = batchAtWork(c);
			return is(e, 'cup.weighed') && batch !== null && strangeParts(batch, e.massesG).length === 0;
		},
		says: (c) =>
			`this material's parts are: ${
				batchAtWork(c)
					?.fractions.map((f) => f.part)
					.join(', ') ?? ''
			}`
	},
	somethingWeighed: {
		holds: (_c, e) => is(e, 'cup.weighed') && Object.values(e.massesG).some((massG) => massG > 0),
		says: () => 'the cup is empty: enter what the scale showed'
	},
	onRatio: {
		holds: (c) => {
			const batch = batchAtWork(c);
			const cup = cupInPreparation(c);
			return batch !== null && cup !== null && isOnRatio(batch, cup.massesG);
		},
		says: (c) => {
			const batch = batchAtWork(c);
			const cup = cupInPreparation(c);
			if (!batch || !cup) return 'weigh the cup first';
			const missing = missingParts(batch, cup.massesG);
			if (missing.length > 0) return `part ${missing.join(', ')} is not in the cup yet`;
			const off = (cupDeviationFraction(batch, cup.massesG) ?? 0) * 100;
			return `the cup is ${off.toFixed(1)} % off ratio, more than ${(batch.toleranceFraction * 100).toFixed(1)} %: correct it by adding the other part`;
		}
	},
	/** More of this coat or round follows the cup that is being laid. */
	anotherCup: {
		holds: (c) => cupAfter(c) !== null,
		says: () => 'the cup in hand is the last of this coat: lay it first'
	},
	nextUnmixed: {
		holds: (c) => c.cupAhead === null || c.cupAhead.mixedAt === null,
		says: () => 'the next cup is mixed already: lay the one in hand, then that one'
	},
	crewMixes: {
		holds: (c) => c.plan.people >= 2,
		says: () =>
			'one person cannot lay and mix at once: the plan has one at work, so lay this cup first'
	},
	cupThere: {
		holds: (c, e) => !is(e, 'cup.discarded') || e.cup !== 'next' || c.cupAhead !== null,
		says: () => 'no next cup is prepared'
	},
	/** There is a coat below, and nothing of the next one is on it yet. */
	coatBelow: {
		holds: (c) => c.phase !== 'shell' && c.coatIndex > 0 && c.laidG === 0,
		says: () => 'there is no bare coat to test now'
	},
	windowShut: {
		holds: (c, e) => (c.phase === 'shell' || c.laidG === 0) && !isWindowOpen(c, e.at),
		says: (c) =>
			`the recoat window is open until ${c.windowClosesAt ?? 'the next coat'}: no need to abrade`
	},
	tackPassed: {
		holds: (c) =>
			c.phase === 'shell' || c.laidG > 0 || c.coatIndex === 0 || c.tackPassed || c.abraded,
		says: () => 'the coat below has not passed its fingertip test'
	},
	windowOpen: {
		holds: (c, e) => (c.laidG > 0 && c.phase !== 'shell') || isWindowOpen(c, e.at),
		says: (c) =>
			`the recoat window closed at ${c.windowClosesAt ?? ''}: abrade, wipe, and have the deviation decided`
	},
	enoughLaid: {
		holds: (c, e) => {
			const batch = batchAtWork(c);
			if (!is(e, 'coat.finished') || !batch || c.laidG <= 0) return false;
			return c.laidG >= LAID_FRACTION * batch.massG || !!e.shortReason;
		},
		says: (c) => {
			const batch = batchAtWork(c);
			if (c.laidG <= 0) return 'nothing is laid yet';
			return `${c.laidG.toFixed(0)} g of ${(batch?.massG ?? 0).toFixed(0)} g is laid: mix another cup, or say why it stays short`;
		}
	},
	brushBackDue: after(
		(c) => c.finishedAt,
		(c) => coatAtWork(c)?.brushBackS ?? 0,
		'it still runs: brush it back up'
	),
	gloveCured: after(
		(c) => c.finishedAt,
		(c) => c.plan.gloveCure.testS,
		'the glove needs its time: test'
	),
	shellCured: after(
		(c) => c.finishedAt,
		(c) => c.plan.shellCure.testS,
		'the shell needs its time: test'
	),
	fullWaxCoats: {
		holds: (c, e) => is(e, 'glove.waxed') && e.coats >= c.plan.shellRelease.waxCoats,
		says: (c) => `the back of the glove takes ${c.plan.shellRelease.waxCoats} coats of wax`
	},
	shellThick: {
		holds: (c, e) =>
			is(e, 'shell.finished') && e.thicknessMm >= SHELL_FRACTION * c.plan.shell.thicknessMm,
		says: (c) =>
			`the thinnest place must reach ${(SHELL_FRACTION * c.plan.shell.thicknessMm).toFixed(1)} mm: lay another cup there`
	},
	troubleFitsPhase: {
		holds: (c, e) => is(e, 'trouble.reported') && TROUBLES[e.trouble].phases.includes(c.phase),
		says: () => 'that trouble does not belong to this phase'
	},
	troubleMayReturnTo: {
		holds: (c, e) => is(e, 'trouble.mended') && waysBackFrom(c).includes(e.wayBack),
		says: (c) => `from this trouble the ways back are: ${waysBackFrom(c).join(', ')}`
	},
	troubleMendedByAnother: {
		holds: (c, e) =>
			c.trouble === null || !TROUBLES[c.trouble.id].needsAnother || !c.workers.includes(e.by),
		says: () => 'a supervisor who has not worked on this mold must say that work goes on'
	}
} satisfies Record<string, Rule>;

export type RuleName = keyof typeof RULES;

/** The rule by name, with its optional members visible. */
export function rule(name: RuleName): Rule {
	return RULES[name];
}
