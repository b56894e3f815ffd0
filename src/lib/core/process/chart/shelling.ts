import { base } from './base';
import { abrade, decide, discarded, laying, mixed, weighed } from './mixing';
import { bench } from './obey';

export const gloveCure = base.createStateConfig({
	id: 'gloveCure',
	entry: { type: 'enter', params: { phase: 'gloveCure' } },
	on: {
		'glove.tested': [
			{
				guard: { type: 'obeysAndPassed', params: { rules: ['afterLast', 'inHand', 'gloveCured'] } },
				target: '#trim',
				actions: ['work', 'noteAnew']
			},
			{ guard: bench('gloveCured'), actions: ['work', 'noteAnew'] }
		]
	}
});

export const trim = base.createStateConfig({
	id: 'trim',
	entry: { type: 'enter', params: { phase: 'trim' } },
	on: { 'glove.trimmed': { guard: bench(), target: '#shellRelease', actions: 'work' } }
});

/** The shell never goes on an unwaxed glove: there is no way round this state. */
export const shellRelease = base.createStateConfig({
	id: 'shellRelease',
	entry: { type: 'enter', params: { phase: 'shellRelease' } },
	initial: 'waxing',
	states: {
		waxing: {
			on: {
				'glove.waxed': {
					guard: bench('briefed', 'fullWaxCoats'),
					target: 'refitting',
					actions: 'work'
				}
			}
		},
		refitting: {
			on: {
				'frame.refitted': {
					guard: bench(),
					target: '#readyForShell',
					actions: ['work', 'noteLoose']
				}
			}
		}
	}
});

/** Small cups, one after another; a fresh cup bonds to the last while its window is open. */
export const shell = base.createStateConfig({
	id: 'shell',
	entry: { type: 'enter', params: { phase: 'shell' } },
	initial: 'weighing',
	states: {
		weighing: {
			always: { guard: 'lastRoundDone', target: 'finishing' },
			on: {
				'cup.weighed': { ...weighed, target: 'weighed' },
				'coat.finished': {
					guard: bench('enoughLaid', 'layersCounted'),
					actions: ['work', 'nextRound']
				},
				'surface.abraded': abrade('shell', 'windowShut')
			}
		},
		weighed: {
			on: {
				'cup.weighed': weighed,
				'cup.mixed': mixed,
				'cup.discarded': discarded,
				'surface.abraded': abrade('shell', 'windowShut')
			}
		},
		mixed: laying,
		missed: { on: { 'surface.abraded': abrade('shell') } },
		deciding: { on: { 'deviation.decided': decide } },
		finishing: {
			on: {
				'shell.finished': {
					guard: bench('shellThick'),
					target: '#shellCure',
					actions: ['work', 'noteShell']
				},
				'coat.added': { guard: bench(), target: 'weighing', actions: ['work', 'addRound'] }
			}
		}
	}
});

export const shellCure = base.createStateConfig({
	id: 'shellCure',
	entry: { type: 'enter', params: { phase: 'shellCure' } },
	on: {
		'shell.tested': [
			{
				guard: { type: 'obeysAndPassed', params: { rules: ['afterLast', 'inHand', 'shellCured'] } },
				target: '#readyToOpen',
				actions: ['work', 'noteAnew']
			},
			{ guard: bench('shellCured'), actions: ['work', 'noteAnew'] }
		]
	}
});
