import type { Db } from './database';
import { listJobs, type JobLine } from './jobs.repository';

const LONGEST = 120;
/** What may stand before the number of a mold: "Cap, mold 2", "Cap, mold 2: glove mold". */
const NUMBERED = /^, mold (\d{1,6})(?!\d)/;

/** The name that a new mold of this pattern gets: "Cap, mold 3", with the number after the highest given so far. */
export async function nextMoldTitle(db: Db, patternName: string): Promise<string> {
	const numbers = (await listJobs(db)).map((line) => numberOf(line, patternName));
	const suffix = `, mold ${Math.max(0, ...numbers) + 1}`;
	return patternName.slice(0, LONGEST - suffix.length).trimEnd() + suffix;
}

/** Which mold of the pattern a line is; 0 for a mold of another one, 1 for one that has no number. */
function numberOf({ title, plan }: JobLine, patternName: string): number {
	const stem = patternName.slice(0, LONGEST - ', mold 1'.length).trimEnd();
	const number = title.startsWith(stem) && NUMBERED.exec(title.slice(stem.length))?.[1];
	if (number) return Number(number);
	return plan?.inputs.pattern.name === patternName ? 1 : 0;
}

/** Why a mold cannot be called this, or null when it can: a running mold has the name already. */
export async function titleRefusal(db: Db, title: string, jobId?: string): Promise<string | null> {
	const same = (await listJobs(db)).some(
		(line) =>
			line.id !== jobId &&
			line.state?.snapshot.status === 'active' &&
			plain(line.title) === plain(title)
	);
	return same
		? `A running mold is called “${title}” already; accepted: a name that no running mold has.`
		: null;
}

const plain = (title: string) => title.trim().replace(/\s+/g, ' ').toLowerCase();
