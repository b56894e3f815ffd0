import { PHASE_IDS, type PhaseId, type TroubleId } from '../content/vocabulary';
import type { TroubleAnswer } from './events';

/** "redo coat" lays the coat or shell round at work again; a phase name starts that phase again. */
export type WayBack = 'resume' | 'redo coat' | PhaseId;

export interface TroubleRule {
	/** Where it can happen. */
	phases: readonly PhaseId[];
	waysBack: readonly WayBack[];
	/** Before version 5: work goes on only when somebody else than the person at work says so. */
	needsAnother: boolean;
	/** From version 5 on a supervisor ends it, with a PIN; left out, as `needsAnother` says. */
	needsSupervisor?: boolean;
	/** A test cup or patch that turned out well comes before any way back. */
	needsTest: boolean;
}

const COATING: readonly PhaseId[] = ['detail', 'build'];
const MIXING: readonly PhaseId[] = [...COATING, 'shell'];

/** Where each trouble can happen and how work goes on after it. Common practice, no source. */
export const TROUBLES: Readonly<Record<TroubleId, TroubleRule>> = {
	'off-ratio': {
		phases: [...MIXING, 'pour'],
		waysBack: ['redo coat', 'resume', 'shellRelease', 'release'],
		needsAnother: false,
		needsTest: false
	},
	'pot-life-overrun': {
		phases: [...MIXING, 'pour'],
		waysBack: ['resume', 'redo coat', 'shellRelease'],
		needsAnother: false,
		needsTest: false
	},
	'recoat-too-early': {
		phases: COATING,
		waysBack: ['resume'],
		needsAnother: false,
		needsTest: false
	},
	'recoat-missed': { phases: MIXING, waysBack: ['resume'], needsAnother: false, needsTest: false },
	bubbles: {
		phases: [...COATING, 'gloveCure', 'shell', 'peel', 'wash', 'inspect', 'pour'],
		waysBack: ['resume', 'redo coat', 'release'],
		needsAnother: false,
		needsTest: true
	},
	voids: {
		phases: [...COATING, 'peel', 'wash', 'inspect', 'pour'],
		waysBack: ['resume', 'redo coat'],
		needsAnother: false,
		needsTest: false
	},
	'no-cure': {
		phases: [...COATING, 'gloveCure', 'shell', 'shellCure', 'peel', 'wash', 'inspect', 'pour'],
		waysBack: ['resume', 'redo coat', 'shellRelease', 'release'],
		needsAnother: true,
		needsTest: true
	},
	'shell-locked': { phases: ['open'], waysBack: ['resume'], needsAnother: false, needsTest: false },
	'glove-torn': {
		phases: ['trim', 'open', 'mark', 'peel', 'wash', 'inspect', 'pour'],
		waysBack: ['resume'],
		needsAnother: false,
		needsTest: false
	},
	'waste-smoke': {
		phases: [...MIXING, 'gloveCure', 'shellCure', 'pour'],
		waysBack: ['resume'],
		needsAnother: false,
		needsSupervisor: true,
		needsTest: false
	},
	'film-beaded': {
		phases: ['release'],
		waysBack: ['resume', 'release'],
		needsAnother: false,
		needsTest: false
	},
	'frame-leak': {
		phases: [...MIXING, 'pour'],
		waysBack: ['resume'],
		needsAnother: false,
		needsTest: false
	},
	sag: {
		phases: MIXING,
		waysBack: ['resume', 'redo coat', 'shellRelease'],
		needsAnother: false,
		needsTest: false
	},
	spill: { phases: PHASE_IDS, waysBack: ['resume'], needsAnother: false, needsTest: false },
	'skin-contact': { phases: PHASE_IDS, waysBack: ['resume'], needsAnother: true, needsTest: false },
	breathing: { phases: PHASE_IDS, waysBack: ['resume'], needsAnother: true, needsTest: false },
	burn: { phases: PHASE_IDS, waysBack: ['resume'], needsAnother: true, needsTest: false },
	cut: { phases: PHASE_IDS, waysBack: ['resume'], needsAnother: true, needsTest: false },
	'cup-smoke': {
		phases: [...MIXING, 'pour'],
		waysBack: ['resume'],
		needsAnother: true,
		needsTest: false
	},
	/** Nobody has written down what to do about it, so a supervisor looks. */
	'something-else': {
		phases: PHASE_IDS,
		waysBack: ['resume', 'redo coat'],
		needsAnother: true,
		needsTest: false
	}
};

