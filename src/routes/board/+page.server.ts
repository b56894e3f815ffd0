import { filterBoard, isEnded } from '$lib/screen/board/arrange-board';
import { unnamedLine, withWorker } from '$lib/screen/board/board-line';
import { boardQuery } from '$lib/screen/board/board-query';
import { now } from '$lib/server/clock';
import { namesById } from '$lib/server/job-or-error';
import { projectJobs } from '$lib/server/job-projection';
import { maySign } from '$lib/server/people.repository';
import { drawnLines } from './drawn-lines.server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, url, depends }) => {
	depends('board:lines');
	const at = now();
	const query = boardQuery(url.searchParams);
	const viewer = {
		id: locals.person?.id ?? '',
		maySign: locals.person !== null && maySign(locals.person)
	};
	const [unnamed, names] = await Promise.all([
		projectJobs(locals.db, unnamedLine),
		namesById(locals.db)
	]);
	const all = unnamed.map((line) => withWorker(line, names));
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
		lines: await drawnLines(locals.db, lines)
	};
};
