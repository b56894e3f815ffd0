import { ACT_FIELDS } from './act-fields';
import { ACT_LABELS } from './act-labels';
import { isLaying, type ProcessContext } from './context';
import { cupAhead } from './cup-ahead';
import type { EventType, ProcessEvent } from './events';
import { secondsBetween } from './instant';
import { contextOf, type JobState } from './job';
import { cupToWeigh, nextCup } from './next-cup';
import { stopAt, stopsOf } from './progress';
import { allowedTypes, rulesOf, transitionsFor } from './refusal';
import { rule, type RuleName } from './rules';
import { statePath } from './state-path';
import { STEP_TABLE, slugFor } from './step-table';
import type { Act, Amount, BenchStep } from './step';
import { windowAt } from './windows';

/** Offered beside the step's own acts, in this order, whenever the machine takes them. */
const SIDE_ACTS: readonly EventType[] = [
	'room.read',
	'tack.tested',
	'surface.abraded',
	'trouble.reported',
	'job.paused',
	'job.takenOver',
	'job.abandoned'
];
const IRREVERSIBLE: readonly EventType[] = [
	'cup.mixed',
	'cup.discarded',
	'job.abandoned',
	'mold.rejected',
	'mold.opened',
	'glove.peeled',
	'mold.handedOver',
	'part.poured'
];
const SIGNATURES: readonly EventType[] = [
	'hold.signed',
	'hold.sentBack',
	'mold.rejected',
	'deviation.decided'
];
/** Rules on what the person types, which cannot be judged beforehand. */
const ON_DATA: readonly RuleName[] = [
	'knownParts',
	'somethingWeighed',
	'enoughLaid',
	'holdMayReturnTo',
	'holdNamed',
	'fullWaxCoats',
	'shellThick',
	'troubleFitsPhase',
	'troubleMayReturnTo'
];

export interface Viewer {
	by: string;
	at: string;
}

/**
 * The one thing at a time for the bench: what to do, how much, until when, and which acts the
 * machine takes. `viewer` is who looks and when: what that person may not do comes with its reason.
 */