/** Somebody is hurt or ill. */
const OF_PEOPLE: readonly TroubleId[] = ['skin-contact', 'breathing', 'burn', 'cut'];
/** What smokes: the cup cools outside, and the air is let out. */
const OF_SMOKE: readonly TroubleId[] = ['cup-smoke', 'waste-smoke'];
/** What hurts or may at once: these come first, are helped at once and described later. */
const HURTING: readonly TroubleId[] = [...OF_PEOPLE, ...OF_SMOKE, 'spill'];

/** Whether somebody is hurt or ill. */
export const isOfPeople = (id: TroubleId): boolean => OF_PEOPLE.includes(id);
/** Whether a cup smokes. */
export const isOfSmoke = (id: TroubleId): boolean => OF_SMOKE.includes(id);
/** Whether it hurts or may at once. */
export const isHurting = (id: TroubleId): boolean => HURTING.includes(id);

/** What must be answered before a trouble is ended: of people, whether they were helped; of what is breathed, whether it is gone. */
export function answersAsked(id: TroubleId): TroubleAnswer[] {
	if (id === 'breathing') return ['firstAidGiven', 'seenBy', 'sdsTaken', 'aired'];
	if (isOfPeople(id)) return ['firstAidGiven', 'seenBy', 'sdsTaken'];
	return isOfSmoke(id) ? ['cupCold', 'aired'] : [];
}

/** How urgent a trouble is: 3 where somebody cannot breathe well, 2 where somebody is hurt, 1 where something may hurt, 0 for the mold. */
export const urgencyOf = (id: TroubleId): number =>
	Number(isHurting(id)) + Number(isOfPeople(id)) + Number(id === 'breathing');

/** Open troubles, oldest first, put such that the one to end first is last. Up to version 5 that is the latest; since then a body comes before things. */
export function inTurn<T extends { id: TroubleId }>(
	open: readonly T[],
	processVersion: number
): T[] {
	return processVersion >= 6
		? open.toSorted((a, b) => urgencyOf(a.id) - urgencyOf(b.id))
		: [...open];
}

/** Troubles that can be reported in a phase: what hurts first, then in the order of the vocabulary. */
export function troublesIn(phase: PhaseId): TroubleId[] {
	const others = (Object.keys(TROUBLES) as TroubleId[]).filter((id) => !isHurting(id));
	return [...HURTING, ...others].filter((id) => TROUBLES[id].phases.includes(phase));
}

/**
 * Whether only a supervisor who has not worked on the mold ends this trouble. Up to version 4 anybody else
 * could say so, and smoke was ended by the crew.
 */
export function needsSupervisor(id: TroubleId, processVersion: number): boolean {
	const { needsAnother, needsSupervisor = needsAnother } = TROUBLES[id];
	return processVersion >= 5 ? needsSupervisor : needsAnother;
}

/** Whether a trouble is one of the mold, not of people and room, so that what was found of it before counts no longer. */
export function isOfMold(id: TroubleId): boolean {
	return !isHurting(id);
}

interface Place {
	trouble: { id: TroubleId } | null;
	phase: PhaseId;
	roundIndex: number;
}

/**
 * The ways back that are open from where the trouble was met. None leads forward. The first round of
 * the shell lies on the waxed glove: scraping it off takes the wax along, so it is never simply laid
 * again; the back of the glove is waxed anew. Once the shell is open, the glove's back is not waxed
 * again, and at the pour it is the casting that goes wrong: the mold stays where it is.
 */
export function waysBackFrom({ trouble, phase, roundIndex }: Place): WayBack[] {
	if (!trouble) return [];
	return TROUBLES[trouble.id].waysBack.filter((way) => {
		if (way === 'resume') return true;
		if (phase === 'pour') return false;
		if (way === 'shellRelease') return phase === 'shell' || phase === 'shellCure';
		if (way === 'redo coat') {
			return COATING.includes(phase) || (phase === 'shell' && roundIndex > 0);
		}
		return PHASE_IDS.indexOf(way) <= PHASE_IDS.indexOf(phase);
	});
}

/** Phases that some trouble leads back to; no trouble leads forward past a hold point. */
export const PHASES_BACK: readonly PhaseId[] = PHASE_IDS.filter((phase) =>
	Object.values(TROUBLES).some(({ waysBack }) => waysBack.includes(phase))
);
