import { filterBoard, isEnded } from '$lib/screen/board/arrange-board';
import { boardLine, withSection } from '$lib/screen/board/board-line';
import { boardQuery } from '$lib/screen/board/board-query';
import { now } from '$lib/server/clock';
import { namesById } from '$lib/server/job-or-error';
import { listJobs } from '$lib/server/jobs.repository';
import { maySign } from '$lib/server/people.repository';
import type { PageServerLoad } from './$types';

/** Up to here every mold is drawn; a longer board keeps to a mark. */
const DRAWN_AT_MOST = 24;

export const load: PageServerLoad = async ({ locals, url, depends }) => {
	depends('board:lines');
	const at = now();
	const query = boardQuery(url.searchParams);
	const viewer = {
		id: locals.person?.id ?? '',
		maySign: locals.person !== null && maySign(locals.person)
	};
	const [jobs, names] = await Promise.all([listJobs(locals.db), namesById(locals.db)]);
	const states = new Map(jobs.map(({ id, state }) => [id, state]));
	const all = jobs.map((job) => boardLine(job, names));
	const lines = filterBoard(all, query, viewer, at);
	const running = all.filter((line) => !isEnded(line));

	return {
		now: at,
		zone: locals.shop?.zone ?? 'UTC',
		query,
		viewer,
		counts: {
			all: all.length,
			running: running.length,
			supervisor: running.filter(({ ask }) => ask !== null).length,
			ended: all.length - running.length
		},
		lines:
			lines.length > DRAWN_AT_MOST
				? lines
				: lines.map((line) => withSection(line, states.get(line.id) ?? null))
	};
};
