import type { Plan } from '$lib/core/plan/plan';

/** Vapor that is still in the room when the calendar goes on with the next step. */
export interface AirAfter {
	/** Place of the step in the plan's air. */
	index: number;
	substance: string;
	materialName: string;
	clearWaitS: number;
	/** The air is at a tenth of the limit, by the numbers, from then on. */
	untilAt: string;
	/** What the calendar has begun meanwhile. */
	meanwhile: string;
}

/** Every vapor whose time to clear runs into the next step: the calendar does not wait for it. */
export function airAfter({ air, calendar }: Pick<Plan, 'air' | 'calendar'>): AirAfter[] {
	return (air?.steps ?? []).flatMap((step, index) => {
		const { phase, substance, materialName, clearWaitS } = step;
		const last = calendar.findLastIndex((entry) => entry.phase === phase);
		const endAt = calendar[last]?.endAt;
		if (!clearWaitS || endAt === undefined) return [];
		const untilMs = Date.parse(endAt) + clearWaitS * 1000;
		const next = calendar
			.slice(last + 1)
			.find(({ kind, startAt }) => kind === 'work' && Date.parse(startAt) < untilMs);
		if (!next) return [];
		const untilAt = new Date(untilMs).toISOString();
		return [{ index, substance, materialName, clearWaitS, untilAt, meanwhile: next.title }];
	});
}
