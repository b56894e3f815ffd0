import type { PhaseId } from '$lib/core/content/vocabulary';
import { HOLDS } from '$lib/core/process/holds';
import { contextOf, type JobState } from '$lib/core/process/job';
import { sectionOfJob, type JobSection } from '$lib/core/process/section-of-job';
import { jobSummary, type JobStatus } from '$lib/core/process/summary';
import { TROUBLE_TITLES } from '$lib/core/process/titles';

/** What a mold waits for that only a supervisor can give. */
export type Ask = 'damage' | 'trouble' | 'deviation' | 'signature';

/** One mold as the board shows it; everything in it can be sent to the page. */
export interface BoardLine {
	id: string;
	title: string;
	status: JobStatus | 'damaged';
	phase: PhaseId | null;
	phaseTitle: string;
	step: string;
	nextAct: string;
	/** What comes next once its window has shut; null when that changes nothing. */
	nextActPast: string | null;
	/** Deviations that nobody has decided yet. */
	openDeviations: number;
	workerId: string | null;
	/** Name of who has it in hand; empty when nobody has. */
	worker: string;
	/** Ids of all who worked on it: none of them may sign it. */
	workers: string[];
	window: { label: string; opensAt: string; closesAt: string | null } | null;
	ask: { kind: Ask; text: string } | null;
	progress: { done: number; of: number };
	openedAt: string;
	lastAt: string;
	/** The mold's section, where the board is short enough to draw it. */
	section: JobSection | null;
}

interface Job {
	id: string;
	openedAt: string;
	title: string;
	state: JobState | null;
	damage: string | null;
}

/** One line of the board before people have names: the same for as long as the mold is where it was. */
export function unnamedLine(job: Job): BoardLine {
	return boardLine(job, {});
}

/** The line with its worker's name as it is among `names`, people by id. */
export function withWorker(line: BoardLine, names: Readonly<Record<string, string>>): BoardLine {
	return { ...line, worker: workerOf(line.workerId, names) };
}

function workerOf(id: string | null, names: Readonly<Record<string, string>>): string {
	return id === null ? '' : (names[id] ?? 'Somebody no longer listed');
}

/** One line of the board from a job as it stands. `names`: people by id. */
export function boardLine(job: Job, names: Readonly<Record<string, string>>): BoardLine {
	const { id, openedAt, title, state, damage } = job;
	if (!state) {
		return {
			id,
			title,
			status: 'damaged',
			phase: null,
			phaseTitle: '',
			step: 'Not worked on',
			nextAct: '',
			nextActPast: null,
			openDeviations: 0,
			workerId: null,
			worker: '',
			workers: [],
			window: null,
			ask: { kind: 'damage', text: damage ?? 'It can no longer be read.' },
			progress: { done: 0, of: 1 },
			openedAt,
			lastAt: openedAt,
			section: null
		};
	}
	const c = contextOf(state);
	const summary = jobSummary(state);
	const { status, phaseTitle, step, nextAct, nextActPast, progress, lastAt, window } = summary;
	return {
		id,
		title,
		status,
		phase: c.phase,
		phaseTitle,
		step,
		nextAct,
		nextActPast,
		openDeviations: summary.openDeviations,
		workerId: c.worker,
		worker: workerOf(c.worker, names),
		workers: c.workers,
		window: window && {
			label: window.label,
			opensAt: window.opensAt,
			closesAt: window.closesAt
		},
		ask: summary.needsSupervisor ? askOf(state) : null,
		progress,
		openedAt,
		lastAt,
		section: null
	};
}

function askOf(state: JobState): BoardLine['ask'] {
	const c = contextOf(state);
	if (c.trouble) {
		const { id, place } = c.trouble;
		return { kind: 'trouble', text: TROUBLE_TITLES[id] + (place ? `: ${place}` : '') };
	}
	const waiting = c.deviations.find(({ blocking, decided }) => blocking && !decided);
	if (waiting) return { kind: 'deviation', text: waiting.what };
	if (c.hold) return { kind: 'signature', text: HOLDS[c.hold].title };
	return {
		kind: 'deviation',
		text: `The glove measures ${c.thinnestMm ?? '?'} mm at its thinnest; the plan asks for ${c.plan.glove.leastMm} mm.`
	};
}

/** The line with its section to draw. */
export function withSection(line: BoardLine, state: JobState | null): BoardLine {
	return state ? { ...line, section: sectionOfJob(contextOf(state)) } : line;
}
