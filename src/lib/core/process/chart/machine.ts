import { firstContext } from '../context';
import type { RuleName } from '../rules';
import { PHASES_BACK } from '../troubles';
import { base } from './base';
import { coating, thickness } from './coating';
import * as finishing from './finishing';
import { ENTRY, holdPoint } from './hold-point';
import { setAside } from './mixing';
import { SUPERVISOR, obeys } from './obey';
import * as preparing from './preparing';
import * as shelling from './shelling';

/** Facts anyone may add at any time: they change no step. */
const readings = {
	'briefing.read': { guard: obeys('afterLast'), actions: 'noteBriefing' },
	'room.read': { guard: obeys('afterLast'), actions: 'noteRoom' }
} as const;

const abandon = { guard: obeys('afterLast'), target: '#abandoned', actions: 'end' } as const;
const report = {
	guard: obeys('afterLast', 'troubleFitsPhase', 'troubleDescribed'),
	target: '#troubled',
	actions: 'reportTrouble'
} as const;
const takeOver = { guard: obeys('afterLast', 'notInHand'), actions: 'takeOver' } as const;
const MEND: RuleName[] = [
	'afterLast',
	'troubleMendedByAnother',
	'troubleMendedByCrew',
	'testedGood',
	'smokingCupAside',
	'troubleMayReturnTo'
];
/** Where work goes on when the cup it stood still with was set aside: with the one that moved up, or a new one. */
const onWithout = (rules: RuleName[]) =>
	(['mixed', 'weighed', 'none'] as const).flatMap((cup) =>
		(['shell', 'coating'] as const).map((where) => ({
			guard: {
				type: 'obeysAndGoesOnWithout' as const,
				params: { rules, cup, inShell: where === 'shell' }
			},
			target: `#${where}.${cup === 'none' ? ('weighing' as const) : cup}` as const,
			actions: 'closeTrouble' as const
		}))
	);
/** How work goes on after a trouble, when `rules` are obeyed. */
const waysOut = (rules: RuleName[]) => [
	{
		guard: { type: 'obeysAndReinspects' as const, params: { rules } },
		target: '#inspect',
		actions: 'closeTrouble' as const
	},
	...onWithout(rules),
	{
		guard: { type: 'obeysAndGoesTo' as const, params: { rules, to: 'resume' } },
		target: 'working.where',
		actions: 'closeTrouble' as const
	},
	{
		guard: { type: 'obeysAndRedoes' as const, params: { rules, inShell: true } },
		target: '#shell.weighing',
		actions: 'redoCoat' as const
	},
	{
		guard: { type: 'obeysAndRedoes' as const, params: { rules, inShell: false } },
		target: '#coating.weighing',
		actions: 'redoCoat' as const
	},
	...PHASES_BACK.map((to) => ({
		guard: { type: 'obeysAndGoesTo' as const, params: { rules, to } },
		target: ENTRY[to],
		actions: { type: 'goBack' as const, params: { to } }
	}))
];

/**
 * One mold from briefing to handover. Pure: no actors, no delays, no actions but `assign`. A wait is
 * a time in the plan and a rule on the event's own time, so the same log always gives the same state.
 */
export const processMachine = base.createMachine({
	id: 'mold',
	context: ({ input }) => firstContext(input.plan, input.openedAt),
	initial: 'working',
	states: {
		working: {
			initial: 'brief',
			// One trouble is ended, and another that was met before it is not.
			always: { guard: 'troubleLeft', target: 'troubled' },
			states: {
				brief: preparing.brief,
				sealing: preparing.sealing,
				pattern: preparing.pattern,
				release: preparing.release,
				frame: preparing.frame,
				readyToCoat: holdPoint('readyToCoat', '#coating'),
				coating,
				thickness,
				gloveCure: shelling.gloveCure,
				trim: shelling.trim,
				shellRelease: shelling.shellRelease,
				readyForShell: holdPoint('readyForShell', '#shell'),
				shell: shelling.shell,
				shellCure: shelling.shellCure,
				readyToOpen: holdPoint('readyToOpen', '#open'),
				open: finishing.open,
				mark: finishing.mark,
				peel: finishing.peel,
				wash: finishing.wash,
				inspect: finishing.inspect,
				moldAccepted: holdPoint('moldAccepted', '#pour'),
				pour: finishing.pour,
				handover: finishing.handover,
				where: { type: 'history', history: 'deep' }
			},
			on: {
				...readings,
				'job.takenOver': takeOver,
				'job.abandoned': abandon,
				'job.paused': { guard: obeys('afterLast'), target: 'paused', actions: 'pause' },
				'trouble.reported': report
			}
		},
		paused: {
			on: {
				...readings,
				'job.takenOver': takeOver,
				'job.abandoned': abandon,
				'trouble.reported': report,
				'job.resumed': {
					guard: obeys('afterLast', 'inHand'),
					target: 'working.where',
					actions: 'resume'
				}
			}
		},
		troubled: {
			id: 'troubled',
			on: {
				...readings,
				'job.takenOver': takeOver,
				'job.abandoned': abandon,
				'cup.discarded': setAside,
				'test.judged': { guard: obeys('afterLast', 'briefed', 'testAsked'), actions: 'noteTest' },
				'trouble.reported': {
					guard: obeys('afterLast', 'troubleFitsPhase', 'troubleDescribed', 'troubleIsAnother'),
					actions: 'reportTrouble'
				},
				'trouble.mended': waysOut(MEND),
				'trouble.decided': waysOut([
					...SUPERVISOR,
					'testedGood',
					'smokingCupAside',
					'troubleAnswered',
					'troubleMayReturnTo'
				])
			}
		},
		handedOver: { id: 'handedOver', type: 'final' },
		abandoned: { id: 'abandoned', type: 'final' },
		rejected: { id: 'rejected', type: 'final' }
	}
});
