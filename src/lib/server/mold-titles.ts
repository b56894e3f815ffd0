import type { Db } from './database';
import { isDamaged } from './job-file';
import type { JobLine } from './job-line';
import { projectJobs } from './job-projection';
import { findJob } from './jobs.repository';

const LONGEST = 120;
/** What may stand before the number of a mold: "Cap, mold 2", "Cap, mold 2: glove mold". */
const NUMBERED = /^, mold (\d{1,6})(?!\d)/;

/** The name that a new mold of this pattern gets: "Cap, mold 3", with the number after the highest given so far. */
export async function nextMoldTitle(db: Db, patternName: string): Promise<string> {
	const molds = await projectJobs(db, moldOf);
	const numbers = molds.map((mold) => numberOf(mold, patternName));
	const suffix = `, mold ${Math.max(0, ...numbers) + 1}`;
	return patternName.slice(0, LONGEST - suffix.length).trimEnd() + suffix;
}

interface Mold {
	title: string;
	pattern: string | undefined;
}

function moldOf({ title, plan }: JobLine): Mold {
	return { title, pattern: plan?.inputs.pattern.name };
}

/** Which mold of the pattern a line is; 0 for a mold of another one, 1 for one that has no number. */
function numberOf({ title, pattern }: Mold, patternName: string): number {
	const stem = patternName.slice(0, LONGEST - ', mold 1'.length).trimEnd();
	const number = title.startsWith(stem) && NUMBERED.exec(title.slice(stem.length))?.[1];
	if (number) return Number(number);
	return pattern === patternName ? 1 : 0;
}

/**
 * Why a mold cannot be called this, or null when it can: a running mold has the name already. Asked inside
 * the transaction that opens it, the answer still holds when it is written.
 */
export async function titleRefusal(db: Db, title: string, jobId?: string): Promise<string | null> {
	for (const id of await openedAs(db, title)) {
		const job = id === jobId ? null : await findJob(db, id);
		if (job && !isDamaged(job) && job.state.snapshot.status === 'active') {
			return `A running mold is called “${title}” already; accepted: a name that no running mold has.`;
		}
	}
	return null;
}

/** Jobs that were opened under a title, by their first entries: cheap enough to ask inside a transaction. */
async function openedAs(db: Db, title: string): Promise<string[]> {
	const first = await db
		.selectFrom('event')
		.select(['job_id', 'event'])
		.where('seq', '=', 1)
		.execute();
	return first.filter(({ event }) => titleIn(event) === plain(title)).map(({ job_id }) => job_id);
}

/** The title in a first entry as it is stored; null in a damaged one, which is no name anybody can read. */
function titleIn(event: string): string | null {
	try {
		const { title } = JSON.parse(event) as { title?: unknown };
		return typeof title === 'string' ? plain(title) : null;
	} catch {
		return null;
	}
}

const plain = (title: string) => title.trim().replace(/\s+/g, ' ').toLowerCase();
