import { base } from './base';
import { found } from './finding';
import { abrade, decide, discarded, laying, mixed, testBelow, weighed } from './mixing';
import { bench } from './obey';

/** A fingertip test of the coat just laid. */
const testCoat = [
	{ guard: found('wet', 'coat'), target: 'curing', actions: ['work', 'noteAnew', 'noteWet'] },
	{ guard: found('early', 'coat'), target: 'curing', actions: ['work', 'noteAnew', 'noteTooSoon'] },
	{
		guard: found('closed', 'coat'),
		target: 'missed',
		actions: ['work', 'noteAnew', 'noteTack', 'nextCoat', 'noteMissed']
	},
	{ guard: found('open', 'coat'), target: 'tested', actions: ['work', 'noteAnew', 'noteTack'] }
] as const;

/** Detail coats, then build coats: each weighed, mixed, laid, and waited for. */
export const coating = base.createStateConfig({
	id: 'coating',
	initial: 'weighing',
	states: {
		weighing: {
			entry: 'enterCoat',
			on: {
				'cup.weighed': { ...weighed, target: 'weighed' },
				'coat.finished': {
					guard: bench('enoughLaid'),
					target: 'laid',
					actions: ['work', 'finishCoat']
				},
				'tack.tested': testBelow,
				'surface.abraded': abrade('build', 'windowShut')
			}
		},
		weighed: {
			on: {
				'cup.weighed': weighed,
				'cup.mixed': mixed,
				'cup.discarded': discarded,
				'tack.tested': testBelow,
				'surface.abraded': abrade('build', 'windowShut')
			}
		},
		mixed: laying,
		laid: {
			always: [{ guard: 'brushesBack', target: 'brushing' }, { target: 'curing' }]
		},
		brushing: {
			on: {
				'coat.brushedBack': { guard: bench('brushBackDue'), target: 'curing', actions: 'work' },
				'tack.tested': testCoat.map((test) => ({
					...test,
					// Still wet: it can yet be brushed back.
					target: test.target === 'curing' ? undefined : test.target,
					actions:
						test.target === 'curing' ? test.actions : ([...test.actions, 'noteNotBrushed'] as const)
				}))
			}
		},
		curing: { on: { 'tack.tested': testCoat } },
		tested: {
			always: [
				{ guard: 'moreCoats', target: 'weighing', actions: 'nextCoat' },
				{ target: '#thickness' }
			]
		},
		missed: {
			entry: 'enterCoat',
			on: { 'surface.abraded': abrade('build') }
		},
		deciding: { on: { 'deviation.decided': decide } }
	}
});

/** Pin gauge at the planned points; a thin glove gets another coat, or a supervisor's word. */
export const thickness = base.createStateConfig({
	id: 'thickness',
	initial: 'measuring',
	states: {
		measuring: {
			on: {
				'thickness.measured': [
					{
						guard: { type: 'obeysAndThick', params: { rules: ['afterLast', 'inHand'] } },
						target: '#gloveCure',
						actions: ['work', 'noteAnew', 'noteThickness']
					},
					{ guard: bench(), target: 'thin', actions: ['work', 'noteAnew', 'noteThickness'] }
				]
			}
		},
		thin: {
			on: {
				'coat.added': { guard: bench(), target: '#coating', actions: ['work', 'addCoat'] },
				'thickness.measured': {
					guard: bench(),
					target: 'thin',
					actions: ['work', 'noteAnew', 'noteThickness']
				},
				'deviation.decided': [
					{
						guard: { type: 'obeysAndAccepted', params: { rules: ['afterLast', 'notOwnWork'] } },
						target: '#gloveCure',
						actions: 'decide'
					},
					{
						guard: { type: 'obeys', params: { rules: ['afterLast', 'notOwnWork'] } },
						actions: 'decide'
					}
				]
			}
		}
	}
});
