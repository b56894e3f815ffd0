import { isEnded } from '$lib/screen/board/arrange-board';
import { unnamedLine, withWorker } from '$lib/screen/board/board-line';
import { now } from '$lib/server/clock';
import { namesById } from '$lib/server/job-or-error';
import { projectJobs } from '$lib/server/job-projection';
import { drawnLines } from '../drawn-lines.server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, depends }) => {
	depends('board:lines');
	const [all, names] = await Promise.all([
		projectJobs(locals.db, unnamedLine),
		namesById(locals.db)
	]);
	const running = all.filter((line) => !isEnded(line)).map((line) => withWorker(line, names));
	return {
		chrome: 'wall' as const,
		now: now(),
		zone: locals.shop?.zone ?? 'UTC',
		lines: await drawnLines(locals.db, running)
	};
};
