import { base } from './base';
import { bench } from './obey';

export const open = base.createStateConfig({
	id: 'open',
	entry: { type: 'enter', params: { phase: 'open' } },
	on: { 'mold.opened': { guard: bench(), target: '#mark', actions: 'work' } }
});

export const mark = base.createStateConfig({
	id: 'mark',
	entry: { type: 'enter', params: { phase: 'mark' } },
	on: { 'mold.marked': { guard: bench('keysNamed'), target: '#peel', actions: 'work' } }
});

export const peel = base.createStateConfig({
	id: 'peel',
	entry: { type: 'enter', params: { phase: 'peel' } },
	on: { 'glove.peeled': { guard: bench(), target: '#wash', actions: ['work', 'notePeel'] } }
});

export const wash = base.createStateConfig({
	id: 'wash',
	entry: { type: 'enter', params: { phase: 'wash' } },
	on: { 'glove.washed': { guard: bench(), target: '#inspect', actions: 'work' } }
});

export const inspect = base.createStateConfig({
	id: 'inspect',
	entry: { type: 'enter', params: { phase: 'inspect' } },
	on: {
		'mold.inspected': {
			guard: bench('placesLookedAt'),
			target: '#moldAccepted',
			actions: ['work', 'noteInspection']
		}
	}
});

/** The first part: poured, released, and poured again when it comes out faulty. */
export const pour = base.createStateConfig({
	id: 'pour',
	entry: { type: 'enter', params: { phase: 'pour' } },
	initial: 'pouring',
	states: {
		pouring: {
			on: {
				'part.poured': {
					guard: bench('briefed'),
					target: 'setting',
					actions: ['work', 'startWait']
				}
			}
		},
		setting: {
			on: {
				'part.released': [
					{
						guard: { type: 'obeysAndPassed', params: { rules: ['afterLast', 'inHand'] } },
						target: '#handover',
						actions: 'work'
					},
					{ guard: bench(), target: 'pouring', actions: 'work' }
				]
			}
		}
	}
});

export const handover = base.createStateConfig({
	id: 'handover',
	entry: { type: 'enter', params: { phase: 'handover' } },
	on: { 'mold.handedOver': { guard: bench(), target: '#handedOver', actions: ['work', 'end'] } }
});
