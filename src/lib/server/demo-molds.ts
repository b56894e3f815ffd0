import { coatAtWork, type ProcessContext } from '$lib/core/process/context';
import { addSeconds } from '$lib/core/process/instant';
import type { Mishap, RehearsalOptions } from '$lib/core/process/rehearsal';
import { act, waiting } from '$lib/core/process/rehearsal-act';
import { weighing } from '$lib/core/process/rehearsal-cups';

/** One mold of the invented shop: who builds which pattern, how far it has come, and what went wrong. */
export interface DemoMold {
	pattern: string;
	/** Told apart on the board by a number, where a pattern has several molds. */
	number: number;
	worker: string;
	supervisor: string;
	daysBefore: number;
	/** At work on it; one when left out. */
	people?: number;
	/** The second one, who mixes while the first lays. */
	mixer?: string;
	until: RehearsalOptions['until'];
	mishaps?: Mishap[];
	/** The instant of the log that falls `offsetS` after the seeding: by default its last entry. */
	anchor?: (context: ProcessContext) => string;
	offsetS: number;
}

const MIN = 60;
const HOUR = 3600;
const DAY = 86_400;

/** The coat at work, counted from 0, was finished just now. */
const laid = (coatIndex: number) => (c: ProcessContext) =>
	c.coatIndex === coatIndex && c.laidG > 0 && c.finishedAt === c.laidAt;
/** The coat below has passed its test; no cup is weighed for this one yet. */
const ready = (coatIndex: number) => (c: ProcessContext) =>
	c.phase === 'build' && c.coatIndex === coatIndex && c.laidG === 0 && c.cup === null;

/** Over-poured by a twelfth of its first part, then put right by adding the others. */
const overPoured = (coatIndex: number): Mishap => ({
	when: ready(coatIndex),
	acts: (c) => {
		const first = coatAtWork(c)?.fractions[0]?.part ?? '';
		const parts = coatAtWork(c)?.fractions.map(({ part }) => part) ?? [];
		const all = Object.fromEntries(parts.map((part) => [part, 1.08]));
		return [weighing(c, { [first]: 1.08 }), weighing(c, all)];
	}
});

const missedWindow = (coatIndex: number): Mishap => ({
	when: ready(coatIndex),
	acts: (c) => [
		waiting(act({ type: 'tack.tested', result: 'hard' }, 90), c.windowClosesAt, 25 * MIN),
		act(
			{
				type: 'surface.abraded',
				grit: 'P120',
				wiped: true,
				dried: true,
				reason: 'The crew was held up by a delivery; the coat had gone hard.'
			},
			20 * MIN
		)
	]
});

/** Molds in different phases, so that every screen has something to show. */
export const DEMO_MOLDS: readonly DemoMold[] = [
	{
		pattern: 'demo-bollard-cap',
		number: 1,
		worker: 'priya',
		supervisor: 'tendai',
		daysBefore: 1,
		until: laid(1),
		anchor: (c) => addSeconds(c.finishedAt ?? c.lastAt, coatAtWork(c)?.tackTestS ?? 0),
		offsetS: -1 * MIN
	},
	{
		pattern: 'demo-relief-panel',
		number: 1,
		worker: 'yusuf',
		supervisor: 'marisol',
		daysBefore: 1,
		until: ready(3),
		anchor: (c) => c.windowClosesAt ?? c.lastAt,
		offsetS: 12 * MIN
	},
	{
		pattern: 'demo-bollard-cap',
		number: 2,
		worker: 'leilani',
		supervisor: 'marisol',
		daysBefore: 2,
		until: (c) => c.hold === 'readyForShell' && c.holdRequestedAt !== null,
		offsetS: -18 * MIN
	},
	{
		pattern: 'demo-relief-panel',
		number: 2,
		worker: 'mateusz',
		supervisor: 'tendai',
		daysBefore: 1,
		until: (c) => c.trouble !== null,
		mishaps: [
			{
				when: laid(2),
				acts: () => [
					act(
						{
							type: 'trouble.reported',
							trouble: 'bubbles',
							place: 'Lower left, over the reeds',
							note: 'Foam all through the coat after six minutes. Part A had stood open since the morning.'
						},
						6 * MIN
					)
				]
			}
		],
		offsetS: -25 * MIN
	},
	{
		pattern: 'demo-newel-cap',
		number: 1,
		worker: 'anh',
		supervisor: 'tendai',
		daysBefore: 1,
		until: 'gloveCure',
		anchor: (c) => addSeconds(c.finishedAt ?? c.lastAt, c.plan.gloveCure.testS),
		offsetS: 5 * HOUR + 20 * MIN
	},
	{
		pattern: 'demo-bollard-cap',
		number: 3,
		worker: 'anh',
		supervisor: 'marisol',
		daysBefore: 1,
		until: (c) => c.deviations.some(({ blocking, decided }) => blocking && !decided),
		mishaps: [overPoured(1), missedWindow(2)],
		offsetS: -8 * MIN
	},
	{
		pattern: 'demo-relief-panel',
		number: 3,
		worker: 'yusuf',
		supervisor: 'tendai',
		daysBefore: 2,
		people: 2,
		mixer: 'leilani',
		until: (c) => c.phase === 'shell' && c.cupsLaid === 1 && c.cupAhead !== null,
		offsetS: -3 * MIN
	},
	{
		pattern: 'demo-newel-cap',
		number: 2,
		people: 2,
		mixer: 'priya',
		worker: 'yusuf',
		supervisor: 'marisol',
		daysBefore: 6,
		until: 'end',
		mishaps: [overPoured(1)],
		offsetS: -2 * DAY
	},
	{
		pattern: 'demo-small-tile',
		number: 1,
		worker: 'priya',
		supervisor: 'tendai',
		daysBefore: 2,
		until: (c) => c.pausedFor !== null,
		mishaps: [
			{
				when: (c) => c.phase === 'trim',
				acts: () => [
					act({ type: 'job.paused', reason: 'The trimming knife is away for grinding.' }, 10 * MIN)
				]
			}
		],
		offsetS: -3 * HOUR
	},
	{
		pattern: 'demo-small-tile',
		number: 2,
		worker: 'leilani',
		supervisor: 'marisol',
		daysBefore: 5,
		until: (c) => c.endReason !== null,
		mishaps: [
			{
				when: (c) => c.phase === 'pattern',
				acts: () => [
					act(
						{
							type: 'job.abandoned',
							reason: 'The printed tile had warped. A new one is being printed.'
						},
						30 * MIN
					)
				]
			}
		],
		offsetS: -4 * DAY
	}
];