export function benchStep(state: JobState, viewer: Viewer): BenchStep {
	const c = contextOf(state);
	const path = statePath(state.snapshot);
	const shown = pathNow(state, path, viewer.at);
	const row = STEP_TABLE[shown];
	if (!row) throw new Error(`no bench step for the state ${path}`);
	const stops = stopsOf(c);
	const at = state.snapshot.status === 'active' ? stopAt(c, stops) : stops.length;

	return {
		phase: c.phase,
		slug: slugFor(shown, c),
		title: row.title(c),
		what: row.what(c),
		amounts: amountsAt(shown, c),
		window: windowAt(path, c),
		acts: actsAt(state, row.acts, viewer),
		ahead: cupAhead(c),
		progress: { done: at, of: stops.length },
		next: stops.slice(at + 1, at + 3).map((stop) => stop.title),
		hold: c.hold,
		coatIndex: c.phase === 'detail' || c.phase === 'build' ? c.coatIndex : null,
		roundIndex: c.phase === 'shell' ? c.roundIndex : null
	};
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

function actsAt(state: JobState, own: readonly EventType[], viewer: Viewer): Act[] {
	const allowed = allowedTypes(state);
	const c = contextOf(state);
	const isLaid = nextCup(c) === null;
	// When the batch is laid, finishing comes before another cup; a repair comes before a signature.
	const isMended = own.includes('mold.repaired');
	const first: EventType | null = isMended ? 'mold.repaired' : isLaid ? 'coat.finished' : null;
	const ordered =
		first !== null && own.includes(first) ? [first, ...own.filter((type) => type !== first)] : own;
	const types = [...ordered, ...SIDE_ACTS.filter((type) => !own.includes(type))].filter(
		(type) => allowed.includes(type) && isWorthwhile(type, c)
	);
	const acts = types.map((type) => actOf(state, type, viewer));
	const primary = acts.find((act) => own.includes(act.type) && act.blocked === null) ?? acts[0];
	return acts.map((act) => ({ ...act, primary: act === primary && own.includes(act.type) }));
}

function isWorthwhile(type: EventType, c: ProcessContext): boolean {
	if (type === 'coat.finished') return c.laidG > 0;
	if (isLaying(c) && (type === 'cup.weighed' || type === 'cup.mixed')) return isNextOpen(type, c);
	if (type === 'cup.weighed') return nextCup(c) !== null;
	if (type === 'briefing.read') return false;
	const isFlaw =
		type === 'mold.repaired' || (type === 'deviation.decided' && c.hold === 'moldAccepted');
	if (isFlaw) return c.inspection?.verdict === 'needs repair' && !c.inspection.isAccepted;
	return true;
}

/** The next cup is weighed while one follows, and offered for mixing once it is on the scale. */
function isNextOpen(type: 'cup.weighed' | 'cup.mixed', c: ProcessContext): boolean {
	if (c.cupAhead?.mixedAt) return false;
	return type === 'cup.weighed' ? cupToWeigh(c) !== null : c.cupAhead !== null;
}

function labelOf(type: EventType, c: ProcessContext): string {
	if (isLaying(c) && type === 'cup.weighed') return 'Next cup is weighed';
	return isLaying(c) && type === 'cup.mixed' ? 'Next cup is mixed' : ACT_LABELS[type];
}

function actOf(state: JobState, type: EventType, { by, at }: Viewer): Act {
	const c = contextOf(state);
	const probe = { type, by, at } as ProcessEvent;
	const open = transitionsFor(state, type).map((t) =>
		rulesOf(t).filter((name) => !ON_DATA.includes(name))
	);
	const fromAts = open.flat().flatMap((name) => rule(name).fromAt?.(c) ?? []);
	const failing = open
		.map((names) =>
			names.filter((name) => rule(name).fromAt === undefined && !rule(name).holds(c, probe))
		)
		.sort((a, b) => a.length - b.length)[0];
	const fromAt = fromAts.sort((a, b) => secondsBetween(b, a))[0] ?? null;

	return {
		type,
		label: labelOf(type, c),
		primary: false,
		irreversible: IRREVERSIBLE.includes(type),
		signature: SIGNATURES.includes(type),
		fromAt,
		blocked:
			failing && failing.length > 0
				? failing.map((name) => rule(name).says(c, probe)).join('; ')
				: null,
		fields: ACT_FIELDS[type]?.(c) ?? [],
		fixed:
			c.hold && ['hold.requested', 'hold.signed', 'hold.sentBack'].includes(type)
				? { hold: c.hold }
				: {}
	};
}

function amountsAt(path: string, c: ProcessContext): Amount[] {
	if (path.endsWith('.weighing') || path.endsWith('.weighed')) {
		const next = nextCup(c);
		return (next?.cup.parts ?? []).map(({ part, massG }) => ({ label: part, massG }));
	}
	if (path === 'coating.mixed' || path === 'shell.mixed') {
		return [{ label: 'in this cup', massG: sum(c.cup?.massesG ?? {}) }];
	}
	if (path === 'pour.pouring') {
		return c.plan.pour.parts.map(({ part, massG }) => ({ label: part, massG }));
	}
	if (path === 'release.waxing') {
		return [
			{ label: 'wax, this coat', massG: c.plan.release.waxG / Math.max(1, c.plan.release.waxCoats) }
		];
	}
	if (path === 'release.filming') {
		return [
			{
				label: 'film, this pass',
				massG: c.plan.release.filmG / Math.max(1, c.plan.release.filmPasses)
			}
		];
	}
	return [];
}

function sum(massesG: Record<string, number>): number {
	return Object.values(massesG).reduce((total, massG) => total + massG, 0);
}
