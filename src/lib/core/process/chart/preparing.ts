import { base } from './base';
import { bench } from './obey';

export const brief = base.createStateConfig({
	id: 'brief',
	entry: { type: 'enter', params: { phase: 'brief' } },
	on: {
		'brief.finished': {
			guard: bench('briefed', 'roomFits'),
			target: '#sealing',
			actions: 'work'
		}
	}
});

/** A porous pattern is sealed, coat by coat, each dried; a dense one passes through. */
export const sealing = base.createStateConfig({
	id: 'sealing',
	entry: { type: 'enter', params: { phase: 'pattern' } },
	initial: 'choosing',
	states: {
		choosing: {
			always: [{ guard: 'sealed', target: '#pattern' }, { target: 'brushing' }]
		},
		brushing: {
			on: {
				'sealer.applied': {
					guard: bench('briefed', 'takesSealer'),
					target: 'drying',
					actions: ['work', 'startWait']
				}
			}
		},
		drying: {
			on: {
				'sealer.dried': {
					guard: bench('sealerDry'),
					target: 'choosing',
					actions: ['work', 'countSealer']
				}
			}
		}
	}
});

/** Looked over and fixed. Where the sealer still drinks, another coat goes on. */
export const pattern = base.createStateConfig({
	id: 'pattern',
	entry: { type: 'enter', params: { phase: 'pattern' } },
	on: {
		'pattern.prepared': { guard: bench(), target: '#release', actions: 'work' },
		'sealer.applied': {
			guard: bench('briefed', 'takesSealer'),
			target: '#sealing.drying',
			actions: ['work', 'startWait']
		}
	}
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
	on: {
		'frame.fitted': {
			guard: bench('frameReleased'),
			target: '#readyToCoat',
			actions: ['work', 'noteFrame']
		}
	}
});
