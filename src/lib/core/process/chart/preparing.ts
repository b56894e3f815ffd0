import { base, bench } from './base';

export const brief = base.createStateConfig({
	id: 'brief',
	entry: { type: 'enter', params: { phase: 'brief' } },
	on: {
		'brief.finished': {
			guard: bench('briefed', 'roomFits'),
			target: '#pattern',
			actions: 'work'
		}
	}
});

export const pattern = base.createStateConfig({
	id: 'pattern',
	entry: { type: 'enter', params: { phase: 'pattern' } },
	on: { 'pattern.prepared': { guard: bench(), target: '#release', actions: 'work' } }
});

/** Wax, each coat hazed then buffed; then film, each pass dried. Passed through when the pair needs none. */
export const release = base.createStateConfig({
	id: 'release',
	entry: { type: 'enter', params: { phase: 'release' } },
	initial: 'choosing',
	states: {
		choosing: {
			always: [
				{ guard: 'releaseDone', target: '#frame' },
				{ guard: 'waxLeft', target: 'waxing' },
				{ target: 'filming' }
			]
		},
		waxing: {
			on: {
				'wax.applied': {
					guard: bench('briefed', 'moreWax'),
					target: 'hazing',
					actions: ['work', 'startWait']
				}
			}
		},
		hazing: {
			on: {
				'wax.buffed': {
					guard: bench('waxHazed'),
					target: 'choosing',
					actions: ['work', 'countWax']
				}
			}
		},
		filming: {
			on: {
				'film.applied': {
					guard: bench('briefed', 'moreFilm'),
					target: 'drying',
					actions: ['work', 'startWait']
				}
			}
		},
		drying: {
			on: {
				'film.dried': {
					guard: bench('filmDry'),
					target: 'choosing',
					actions: ['work', 'countFilm']
				}
			}
		}
	}
});

export const frame = base.createStateConfig({
	id: 'frame',
	entry: { type: 'enter', params: { phase: 'frame' } },
	on: { 'frame.fitted': { guard: bench(), target: '#readyToCoat', actions: 'work' } }
});
