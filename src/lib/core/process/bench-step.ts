import { ENGLISH, type Words } from '../language/words';
import { actsAt } from './bench-acts';
import { amountsAt } from './bench-amounts';
import { cupAhead } from './cup-ahead';
import { batchAtWork, type ProcessContext } from './context';
import { isOverdue, mixingOf } from './cup-life';
import { cupLife, isMuchLarger, massInCup } from './cup-mass';
import type { ProcessEvent } from './events';
import { contextOf, type JobState } from './job';
import { nextCup } from './next-cup';
import { placesAtStep } from './places-at-step';
import { stopAt, stopsOf } from './progress';
import { rule } from './rules';
import { statePath } from './state-path';
import { STEP_TABLE, slugFor } from './step-table';
import { nearSteps } from './near-steps';
import type { BenchStep, Viewer } from './step';
import { isHurting } from './troubles';
import { windowAt, windowBeside } from './windows';

/**
 * The one thing at a time for the bench: what to do, how much, until when, and which acts the
 * machine takes, in the words of one language. `viewer` is who looks and when: what that person may not do comes with its reason.
 */
export function benchStep(state: JobState, viewer: Viewer, w = ENGLISH): BenchStep {
	const c = contextOf(state);
	const path = statePath(state.snapshot);
	const shown = pathNow(state, path, viewer.at);
	const row = STEP_TABLE[shown];
	if (!row) throw new Error(`no bench step for the state ${path}`);
	const isLate = /\.(mixed|weighed)$/.test(shown) && isOverdue(c, viewer.at);
	const stops = stopsOf(c, w);
	const said = row.says(w, c);
	const at = state.snapshot.status === 'active' ? stopAt(c, stops) : stops.length;
	// What is done to the surface below comes before the coat or round at work, which then is the next one.
	const isBelow =
		/\.(missed|deciding)$/.test(shown) || (shown !== path && shown === 'coating.curing');
	const then = isBelow ? at : at + 1;
	const near = isBelow || c.hold || c.trouble ? [] : nearSteps(shown, c, w);

	return {
		phase: c.phase,
		slug: slugFor(shown, c),
		title: said.title,
		what: isLate ? w.steps.late : said.what + largeLine(shown, c, w),
		amounts: amountsAt(shown, c, w),
		...clocksAt(path, c, w),
		mixing: shown.endsWith('.weighed') ? mixingOf(c) : null,
		acts: actsAt(state, row.acts, viewer, w),
		ahead: cupAhead(c),
		places: placesAtStep(c),
		progress: { done: at, of: stops.length },
		next: [...near, ...stops.slice(then).map(({ title }) => title)].slice(0, 2),
		hold: c.hold,
		coatIndex: c.phase === 'detail' || c.phase === 'build' ? c.coatIndex : null,
		roundIndex: c.phase === 'shell' ? c.roundIndex : null
	};
}

/** The clocks of a state. While somebody is hurt, or may be, they stand aside: what helps comes first. */
function clocksAt(
	path: string,
	c: ProcessContext,
	w: Words
): Pick<BenchStep, 'window' | 'windowBeside'> {
	const window = windowAt(path, c, w);
	return c.trouble !== null && isHurting(c.trouble.id)
		? { window: null, windowBeside: window }
		: { window, windowBeside: windowBeside(path, c, w) };
}

/** What is said of a cup in hand that is much heavier than planned; empty for any other. */
function largeLine(shown: string, c: ProcessContext, { steps }: Words): string {
	const batch = batchAtWork(c);
	if (!batch?.cupLives || !c.cup || !/\.(mixed|weighed)$/.test(shown)) return '';
	const massG = massInCup(c.cup.massesG);
	const plannedG = nextCup(c)?.cup.massG ?? batch.largestCupG;
	if (!isMuchLarger(massG, plannedG)) return '';
	return steps.largeCup({
		massG: Math.round(massG),
		plannedG: Math.round(plannedG),
		workingMin: Math.floor(cupLife(batch, massG).workingS / 60)
	});
}

/**
 * The state to show: a surface whose window shut while nobody touched it is one to abrade, and one
 * that has not passed its fingertip test is one to test, before anything is weighed for it.
 */
function pathNow(state: JobState, path: string, at: string): string {
	if (!path.endsWith('.weighing') && !path.endsWith('.weighed')) return path;
	const c = contextOf(state);
	const probe = { type: 'surface.abraded', by: c.worker ?? '', at } as ProcessEvent;
	if (rule('windowShut').holds(c, probe)) {
		return c.phase === 'shell' ? 'shell.missed' : 'coating.missed';
	}
	return rule('tackPassed').holds(c, probe) ? path : 'coating.curing';
}
