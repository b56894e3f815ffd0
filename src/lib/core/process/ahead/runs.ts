import type { Stretch } from './place-ahead';

/** A wait no longer than this does not send anybody away from the mold; choice of the board. */
const SHORT_MS = 3_600_000;

/**
 * The same days with work that nothing presses drawn together: coats of wax with their hazing are one morning's
 * work, named by the first and the last of it. Windows, holds and long waits stay as they are.
 */
export function asRuns(stretches: readonly Stretch[]): Stretch[] {
	const runs: Stretch[] = [];
	let between: Stretch | null = null;
	for (const stretch of stretches) {
		const run = runs.at(-1);
		const isShortWait = stretch.kind === 'wait' && stretch.toMs - stretch.fromMs <= SHORT_MS;
		if (isShortWait && run && isLoose(run) && stretch.fromMs === run.toMs) {
			between = stretch;
			continue;
		}
		const reachesMs: number | undefined = between?.toMs ?? run?.toMs;
		if (run && isLoose(run) && isLoose(stretch) && stretch.fromMs === reachesMs) {
			run.toMs = stretch.toMs;
			run.title = `${run.title.split(' … ')[0]} … ${stretch.title}`;
		} else {
			// The wait led to something else, so it stands for itself.
			if (between) runs.push(between);
			runs.push({ ...stretch });
		}
		between = null;
	}
	return between ? [...runs, between] : runs;
}

function isLoose({ kind, latestMs, isOutside }: Stretch): boolean {
	return kind === 'work' && latestMs === null && !isOutside;
}
