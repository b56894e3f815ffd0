import { assign, setup } from 'xstate';
import type { PhaseId } from '../../content/vocabulary';
import type { Plan } from '../../plan/plan';
import * as coats from '../changes/coats';
import * as cups from '../changes/cups';
import * as deviations from '../changes/deviations';
import * as findings from '../changes/findings';
import * as moreCoats from '../changes/more-coats';
import * as signing from '../changes/signing';
import * as surface from '../changes/surface';
import * as wayBack from '../changes/way-back';
import * as work from '../changes/work';
import { coatAtWork, isOpenOrder, isSince, type ProcessContext } from '../context';
import type { EventOf, EventType, HoldId, ProcessEvent } from '../events';
import { HOLDS } from '../holds';
import { secondsBetween } from '../instant';
import { RULES, type RuleName } from '../rules';

/** A guard made of named rules, so that a refusal can say which of them failed. */
export const obeys = (...rules: RuleName[]) => ({ type: 'obeys' as const, params: { rules } });
/** What a supervisor's decision must satisfy. */
export const SUPERVISOR: RuleName[] = ['afterLast', 'notOwnWork'];
/** What every act at the bench must satisfy. */
export const BENCH: RuleName[] = ['afterLast', 'inHand'];
export const bench = (...rules: RuleName[]) => obeys(...BENCH, ...rules);

/** Narrows the event of an action; the chart never runs it for another type. */
function only<T extends EventType>(event: ProcessEvent, type: T): EventOf<T> {
	if (event.type !== type) throw new Error(`expected the event ${type}, got ${event.type}`);
	return event as EventOf<T>;
}

function holdAll(rules: RuleName[], context: ProcessContext, event: ProcessEvent): boolean {
	return rules.every((name) => RULES[name].holds(context, event));
}

function passed(event: ProcessEvent): boolean {
	return 'result' in event && ['cured', 'hard', 'good'].includes(event.result);
}

function destination(event: ProcessEvent): string | null {
	if (event.type === 'hold.sentBack') return event.to;
	return event.type === 'trouble.mended' ? event.wayBack : null;
}

const aheadOf = ({ cupAhead }: ProcessContext): 'mixed' | 'weighed' | 'none' =>
	cupAhead === null ? 'none' : cupAhead.mixedAt === null ? 'weighed' : 'mixed';

const namesNext = (event: ProcessEvent) => event.type === 'cup.discarded' && event.cup === 'next';

type Finding = 'wet' | 'open' | 'closed';

/**
 * What a fingertip test means: "open" when the next coat may go on. The last coat has no next one,
 * so a hard surface is as good as a tacky one. Past its window a print does not help: the sheet's
 * clock says that the bond is gone. Abraded and accepted, the surface bonds by its roughness: it is
 * hard by nature, and open until the next coat is on it.
 */
function finding(
	context: ProcessContext,
	{ result, at }: EventOf<'tack.tested'>,
	of: 'coat' | 'coat below'
): Finding {
	if (result === 'wet') return 'wet';
	if (of === 'coat below' && context.abraded && isSince(context, 2)) return 'open';
	if (of === 'coat' && context.coatIndex + 1 >= context.coats.length) return 'open';
	const closesAt = context.windowClosesAt;
	const isOpen = context.abraded || closesAt === null || secondsBetween(at, closesAt) >= 0;
	return result === 'almost tack-free' && isOpen ? 'open' : 'closed';
}

export const found = (what: Finding, of: 'coat' | 'coat below') => ({
	type: 'obeysAndFound' as const,
	params: { rules: of === 'coat' ? BENCH : [...BENCH, 'coatBelow' as const], found: what, of }
});

