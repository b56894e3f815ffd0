import type { HoldId } from '../events';
import { HOLDS } from '../holds';
import { base } from './base';
import { SUPERVISOR, bench, obeys } from './obey';

/** Where work goes when a phase is begun again. Extra coats and rounds start on an abraded surface. */
export const ENTRY = {
	brief: '#brief',
	pattern: '#pattern',
	release: '#release',
	frame: '#frame',
	detail: '#coating',
	build: '#coating.missed',
	gloveCure: '#gloveCure',
	trim: '#trim',
	shellRelease: '#shellRelease',
	shell: '#shell.missed',
	shellCure: '#shellCure',
	open: '#open',
	mark: '#mark',
	peel: '#peel',
	wash: '#wash',
	inspect: '#inspect',
	pour: '#pour',
	handover: '#handover'
} as const;

const repaired = {
	'mold.repaired': {
		guard: bench('repairAsked'),
		target: '#inspect',
		actions: ['work', 'noteRepair']
	}
} as const;

/** Before anybody is asked to sign, the mold may be inspected anew; the earlier finding is kept. */
const inspectedAnew = {
	'mold.inspected': {
		guard: bench('placesLookedAt', 'mayInspectAnew'),
		target: '#moldAccepted',
		actions: ['work', 'noteInspection']
	}
} as const;

/** What only the last hold point takes: a flaw is mended or let be, or the mold is rejected. */
const flawed = {
	...repaired,
	'deviation.decided': {
		guard: obeys(...SUPERVISOR, 'repairAsked'),
		actions: 'decide'
	},
	'mold.rejected': {
		guard: obeys(...SUPERVISOR),
		target: '#rejected',
		actions: 'end'
	}
} as const;

/** A hold point: asked for at the bench, then signed or sent back by somebody who did not do the work. */
export function holdPoint(hold: HoldId, next: `#${string}`) {
	return base.createStateConfig({
		id: hold,
		entry: { type: 'enterHold', params: { hold } },
		initial: 'unasked',
		states: {
			unasked: {
				on: {
					'hold.requested': {
						guard: bench('holdNamed', 'roomSurfaceRead'),
						target: 'asked',
						actions: ['work', 'request']
					},
					...(hold === 'moldAccepted' ? { ...repaired, ...inspectedAnew } : {})
				}
			},
			asked: {
				on: {
					'hold.signed': {
						guard: obeys(...SUPERVISOR, 'holdNamed', 'fitToAccept'),
						target: next,
						actions: 'sign'
					},
					'hold.sentBack': HOLDS[hold].sendBack.map((to) => ({
						guard: {
							type: 'obeysAndGoesTo' as const,
							params: { rules: [...SUPERVISOR, 'holdNamed', 'holdMayReturnTo'], to }
						},
						target: ENTRY[to],
						actions: 'sendBack' as const
					})),
					...(hold === 'moldAccepted' ? flawed : {})
				}
			}
		}
	});
}
