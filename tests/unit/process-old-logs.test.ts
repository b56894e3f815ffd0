import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { eventSchema, type ProcessEvent } from '../../src/lib/core/process/events';
import { fold } from '../../src/lib/core/process/job';
import { handPlan } from '../fixtures/plan';

interface OldLog {
	detail: boolean;
	events: ProcessEvent[];
	/** What the machine of that version made of it. */
	leaves: { value: unknown; context: object; deviations: string[]; decided?: unknown[] };
}

describe.each([1, 2, 3, 4, 5])(
	'a log written under version %i of the process',
	(processVersion) => {
		const file = `tests/fixtures/logs/process-${processVersion}.json`;
		const logs = JSON.parse(readFileSync(file, 'utf8')) as OldLog[];
		const ends = logs.map(
			(log) => [JSON.stringify(log.leaves.value), log.events.length, log] as const
		);

		test.each(ends)('leads to %s after %i entries, as it did then', (_end, _count, log) => {
			const plan = handPlan({ detail: log.detail, processVersion });
			const events = log.events.map((event, i) => ({ id: `e-${i + 1}`, seq: i + 1, event }));
			const { snapshot } = fold(plan, events);
			expect(snapshot.value).toEqual(log.leaves.value);
			expect(snapshot.context).toMatchObject(log.leaves.context);
			expect(snapshot.context.deviations.map(({ what }) => what)).toEqual(log.leaves.deviations);
			const { decided } = log.leaves;
			if (decided) expect(snapshot.context.deviations.map((d) => d.decided)).toEqual(decided);
		});

		test('still reads, entry by entry', () => {
			const done = logs.find(({ leaves }) => leaves.value === 'handedOver');
			expect(done?.events.length).toBeGreaterThan(50);
			for (const event of done?.events ?? []) {
				expect(eventSchema.safeParse(event).error?.issues ?? [], event.type).toEqual([]);
			}
		});
	}
);
