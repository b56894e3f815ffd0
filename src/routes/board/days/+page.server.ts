import { clashesOf } from '$lib/core/process/ahead/clashes';
import { shopDays } from '$lib/core/process/ahead/shop-days';
import { workingTimes } from '$lib/core/plan/shift-hours';
import { drawnLine, lineAhead, placedLines } from '$lib/screen/board/days-line';
import { packDays } from '$lib/screen/board/packed-days';
import { now } from '$lib/server/clock';
import { namesById } from '$lib/server/job-or-error';
import { projectJobs } from '$lib/server/job-projection';
import type { PageServerLoad } from './$types';

/** The day and the next three. */
const DAYS = 4;
/** Work is placed beyond what is drawn, since a cure may end within it and a shift begin after it. */
const DAYS_PLACED = 21;
/** More than can be read; the rest is counted. */
const CLASHES_AT_MOST = 30;

export const load: PageServerLoad = async ({ locals, depends }) => {
	depends('board:lines');
	const at = now();
	const nowMs = Date.parse(at);
	const hours = locals.shop ?? { zone: 'UTC', shifts: [] };
	const [ahead, names] = await Promise.all([
		projectJobs(locals.db, lineAhead),
		namesById(locals.db)
	]);
	const days = shopDays(hours, nowMs, DAYS);
	const lines = placedLines(ahead, names, {
		nowMs,
		untilMs: days.at(-1)?.toMs ?? nowMs,
		times: workingTimes(hours, nowMs, DAYS_PLACED)
	});
	const clashes = clashesOf(lines, days);
	return {
		now: at,
		zone: hours.zone,
		days,
		names,
		packed: packDays(lines.map(drawnLine), nowMs),
		clashes: clashes.slice(0, CLASHES_AT_MOST),
		moreClashes: Math.max(0, clashes.length - CLASHES_AT_MOST)
	};
};
