import { withSection, type BoardLine } from '$lib/screen/board/board-line';
import type { Db } from '$lib/server/database';
import { isDamaged } from '$lib/server/job-file';
import { findJob } from '$lib/server/jobs.repository';

/** Up to here every mold is drawn; a longer board keeps to a mark. */
const DRAWN_AT_MOST = 24;

/** The lines with their molds' sections, as long as they are few. */
export async function drawnLines(db: Db, lines: BoardLine[]): Promise<BoardLine[]> {
	if (lines.length > DRAWN_AT_MOST) return lines;
	return Promise.all(
		lines.map(async (line) => {
			const job = await findJob(db, line.id);
			return withSection(line, job && !isDamaged(job) ? job.state : null);
		})
	);
}
