import type { Said } from './deviation-words';
import type { PhaseId, TroubleId } from '../content/vocabulary';
import type { Coat, Plan, ShellRound } from '../plan/plan';
import type { EventOf, EventType, HoldId } from './events';

/** An answer to a deviation. */
export interface Decision {
	accepted: boolean;
	/** Nobody accepted it: the work it was about was done again, by whoever did that. */
	redone: boolean;
	/** The work it is about was sent back or begun anew, and is not done yet. */
	isUnderWay?: boolean;
	by: string;
	at: string;
	note: string;
}

/** Something done otherwise than planned, and what became of it. */
export interface Deviation {
	at: string;
	by: string;
	/** In English, as the record keeps it. */
	what: string;
	/** The same for a reader of any language. */
	said: Said;
	/** Work waits for the decision; others are decided with the next signature. */
	blocking: boolean;
	/** What was decided in the end. */
	decided: Decision | null;
	/** Answers that a later one took the place of, oldest first. */
	earlier: Decision[];
}

export interface Signature {
	by: string;
	at: string;
}

export interface CupAtWork {
	/** 1-based within its coat or round; from version 6 on it keeps it, whatever is set aside. */
	number: number;
	massesG: Record<string, number>;
	weighedAt: string;
	mixedAt: string | null;
	/** When the parts first met, which no undoing moves; null while they stand apart. From version 5 on. */
	metAt: string | null;
}

export interface TroubleMet {
	id: TroubleId;
	at: string;
	by: string;
	place: string;
	note: string;
}

/** The trouble that stops the work. */
export interface Trouble extends TroubleMet {
	/** What the last test cup or patch showed; null before the first. */
	test: 'good' | 'bad' | null;
}

/** An entry taken back that the same act entered anew is held against. */
export interface TakenBack {
	type: EventType;
	/** What a test had found; null for anything else. */
	said: string | null;
	/** When the parts of the cup had met; null for anything but a weighing. */
	metAt: string | null;
}

/** What the machine remembers of the log. Only facts that a later rule or screen needs. */
export interface ProcessContext {
	plan: Plan;
	/** The phase at work; kept through trouble and pause. */
	phase: PhaseId;
	lastAt: string;
	/** Who has the job in hand; null until the first act at the bench. */
	worker: string | null;
	/** Everyone who ever did bench work on this mold: none of them may sign it. */
	workers: string[];
	briefingsRead: Record<string, string[]>;
	room: EventOf<'room.read'> | null;
	/** Since when the present wait runs: the last coat of wax or film, the last coat laid. */
	waitSinceAt: string | null;
	sealerCoats: number;
	waxCoats: number;
	filmPasses: number;
	/** The plan's coats and those added at the bench. */
	coats: Coat[];
	coatIndex: number;
	rounds: ShellRound[];
	roundIndex: number;
	cup: CupAtWork | null;
	/** The next cup of the same coat or round, prepared while `cup` is laid. */
	cupAhead: CupAtWork | null;
	/** The cup in hand was set aside in a trouble: work does not go on with it. */
	isCupAside: boolean;
	/** Laid of the coat or round at work. */
	laidG: number;
	cupsLaid: number;
	/** How many cups of each coat and round were begun, by its id: none has the number of another. From version 6 on. */
	cupsBegun: Record<string, number>;
	/** When the last cup was laid. */
	laidAt: string | null;
	/** When the first cup of the coat or round at work was laid. */
	firstLaidAt: string | null;
	/** When the coat or round before the one at work was finished, and its window. */
	finishedAt: string | null;
	windowClosesAt: string | null;
	/** When the window of the surface below the coat at work closes. */
	belowClosesAt: string | null;
	/** When each coat laid was finished, and its window: the surface below the next one. */
	surfaces: Array<{ finishedAt: string | null; closesAt: string | null }>;
	tackPassed: boolean;
	/** The surface was abraded and wiped, so the window no longer counts. */
	abraded: boolean;
	/** The surface below the coat at work was found wet, though it had been abraded. */
	isWet: boolean;
	thinnestMm: number | null;
	/** What the last inspection found, until the mold is worked on again. */
	inspection: { verdict: EventOf<'mold.inspected'>['verdict']; isAccepted: boolean } | null;
	hold: HoldId | null;
	holdRequestedAt: string | null;
	signatures: Partial<Record<HoldId, Signature>>;
	sentBack: { hold: HoldId; to: PhaseId; reason: string; by: string; at: string } | null;
	trouble: Trouble | null;
	/** Troubles met before it that still stop the work, oldest first. */
	troublesBefore: Trouble[];
	/** Entries taken back and not yet entered anew. */
	takenBack: TakenBack[];
	/** Every trouble reported so far, with its place; those of a glove that was stripped are gone with it. */
	troublesMet: TroubleMet[];
	pausedFor: string | null;
	deviations: Deviation[];
	/** Why the job ended before handover. */
	endReason: string | null;
}

