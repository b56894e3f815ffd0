import type { PhaseId } from '../content/vocabulary';
import type { Plan } from '../plan/plan';
import { planHash } from '../plan/plan-hash';
import type { ProcessContext } from './context';
import type { LoggedEvent, ProcessEvent } from './events';
import { addSeconds } from './instant';
import { advance, contextOf, openJob, type JobState } from './job';
import { act, bySupervisor, type RehearsedAct } from './rehearsal-act';
import { coatingActs, cupActs } from './rehearsal-cups';
import { finishingActs, shellFinished, shellingActs } from './rehearsal-finish';
import { TROUBLES } from './troubles';
import { briefActs, holdActs, preparingActs, roomIfDue } from './rehearsal-prepare';

/** Person ids. The supervisor never works at the bench, so may sign. */
export interface Crew {
	worker: string;
	supervisor: string;
	/** The second one at work, who mixes while the first lays; left out, nobody does. */
	mixer?: string;
}

/** Something that does not go as planned: acts put in once, the first time that `when` holds. */
export interface Mishap {
	when: (context: ProcessContext) => boolean;
	acts: (context: ProcessContext) => RehearsedAct[];
}

export interface RehearsalOptions {
	/** Where to stop: when a phase is entered, when a fact holds, or at the end of the job. */
	until: PhaseId | 'end' | ((context: ProcessContext) => boolean);
	startAt: string;
	crew: Crew;
	jobId?: string;
	/** Content hash by slug, as the job is opened with. */
	content?: Record<string, string>;
	mishaps?: Mishap[];
	/** The instant from which the crew is at work, at or after `at`; left out, it never goes home. */
	startable?: (at: string, context: ProcessContext) => string;
}

const UNKNOWN_HASH = '0'.repeat(64);
/** More events than any mold takes; a rehearsal that passes it goes in circles. */
const MOST_EVENTS = 5000;

function carefulActs(c: ProcessContext, { crew, content = {} }: RehearsalOptions): RehearsedAct[] {
	if (c.trouble) {
		const { id, test } = c.trouble;
		if (TROUBLES[id].needsTest && test !== 'good') {
			const kind = id === 'no-cure' ? 'test patch' : 'test cup';
			return [act({ type: 'test.judged', kind, result: 'good' }, 3600)];
		}
		const how = 'Found the cause, mended the place and checked it.';
		const mend = act({ type: 'trouble.mended', how, wayBack: 'resume' }, 1200);
		const decide = act({ type: 'trouble.decided', how, wayBack: 'resume' }, 1200);
		return [mend, bySupervisor(decide)];
	}
	if (c.pausedFor !== null) return [act({ type: 'job.resumed' }, 1800)];
	if (c.hold) return holdActs(c);
	const decision = act(
		{ type: 'deviation.decided', accepted: true, note: 'Looked at the surface: go on.' },
		900
	);
	return [
		...(c.phase === 'brief' ? briefActs(c, crew, (s) => content[s] ?? UNKNOWN_HASH) : []),
		...(['pattern', 'release', 'frame'].includes(c.phase) ? preparingActs(c) : []),
		...(['detail', 'build'].includes(c.phase) ? coatingActs(c) : []),
		...(c.phase === 'shell' ? [...cupActs(c), shellFinished(c)] : []),
		...shellingActs(c),
		...finishingActs(c),
		bySupervisor(decision)
	];
}

/** Nothing runs out: the crew may go home before the next act. */
function mayRest({ phase, coatIndex, roundIndex, laidG, cup }: ProcessContext): boolean {
	const isCoating = phase === 'detail' || phase === 'build';
	if (!isCoating && phase !== 'shell') return true;
	return laidG === 0 && cup === null && (isCoating ? coatIndex : roundIndex) === 0;
}

function isReached(until: RehearsalOptions['until'], context: ProcessContext): boolean {
	if (typeof until === 'function') return until(context);
	return until !== 'end' && context.phase === until;
}

/**
 * The log that a careful crew would have posted, judged act by act by the machine itself. No clock and
 * no chance: the same plan and options always give the same log.
 *
 * @throws Error when the machine takes none of the crew's acts, naming phase and reason
 */
export function rehearseJob(
	plan: Plan,
	options: RehearsalOptions
): { log: LoggedEvent[]; state: JobState } {
	const { until, startAt, crew, jobId = 'rehearsal', content = {}, startable } = options;
	const opened: ProcessEvent = {
		type: 'job.opened',
		at: startAt,
		by: crew.supervisor,
		jobId,
		title: plan.title.slice(0, 120),
		planHash: planHash(plan),
		processVersion: plan.processVersion,
		content
	};
	const log: LoggedEvent[] = [{ id: `${jobId}-1`, seq: 1, event: opened }];
	let state = openJob(plan, { id: `${jobId}-1`, seq: 1, event: opened });
	let refusal = '';

	const begun = (at: string): string => {
		const context = contextOf(state);
		return startable && mayRest(context) ? startable(at, context) : at;
	};
	const post = ({ event, tookS, notBeforeAt, who }: RehearsedAct): boolean => {
		const soonest = addSeconds(state.lastAt, tookS);
		const due = notBeforeAt !== null && notBeforeAt > soonest ? notBeforeAt : soonest;
		const at = begun(due);
		const seq = log.length + 1;
		const logged = {
			id: `${jobId}-${seq}`,
			seq,
			event: { ...event, at, by: crew[who] ?? crew.worker } as ProcessEvent
		};
		const next = advance(state, logged);
		if (!next.ok) refusal = `${event.type}: ${next.reason}`;
		else {
			log.push(logged);
			state = next.state;
		}
		return next.ok;
	};
	const stuck = () => new Error(`the rehearsal is stuck in ${contextOf(state).phase}: ${refusal}`);

	const open = [...(options.mishaps ?? [])];
	while (state.snapshot.status === 'active' && !isReached(until, contextOf(state))) {
		if (log.length > MOST_EVENTS) throw stuck();
		const context = contextOf(state);
		const mishap = open.findIndex(({ when }) => when(context));
		if (mishap >= 0) {
			const [found] = open.splice(mishap, 1);
			for (const next of found?.acts(context) ?? []) if (!post(next)) throw stuck();
			continue;
		}
		const room =
			context.cup === null ? roomIfDue(context, begun(addSeconds(state.lastAt, 300))) : null;
		if (room && post(room)) continue;
		if (!carefulActs(context, options).some(post)) throw stuck();
	}
	return { log, state };
}

/** The events of `rehearseJob`, oldest first. */
export function rehearse(plan: Plan, options: RehearsalOptions): ProcessEvent[] {
	return rehearseJob(plan, options).log.map(({ event }) => event);
}
