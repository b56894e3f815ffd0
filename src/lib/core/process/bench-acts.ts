import { ACT_FIELDS } from './act-fields';
import { ENGLISH, type Words } from '../language/words';
import { isLaying, type ProcessContext } from './context';
import type { EventType, ProcessEvent } from './events';
import { secondsBetween } from './instant';
import { contextOf, type JobState } from './job';
import { cupToWeigh, nextCup } from './next-cup';
import { allowedTypes, rulesOf, transitionsFor } from './refusal';
import { rule, type RuleName } from './rules';
import { sealerCoatsOf } from './sealing';
import { isNextOverdue, isOverdue } from './cup-life';
import type { Act, ActField, Viewer } from './step';
import { isHurting, needsSupervisor, TROUBLES } from './troubles';

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
	'deviation.decided',
	'trouble.decided'
];
/** Rules on what the person types, which cannot be judged beforehand. */
const ON_DATA: readonly RuleName[] = [
	'knownParts',
	'somethingWeighed',
	'fitsCup',
	'enoughLaid',
	'frameReleased',
	'holdMayReturnTo',
	'holdNamed',
	'fullWaxCoats',
	'shellThick',
	'troubleFitsPhase',
	'troubleDescribed',
	'troubleIsAnother',
	'troubleMayReturnTo',
	'troubleAnswered',
	'layersCounted',
	'keysNamed',
	'placesLookedAt',
	'mixerNamed'
];

/** Acts that the machine takes from here, the main one marked, each with what it asks for. */
export function actsAt(
	state: JobState,
	own: readonly EventType[],
	viewer: Viewer,
	w = ENGLISH
): Act[] {
	const allowed = allowedTypes(state);
	const c = contextOf(state);
	const isLaid = nextCup(c) === null;
	// When the batch is laid, finishing comes before another cup; a repair comes before a signature.
	const isMended = own.includes('mold.repaired');
	const first: EventType | null = isMended ? 'mold.repaired' : isLaid ? 'coat.finished' : null;
	const ordered =
		first !== null && own.includes(first) ? [first, ...own.filter((type) => type !== first)] : own;
	// Whoever is hurt is helped with empty hands, and what smokes is not laid.
	const isOver = isOverdue(c, viewer.at) || isSupervisors(c);
	const types = [...ordered, ...SIDE_ACTS.filter((type) => !own.includes(type))].filter(
		(type) => allowed.includes(type) && isWorthwhile(type, c)
	);
	const acts = types.map((type) => actOf(state, type, viewer, w));
	// Setting a cup aside is never the way on: what stands before mixing it is said instead.
	const ways: readonly EventType[] = own.filter((type) => type !== 'cup.discarded');
	const onward = acts.find((act) => ways.includes(act.type) && act.blocked === null) ?? acts[0];
	const aside = isOver ? acts.find(({ type }) => type === 'cup.discarded') : undefined;
	const primary = aside ?? onward;
	return acts.map((act) => ({ ...act, primary: act === primary && own.includes(act.type) }));
}

/** A trouble that hurts, which the crew does not end. */
const isSupervisors = ({ trouble, plan }: ProcessContext) =>
	trouble !== null && isHurting(trouble.id) && needsSupervisor(trouble.id, plan.processVersion);

function isWorthwhile(type: EventType, c: ProcessContext): boolean {
	if (type === 'coat.finished') return c.laidG > 0;
	if (isLaying(c) && (type === 'cup.weighed' || type === 'cup.mixed')) return isNextOpen(type, c);
	if (type === 'cup.discarded' && c.trouble !== null) return c.cup !== null;
	if (type === 'cup.weighed') return nextCup(c) !== null;
	if (type === 'briefing.read') return false;
	if (type === 'sealer.applied') return sealerCoatsOf(c) > 0;
	if (type === 'test.judged') return c.trouble !== null && TROUBLES[c.trouble.id].needsTest;
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

/** A cup in a trouble, or past its time, is set aside for that reason, unless somebody has another. */
function fieldsOf(type: EventType, c: ProcessContext, at: string, w: Words): ActField[] {
	const fields = ACT_FIELDS[type]?.(c, w) ?? [];
	if (type !== 'cup.discarded') return fields;
	const isNext = !isOverdue(c, at) && isNextOverdue(c, at);
	const isOver = isNext || isOverdue(c, at);
	const reason = c.trouble ? w.titles.troubles[c.trouble.id] : isOver && w.fields.cup.timeWasOver;
	if (!reason) return fields;
	return fields.map((field) => ({
		...field,
		preset: field.name === 'reason' ? reason : isNext ? 'next' : 'in hand'
	}));
}

function labelOf(type: EventType, c: ProcessContext, { acts, steps }: Words): string {
	if (isLaying(c) && type === 'cup.weighed') return steps.nextCupWeighed;
	return isLaying(c) && type === 'cup.mixed' ? steps.nextCupMixed : acts[type];
}

function actOf(state: JobState, type: EventType, { by, at }: Viewer, w: Words): Act {
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
		label: labelOf(type, c, w),
		primary: false,
		irreversible: IRREVERSIBLE.includes(type),
		signature: SIGNATURES.includes(type),
		fromAt,
		blocked:
			failing && failing.length > 0
				? failing.map((name) => rule(name).says(c, probe, w)).join('; ')
				: null,
		why: failing ?? [],
		fields: fieldsOf(type, c, at, w),
		fixed:
			c.hold && ['hold.requested', 'hold.signed', 'hold.sentBack'].includes(type)
				? { hold: c.hold }
				: {}
	};
}