export function firstContext(plan: Plan, openedAt: string): ProcessContext {
	return {
		plan,
		phase: 'brief',
		lastAt: openedAt,
		worker: null,
		workers: [],
		briefingsRead: {},
		room: null,
		waitSinceAt: null,
		sealerCoats: 0,
		waxCoats: 0,
		filmPasses: 0,
		coats: plan.coats,
		coatIndex: 0,
		rounds: plan.shell.rounds,
		roundIndex: 0,
		cup: null,
		cupAhead: null,
		isCupAside: false,
		laidG: 0,
		cupsLaid: 0,
		cupsBegun: {},
		laidAt: null,
		firstLaidAt: null,
		finishedAt: null,
		windowClosesAt: null,
		belowClosesAt: null,
		surfaces: [],
		tackPassed: false,
		abraded: false,
		isWet: false,
		thinnestMm: null,
		inspection: null,
		hold: null,
		holdRequestedAt: null,
		signatures: {},
		sentBack: null,
		trouble: null,
		troublesBefore: [],
		takenBack: [],
		troublesMet: [],
		pausedFor: null,
		deviations: [],
		endReason: null
	};
}

/** The coat at work, or null when all are laid. */
export function coatAtWork(context: ProcessContext): Coat | null {
	return context.coats[context.coatIndex] ?? null;
}

/** The coat or shell round that a cup mixed now would go into. */
export function batchAtWork(context: ProcessContext): Coat | ShellRound | null {
	if (context.phase === 'shell') return context.rounds[context.roundIndex] ?? null;
	return coatAtWork(context);
}

/** Whether the job was opened under this version of the process or a later one. */
export function isSince({ plan }: ProcessContext, version: number): boolean {
	return plan.processVersion >= version;
}

/** A mixed cup is being laid: what is weighed or mixed meanwhile is the next one. */
export function isLaying({ cup }: ProcessContext): boolean {
	return cup !== null && cup.mixedAt !== null;
}

/** Who may mix the next cup while `layer` lays one: everybody else who has read all of the briefings. */
export function mixersBeside({ plan, briefingsRead }: ProcessContext, layer: string): string[] {
	return Object.entries(briefingsRead).flatMap(([person, read]) =>
		person !== layer && plan.briefings.every((slug) => read.includes(slug)) ? [person] : []
	);
}

/** The cup at the scale: the next one while one is laid. */
export function cupInPreparation(context: ProcessContext): CupAtWork | null {
	return isLaying(context) ? context.cupAhead : context.cup;
}

/** A supervisor's order to go on from `to` covers one abrading, not every later one. */
export function isOpenOrder({ sentBack, deviations }: ProcessContext, to: PhaseId): boolean {
	if (sentBack?.to !== to) return false;
	return !deviations.some(
		({ decided }) => decided?.by === sentBack.by && decided.at === sentBack.at
	);
}
