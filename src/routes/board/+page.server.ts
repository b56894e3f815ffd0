import { filterBoard, isEnded } from '$lib/screen/board/arrange-board';
import { unnamedLine, withWorker } from '$lib/screen/board/board-line';
import { boardQuery, type BoardQuery } from '$lib/screen/board/board-query';
import { now } from '$lib/server/clock';
import { namesById } from '$lib/server/job-or-error';
import { projectJobs } from '$lib/server/job-projection';
import { maySign } from '$lib/server/people.repository';
import { drawnLines } from './drawn-lines.server';
import type { PageServerLoad } from './$types';

const ENDED_TOO: ReadonlyArray<BoardQuery['status']> = ['all', 'ended'];

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
	const running = unnamed.filter((line) => !isEnded(line));
	// A shop's ended molds are many times those it works on: what is not asked for is not given a name.
	const asked = ENDED_TOO.includes(query.status) ? unnamed : running;
	const named = asked.map((line) => withWorker(line, names));
	const lines = filterBoard(named, query, viewer, at);

	return {
		now: at,
		zone: locals.shop?.zone ?? 'UTC',
		query,
		viewer,
		counts: {
			all: unnamed.length,
			running: running.length,
			supervisor: running.filter(({ ask }) => ask !== null).length,
			ended: unnamed.length - running.length
		},
		lines: await drawnLines(locals.db, lines)
	};
};