/** Types, guards and actions of the process; the states are in the files beside this one. */
export const base = setup({
	types: {
		context: {} as ProcessContext,
		events: {} as ProcessEvent,
		input: {} as { plan: Plan; openedAt: string }
	},
	guards: {
		obeys: ({ context, event }, { rules }: { rules: RuleName[] }) => holdAll(rules, context, event),
		obeysAndFound: (
			{ context, event },
			{ rules, found, of }: { rules: RuleName[]; found: Finding; of: 'coat' | 'coat below' }
		) =>
			holdAll(rules, context, event) && finding(context, only(event, 'tack.tested'), of) === found,
		releaseDone: ({ context: { plan, waxCoats, filmPasses } }) =>
			!plan.release.needed ||
			(waxCoats >= plan.release.waxCoats && filmPasses >= plan.release.filmPasses),
		waxLeft: ({ context: { plan, waxCoats } }) => waxCoats < plan.release.waxCoats,
		brushesBack: ({ context }) => coatAtWork(context)?.brushBackS != null,
		moreCoats: ({ context }) => context.coatIndex + 1 < context.coats.length,
		lastRoundDone: ({ context }) => context.roundIndex >= context.rounds.length,
		obeysAndOrdered: ({ context, event }, { rules, to }: { rules: RuleName[]; to: PhaseId }) =>
			holdAll(rules, context, event) && isOpenOrder(context, to),
		obeysAndThick: ({ context, event }, { rules }: { rules: RuleName[] }) =>
			holdAll(rules, context, event) &&
			Math.min(...only(event, 'thickness.measured').points.map((p) => p.thicknessMm)) >=
				context.plan.glove.leastMm,
		obeysAndAccepted: ({ context, event }, { rules }: { rules: RuleName[] }) =>
			holdAll(rules, context, event) && only(event, 'deviation.decided').accepted,
		obeysAndPassed: ({ context, event }, { rules }: { rules: RuleName[] }) =>
			holdAll(rules, context, event) && passed(event),
		obeysAndMovesUp: (
			{ context, event },
			{ rules, next }: { rules: RuleName[]; next: 'mixed' | 'weighed' | 'none' }
		) => holdAll(rules, context, event) && !namesNext(event) && aheadOf(context) === next,
		obeysAndDropsNext: ({ context, event }, { rules }: { rules: RuleName[] }) =>
			holdAll(rules, context, event) && namesNext(event),
		obeysAndGoesTo: ({ context, event }, { rules, to }: { rules: RuleName[]; to: string }) =>
			holdAll(rules, context, event) && destination(event) === to,
		obeysAndRedoes: (
			{ context, event },
			{ rules, inShell }: { rules: RuleName[]; inShell: boolean }
		) =>
			holdAll(rules, context, event) &&
			destination(event) === 'redo coat' &&
			(context.phase === 'shell') === inShell
	},
	actions: {
		enter: assign((_, { phase }: { phase: PhaseId }) => ({ phase })),
		enterCoat: assign(({ context }) => ({
			phase: coatAtWork(context)?.kind === 'detail' ? ('detail' as const) : ('build' as const)
		})),
		enterHold: assign((_, { hold }: { hold: HoldId }) => ({ hold, phase: HOLDS[hold].phase })),
		note: assign({ lastAt: ({ event }) => event.at }),
		work: assign(({ context, event }) => work.worked(context, event)),
		noteBriefing: assign(({ context, event }) =>
			work.briefingRead(context, only(event, 'briefing.read'))
		),
		noteRoom: assign(({ event }) => ({ lastAt: event.at, room: only(event, 'room.read') })),
		startWait: assign(({ event }) => ({ waitSinceAt: event.at })),
		countWax: assign(({ context }) => ({ waxCoats: context.waxCoats + 1, waitSinceAt: null })),
		countFilm: assign(({ context }) => ({ filmPasses: context.filmPasses + 1, waitSinceAt: null })),
		request: assign(({ event }) => ({ holdRequestedAt: event.at })),
		sign: assign(({ context, event }) => signing.signed(context, only(event, 'hold.signed'))),
		sendBack: assign(({ context, event }) =>
			wayBack.sentBack(context, only(event, 'hold.sentBack'))
		),
		noteWeighing: assign(({ context, event }) =>
			cups.cupWeighed(context, only(event, 'cup.weighed'))
		),
		noteMixing: assign(({ context, event }) => cups.cupMixed(context, event)),
		noteLaying: assign(({ context, event }) => cups.cupApplied(context, event)),
		dropCup: assign(({ context }) => cups.moveUp(context)),
		dropNext: assign({ cupAhead: null }),
		finishCoat: assign(({ context, event }) =>
			coats.coatFinished(context, only(event, 'coat.finished'))
		),
		noteNotBrushed: assign(({ context, event }) => coats.notBrushedBack(context, event)),
		noteWet: assign({ tackPassed: false }),
		noteTack: assign(({ context, event }) => coats.tackFound(context, only(event, 'tack.tested'))),
		nextCoat: assign(({ context }) => coats.nextCoat(context)),
		nextRound: assign(({ context, event }) =>
			coats.nextRound(context, only(event, 'coat.finished'))
		),
		noteMissed: assign(({ context, event }) => surface.windowMissed(context, event)),
		noteAbraded: assign(({ context, event }) =>
			surface.abraded(context, only(event, 'surface.abraded'))
		),
		noteAbradedAsOrdered: assign(({ context, event }) =>
			surface.abradedAsOrdered(context, only(event, 'surface.abraded'))
		),
		decide: assign(({ context, event }) =>
			deviations.decided(context, only(event, 'deviation.decided'))
		),
		trustAbraded: assign({ abraded: true }),
		noteThickness: assign(({ context, event }) =>
			findings.thicknessMeasured(context, only(event, 'thickness.measured'))
		),
		addCoat: assign(({ context, event }) =>
			moreCoats.coatAdded(context, only(event, 'coat.added'))
		),
		addRound: assign(({ context, event }) =>
			moreCoats.roundAdded(context, only(event, 'coat.added'))
		),
		noteShell: assign(({ event }) => ({ finishedAt: event.at, windowClosesAt: null })),
		noteLoose: assign(({ context, event }) =>
			findings.looseFrame(context, only(event, 'frame.refitted'))
		),
		notePeel: assign(({ context, event }) => findings.peeled(context, only(event, 'glove.peeled'))),
		noteInspection: assign(({ context, event }) =>
			findings.inspected(context, only(event, 'mold.inspected'))
		),
		noteRepair: assign(({ context, event }) =>
			findings.repaired(context, only(event, 'mold.repaired'))
		),
		reportTrouble: assign(({ context, event }) =>
			wayBack.troubleReported(context, only(event, 'trouble.reported'))
		),
		closeTrouble: assign(({ event }) => ({ lastAt: event.at, trouble: null })),
		redoCoat: assign(({ context, event }) =>
			wayBack.redoCoat(context, only(event, 'trouble.mended'))
		),
		goBack: assign(({ context, event }, { to }: { to: PhaseId }) =>
			wayBack.begunAgain(context, only(event, 'trouble.mended'), to)
		),
		pause: assign(({ event }) => ({
			lastAt: event.at,
			pausedFor: only(event, 'job.paused').reason
		})),
		resume: assign(({ context, event }) => ({ ...work.worked(context, event), pausedFor: null })),
		takeOver: assign(({ event }) => ({ lastAt: event.at, worker: event.by })),
		end: assign(({ event }) => ({
			lastAt: event.at,
			endReason: 'reason' in event ? event.reason : null
		}))
	}
});
