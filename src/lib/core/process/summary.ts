import type { TroubleId } from '../content/vocabulary';
import { ENGLISH } from '../language/words';
import { openDeviations } from './changes/deviations';
import { ACT_LABELS } from './act-labels';
import type { HoldId } from './events';
import { contextOf, type JobState } from './job';
import { stopAt, stopsOf } from './progress';
import type { Window } from './step';
import { STEP_TABLE } from './step-table';
import { statePath } from './state-path';
import { PHASE_TITLES } from './titles';
import { windowAt } from './windows';

export type JobStatus = 'open' | 'paused' | 'in trouble' | 'handed over' | 'abandoned' | 'rejected';

/** One line of the board. */
export interface JobSummary {
	jobId: string;
	title: string;
	phase: string;
	phaseTitle: string;
	/** Title of the step at work. */
	step: string;
	nextAct: string;
	/** What comes next once the window in `window` has shut; null when that changes nothing. */
	nextActPast: string | null;
	worker: string | null;
	window: Window | null;
	hold: HoldId | null;
	/** A signature was asked for, a deviation waits, or a trouble needs another's word. */
	needsSupervisor: boolean;
	trouble: TroubleId | null;
	status: JobStatus;
	openDeviations: number;
	progress: { done: number; of: number };
	lastAt: string;
}

const ENDS: Record<string, JobStatus> = {
	handedOver: 'handed over',
	abandoned: 'abandoned',
	rejected: 'rejected',
	paused: 'paused',
	troubled: 'in trouble'
};

export function jobSummary(state: JobState): JobSummary {
	const c = contextOf(state);
	const path = statePath(state.snapshot);
	const row = STEP_TABLE[path];
	const status = ENDS[path] ?? 'open';
	const isEnded = state.snapshot.status !== 'active';
	const stops = stopsOf(c);
	const first = row?.acts[0];

	return {
		jobId: state.jobId,
		title: state.title,
		phase: c.phase,
		phaseTitle: PHASE_TITLES[c.phase],
		step: row?.says(ENGLISH, c).title ?? '',
		nextAct: first && !isEnded ? ACT_LABELS[first] : '',
		nextActPast: isEnded ? null : actPast(path),
		worker: c.worker,
		window: isEnded ? null : windowAt(path, c),
		hold: c.hold,
		needsSupervisor:
			!isEnded &&
			(path.endsWith('.asked') ||
				path.endsWith('.deciding') ||
				path === 'thickness.thin' ||
				status === 'in trouble'),
		trouble: c.trouble?.id ?? null,
		status,
		openDeviations: openDeviations(c.deviations).length,
		progress: { done: isEnded ? stops.length : stopAt(c, stops), of: stops.length },
		lastAt: state.lastAt
	};
}

/** The window of a surface shuts on it till it is abraded, that of a mixed cup on the cup. */
function actPast(path: string): string | null {
	if (/\.(weighing|weighed)$/.test(path)) return ACT_LABELS['surface.abraded'];
	return path.endsWith('.mixed') ? ACT_LABELS['cup.discarded'] : null;
}
