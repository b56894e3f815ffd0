import { randomUUID } from 'node:crypto';
import { recommendedMaterials, type Demo } from '$lib/core/content/demo-data';
import { makePlan } from '$lib/core/plan/make-plan';
import type { Plan } from '$lib/core/plan/plan';
import type { LoggedEvent } from '$lib/core/process/events';
import { addSeconds } from '$lib/core/process/instant';
import { rehearseLive } from '$lib/core/process/rehearsal-live';
import type { DemoMold } from './demo-molds';

export interface RehearsedMold {
	jobId: string;
	plan: Plan;
	/** First entry: the opening. Every entry was judged by the machine. */
	log: LoggedEvent[];
}

/** The plan of one invented mold, with the materials its pattern recommends. */
export function demoPlan(demo: Demo, mold: DemoMold, startAt: string): Plan {
	const found = demo.patterns.find(({ id }) => id === mold.pattern);
	if (!found) throw new Error(`content/demo: no pattern has the id "${mold.pattern}"`);
	return makePlan({
		shop: demo.shop,
		pattern: { ...found.pattern, name: `${found.pattern.name}, mold ${mold.number}` },
		materials: recommendedMaterials(demo, found),
		people: mold.people ?? 1,
		startAt
	});
}

/**
 * One invented mold with the log that brought it where it is at `at`, done by the demo's own ids.
 *
 * @param content - hash by slug of the texts in force
 */
export function rehearseMold(
	demo: Demo,
	mold: DemoMold,
	{ at, content }: { at: string; content: Record<string, string> }
): RehearsedMold {
	const { worker, mixer, supervisor, until, mishaps = [], daysBefore, offsetS } = mold;
	const jobId = randomUUID();
	const { plan, log } = rehearseLive({
		jobId,
		hours: demo.shop,
		planAt: (startAt) => demoPlan(demo, mold, startAt),
		crew: { worker, supervisor, ...(mixer === undefined ? {} : { mixer }) },
		content,
		until,
		mishaps,
		daysBefore,
		anchor: mold.anchor ?? ((c) => c.lastAt),
		at: addSeconds(at, offsetS)
	});
	return { jobId, plan, log: log.map((logged) => ({ ...logged, id: randomUUID() })) };
}

/**
 * The same mold, done by the people of a store.
 *
 * @param personIds - ids in the store by ids in the demo
 * @throws Error when somebody in the log is not among them
 */
export function doneBy(
	{ jobId, plan, log }: RehearsedMold,
	personIds: ReadonlyMap<string, string>
): RehearsedMold {
	const idOf = (demoId: string): string => {
		const id = personIds.get(demoId);
		if (id === undefined) throw new Error(`content/demo: nobody has the id "${demoId}"`);
		return id;
	};
	const renamed = log.map((logged) => {
		const { event } = logged;
		const mixedBy =
			event.type === 'cup.mixed' && event.mixedBy ? { mixedBy: idOf(event.mixedBy) } : {};
		return { ...logged, event: { ...event, by: idOf(event.by), ...mixedBy } };
	});
	return { jobId, plan, log: renamed };
}
