import { describe, expect, it, test } from 'vitest';
import { PHASE_IDS } from '../../src/lib/core/content/vocabulary';
import { batchesLaid } from '../../src/lib/core/process/as-built-batches';
import { eventSchema } from '../../src/lib/core/process/events';
import { addSeconds, secondsBetween } from '../../src/lib/core/process/instant';
import { contextOf, fold } from '../../src/lib/core/process/job';
import { rehearse, rehearseJob } from '../../src/lib/core/process/rehearsal';
import { act } from '../../src/lib/core/process/rehearsal-act';
import { weighing } from '../../src/lib/core/process/rehearsal-cups';
import { rehearseLive } from '../../src/lib/core/process/rehearsal-live';
import { withinShifts } from '../../src/lib/core/process/rehearsal-shift';
import { handPlan } from '../fixtures/plan';

const crew = { worker: 'ines', supervisor: 'okoro' };
const startAt = '2026-03-02T13:00:00.000Z';
const plan = handPlan({ detail: true });
const hours = {
	zone: 'America/Chicago',
	shifts: [1, 2, 3, 4, 5].map((weekday) => ({ weekday, from: '07:00', to: '15:30' }))
};

describe('a rehearsed mold', () => {
	it('goes from the briefing to the handover without a deviation', () => {
		const { log, state } = rehearseJob(plan, { until: 'end', startAt, crew });
		expect(log.at(-1)?.event.type).toBe('mold.handedOver');
		expect(contextOf(state).deviations).toEqual([]);
		expect(Object.keys(contextOf(state).signatures)).toHaveLength(4);
	});

	it('prepares the next cup while one is laid, when there are two at work', () => {
		const slow = handPlan({ detail: true, people: 2 });
		const shop = { ...slow.inputs.shop, brushingGPerMin: 60 };
		const forTwo = { ...slow, inputs: { ...slow.inputs, shop } };
		const { log, state } = rehearseJob(forTwo, {
			until: 'end',
			startAt,
			crew: { ...crew, mixer: 'amir' }
		});
		expect(contextOf(state).deviations).toEqual([]);
		const cups = batchesLaid(state).flatMap((section) => section.cups);
		const ahead = cups.filter((cup, i) => {
			const before = cups[i - 1]?.laidAt;
			return cup.number > 1 && before && cup.mixedAt && cup.mixedAt < before;
		});
		expect(ahead.length).toBeGreaterThan(1);
		expect(ahead.every(({ prepared }) => prepared)).toBe(true);
		// Whoever mixed it is named where that was not who weighed it.
		expect(new Set(ahead.map(({ mixedBy }) => mixedBy))).toEqual(new Set(['amir']));
		expect(cups.filter(({ prepared }) => !prepared).every(({ mixedBy }) => mixedBy === null)).toBe(
			true
		);
		for (const { workedS, workingS } of cups) expect(workedS).toBeLessThanOrEqual(workingS);
		expect(log.some(({ event }) => event.type === 'cup.discarded')).toBe(false);
	});

	it('folds to the state it was left in', () => {
		const { log, state } = rehearseJob(plan, { until: 'inspect', startAt, crew });
		expect(contextOf(fold(plan, log))).toEqual(contextOf(state));
	});

	it('posts only events that the edge would take', () => {
		const events = rehearse(plan, { until: 'end', startAt, crew });
		for (const event of events) expect(eventSchema.safeParse(event).error).toBeUndefined();
	});

	it('is the same every time', () => {
		const options = { until: 'end', startAt, crew } as const;
		expect(rehearse(plan, options)).toEqual(rehearse(plan, options));
	});

	test.each(PHASE_IDS)('can be stopped as it enters %s', (phase) => {
		const { state } = rehearseJob(plan, { until: phase, startAt, crew });
		expect(contextOf(state).phase).toBe(phase);
	});

	it('has no detail coats and no release where the plan has none', () => {
		const bare = handPlan({ release: false });
		const types = rehearse(bare, { until: 'end', startAt, crew }).map(({ type }) => type);
		expect(types).not.toContain('wax.applied');
		expect(types).not.toContain('coat.brushedBack');
	});

	it('begins coats and shell within the shifts', () => {
		const startable = withinShifts(hours);
		const events = rehearse(plan, { until: 'end', startAt, crew, startable });
		const local = events
			.filter(({ type }) => ['glove.tested', 'shell.tested', 'frame.fitted'].includes(type))
			.map(({ at }) =>
				new Date(at).toLocaleTimeString('en-GB', { timeZone: hours.zone, timeStyle: 'short' })
			);
		expect(local).toHaveLength(3);
		for (const time of local) expect(time >= '07:00' && time <= '15:30').toBe(true);
	});

	it('takes in a mishap once, and goes on after it', () => {
		const { log, state } = rehearseJob(plan, {
			until: 'end',
			startAt,
			crew,
			mishaps: [
				{
					when: (c) => c.phase === 'build' && c.laidG === 0 && c.cup === null,
					acts: (c) => [weighing(c, { A: 1.1 }), weighing(c, { A: 1.1, B: 1.1 })]
				},
				{
					when: (c) => c.phase === 'trim',
					acts: () => [act({ type: 'job.paused', reason: 'The blade is blunt.' }, 60)]
				}
			]
		});
		expect(state.snapshot.value).toBe('handedOver');
		expect(log.filter(({ event }) => event.type === 'job.paused')).toHaveLength(1);
		expect(log.filter(({ event }) => event.type === 'job.resumed')).toHaveLength(1);
	});

	it('says where it is stuck and why', () => {
		const stuck = () =>
			rehearse(plan, { until: 'end', startAt, crew: { worker: 'ines', supervisor: 'ines' } });
		expect(stuck).toThrow(/stuck in frame: .*nobody signs their own work/);
	});
});

describe('a mold that is alive at an instant', () => {
	// A workday morning, a Sunday night, and both days on which US clocks change in 2026.
	test.each([
		'2026-11-25T16:20:00Z',
		'2026-11-29T08:00:00Z',
		'2026-03-08T15:00:00Z',
		'2026-11-01T15:00:00Z'
	])('closes its window twelve minutes after %s', (now) => {
		const { log, plan: used } = rehearseLive({
			hours,
			planAt: (begin) => ({ ...plan, inputs: { ...plan.inputs, startAt: begin } }),
			crew,
			until: (c) => c.coatIndex === 2 && c.laidG === 0,
			daysBefore: 1,
			anchor: (c) => c.windowClosesAt ?? c.lastAt,
			at: addSeconds(now, 720)
		});
		const context = contextOf(fold(used, log));
		expect(secondsBetween(now, context.windowClosesAt ?? now)).toBe(720);
		expect(secondsBetween(context.lastAt, now)).toBeGreaterThan(0);
	});
});
