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
import { enteredAnew } from '../changes/taken-back';
import * as wayBack from '../changes/way-back';
import * as work from '../changes/work';
import { coatAtWork, type ProcessContext } from '../context';
import type { HoldId, ProcessEvent } from '../events';
import { HOLDS } from '../holds';
import { guards } from './guards';
import { mended, only } from './obey';

/** Types, guards and actions of the process; the states are in the files beside this one. */
export const base = setup({
	types: {
		context: {} as ProcessContext,
		events: {} as ProcessEvent,
		input: {} as { plan: Plan; openedAt: string }
	},
	guards,
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
		noteRoom: assign(({ context, event }) => work.roomRead(context, only(event, 'room.read'))),
		noteAnew: assign(({ context, event }) => enteredAnew(context, event)),
		startWait: assign(({ event }) => ({ waitSinceAt: event.at })),
		countSealer: assign(({ context }) => ({
			sealerCoats: context.sealerCoats + 1,
			waitSinceAt: null
		})),
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
		noteMixing: assign(({ context, event }) => cups.cupMixed(context, only(event, 'cup.mixed'))),
		noteLaying: assign(({ context, event }) => cups.cupApplied(context, event)),
		dropCup: assign(({ context, event }) => cups.moveUp(context, event)),
		dropNext: assign(({ context }) => cups.nextDropped(context)),
		dropBoth: assign(({ context, event }) => cups.bothDropped(context, event)),
		noteAside: assign({ isCupAside: true }),
		finishCoat: assign(({ context, event }) =>
			coats.coatFinished(context, only(event, 'coat.finished'))
		),
		noteNotBrushed: assign(({ context, event }) => coats.notBrushedBack(context, event)),
		noteWet: assign({ tackPassed: false }),
		noteWetBelow: assign(({ context }) => surface.foundWet(context)),
		noteTooSoon: assign(({ context, event }) =>
			coats.foundTooSoon(context, only(event, 'tack.tested'))
		),
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
		trustAbraded: assign({ abraded: true, isWet: false }),
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
		noteFrame: assign(({ context, event }) =>
			findings.frameFitted(context, only(event, 'frame.fitted'))
		),
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
		noteTest: assign(({ context, event }) => wayBack.tested(context, only(event, 'test.judged'))),
		closeTrouble: assign(({ context, event }) => ({
			lastAt: event.at,
			...wayBack.nextTrouble(context)
		})),
		redoCoat: assign(({ context, event }) => wayBack.redoCoat(context, mended(event))),
		goBack: assign(({ context, event }, { to }: { to: PhaseId }) =>
			wayBack.begunAgain(context, mended(event), to)
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
