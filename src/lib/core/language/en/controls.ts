import { plural } from '../plural';

/** What buttons, clocks, gauges and notes say of themselves, wherever they stand. */
export const controls = {
	notices: { info: 'Note', ok: 'Done', caution: 'Caution', warning: 'Warning', danger: 'Danger' },
	optional: 'optional',
	hold: {
		idle: 'Hold',
		idleByKey: 'Hold, or press twice',
		holding: 'Keep holding',
		short: 'Hold longer',
		armed: 'Press again'
	},
	countdown: {
		test: {
			wait: { state: 'Wait', edge: 'until the test' },
			'test-now': { state: 'Test now', edge: 'until the window shuts' },
			closing: { state: 'Closing', edge: 'left to test and coat' },
			closed: { state: 'Closed', edge: 'past the window' }
		},
		work: {
			wait: { state: 'Wait', edge: 'until it opens' },
			'test-now': { state: 'Work', edge: 'left' },
			closing: { state: 'Hurry', edge: 'left' },
			closed: { state: 'Over', edge: 'past the time' }
		},
		noLimit: 'No limit',
		staysOpen: 'the window stays open',
		opens: (at: string) => `opens ${at}`,
		shuts: (at: string) => `, shuts ${at}`,
		ends: (at: string) => `ends ${at}`
	},
	duration: {
		hours: (n: number) => `${n} ${plural('en', n, { one: 'hour', other: 'hours' })}`,
		minutes: (n: number) => `${n} ${plural('en', n, { one: 'minute', other: 'minutes' })}`,
		seconds: (n: number) => `${n} ${plural('en', n, { one: 'second', other: 'seconds' })}`
	},
	gauge: {
		ratio: ({ first, second }: { first: string; second: string }) => `Ratio ${first} to ${second}`,
		nothing: 'Nothing weighed yet',
		inside: (percent: string) => `Inside, ${percent}`,
		tooMuch: ({ part, percent }: { part: string; percent: string }) =>
			`Too much ${part}, ${percent}`,
		tooLittle: ({ part, percent }: { part: string; percent: string }) =>
			`Too little ${part}, ${percent}`,
		plan: 'plan',
		more: (part: string) => `more ${part}`
	},
	howFound: (label: string) => `(how ${label} was found)`
};
export type ControlWords = typeof controls;
