import type { PhaseId } from '../../content/vocabulary';
import type { Plan } from '../../plan/plan';
import { batchAtWork, type ProcessContext } from '../context';
import { secondsBetween } from '../instant';
import { contextOf, type JobState } from '../job';
import { statePath } from '../state-path';
import { windowAt } from '../windows';

/** One piece of work or one wait that a mold still has before it. */
export interface AheadTask {
	id: string;
	title: string;
	kind: 'work' | 'wait';
	/** Seconds, 0 or more. */
	lengthS: number;
	/** For a wait: seconds after it began at which its window shuts; null when it never does. */
	closesS: number | null;
	/** Only a supervisor can do it. */
	isHold: boolean;
}

/** What is left of a mold, as durations: the same for as long as nothing is entered. */
export interface WayAhead {
	/** The first one is at work. */
	tasks: AheadTask[];
	/** The times that the log has already set for the first one. */
	window: { label: string; sinceAt: string; opensAt: string; closesAt: string | null } | null;
	/** The start that the plan was accepted with, while the mold is still being briefed; nothing is planned before it. */
	notBeforeAt: string | null;
	/** Paused or in trouble: nothing goes on until somebody says so, but a window still shuts. */
	isHeld: boolean;
}

/** Laying the rest of a coat takes no less than this. */
const LEAST_S = 60;

/**
 * What the plan still asks for from where the mold stands. Lengths are the plan's; the coat or round at work
 * counts by what of it is not laid yet. Empty for a mold that has ended, and for plans without a calendar.
 */
export function wayAhead(state: JobState): WayAhead {
	const c = contextOf(state);
	const path = statePath(state.snapshot);
	if (state.snapshot.status !== 'active')
		return { tasks: [], window: null, notBeforeAt: null, isHeld: false };

	const isHeld = path === 'paused' || path === 'troubled';
	const tasks = withAddedCoats(inOrderOfWork(c.plan.calendar), c).map(taskOf);
	const at = tasks.findIndex(({ id }) => id === placeOf(path, c));
	const left = at < 0 ? [] : tasks.slice(at);
	const window = windowAt(path, c);
	return {
		tasks: left.map((task, index) => (index === 0 ? { ...task, ...restOf(task, c) } : task)),
		window: window && {
			label: window.label,
			sinceAt: window.sinceAt,
			opensAt: window.opensAt,
			closesAt: window.closesAt
		},
		notBeforeAt: c.phase === 'brief' ? c.plan.inputs.startAt : null,
		isHeld
	};
}

type Entry = Plan['calendar'][number];

function taskOf({ id, title, kind, startAt, endAt, closesAt }: Entry): AheadTask {
	return {
		id,
		title,
		kind,
		lengthS: secondsBetween(startAt, endAt),
		closesS: closesAt === null ? null : secondsBetween(startAt, closesAt),
		isHold: id.startsWith('hold-')
	};
}

/** The bench seals before it prepares; the calendar lists preparing first. */
function inOrderOfWork(calendar: readonly Entry[]): Entry[] {
	const seals = calendar.filter(({ id }) => id.startsWith('seal-'));
	return calendar.flatMap((entry) => {
		if (entry.id === 'pattern') return [...seals, entry];
		return entry.id.startsWith('seal-') ? [] : [entry];
	});
}

/** Coats that were added at the bench take as long as the last planned one. */
function withAddedCoats(calendar: readonly Entry[], c: ProcessContext): Entry[] {
	const planned = c.plan.coats.length;
	const last = calendar.filter(({ id }) => id.startsWith(`coat-${planned}`));
	const added = c.coats.slice(planned).flatMap((coat, i) =>
		last.map((entry) => ({
			...entry,
			id: entry.id.replace(`coat-${planned}`, `coat-${planned + i + 1}`),
			title: entry.kind === 'work' ? coat.title : entry.title
		}))
	);
	return calendar.flatMap((entry) => (entry.id === 'thickness' ? [...added, entry] : [entry]));
}

/** The calendar's entry for each phase, where the state alone does not say more. */
const OF_PHASE: Partial<Record<PhaseId, (c: ProcessContext) => string>> = {
	release: (c) =>
		c.waxCoats < c.plan.release.waxCoats ? `wax-${c.waxCoats + 1}` : `film-${c.filmPasses + 1}`,
	detail: (c) => `coat-${c.coatIndex + 1}`,
	build: (c) => `coat-${c.coatIndex + 1}`,
	shellRelease: () => 'back-wax-1',
	shell: (c) => `round-${Math.min(c.roundIndex + 1, c.rounds.length)}`
};

/** Where a state is a wait, or a second piece of work within its phase. */
const OF_STATE: Record<string, (c: ProcessContext) => string> = {
	'sealing.brushing': (c) => `seal-${c.sealerCoats + 1}`,
	'sealing.drying': (c) => `seal-${c.sealerCoats + 1}-dry`,
	'release.hazing': (c) => `wax-${c.waxCoats + 1}-haze`,
	'release.drying': (c) => `film-${c.filmPasses + 1}-dry`,
	'coating.brushing': (c) => `coat-${c.coatIndex + 1}-gel`,
	'coating.curing': (c) => `coat-${c.coatIndex + 1}-tack`,
	'thickness.measuring': () => 'thickness',
	'thickness.thin': () => 'thickness',
	'shellRelease.refitting': () => 'refit',
	'pour.pouring': ({ plan }) => (plan.pour.melt ? 'pour-melt' : 'pour'),
	'pour.setting': () => 'pour-wait'
};

function placeOf(path: string, c: ProcessContext): string {
	if (c.hold) return `hold-${c.hold}`;
	return (OF_STATE[path] ?? OF_PHASE[c.phase])?.(c) ?? c.phase;
}

function restOf(task: AheadTask, c: ProcessContext): Partial<AheadTask> {
	const batch = batchAtWork(c);
	const isLaying = task.kind === 'work' && /^(coat|round)-\d+$/.test(task.id);
	if (!isLaying || !batch || batch.massG <= 0) return {};
	const left = Math.max(0, 1 - c.laidG / batch.massG);
	return { lengthS: Math.max(LEAST_S, Math.round(task.lengthS * left)) };
}
