import { PHASE_IDS, type PhaseId } from '../content/vocabulary';
import type { Coat, ShellRound } from '../plan/plan';
import { batchAtWork, coatAtWork, type Deviation, type ProcessContext } from './context';
import type { EventOf, HoldId, ProcessEvent } from './events';
import { HOLDS } from './holds';
import { addSeconds, secondsBetween } from './instant';

type Change = Partial<ProcessContext>;

/** A coat that passes its test sooner than this part of the stated time is noted; common practice, no source. */
const EARLY_FRACTION = 0.5;

export function worked(c: ProcessContext, e: ProcessEvent): Change {
	return {
		lastAt: e.at,
		worker: e.by,
		workers: c.workers.includes(e.by) ? c.workers : [...c.workers, e.by]
	};
}

function deviation(
	c: ProcessContext,
	e: ProcessEvent,
	what: string,
	blocking = false
): Deviation[] {
	return [...c.deviations, { at: e.at, by: e.by, what, blocking, decided: null }];
}

export function briefingRead(c: ProcessContext, e: EventOf<'briefing.read'>): Change {
	const read = c.briefingsRead[e.by] ?? [];
	return {
		lastAt: e.at,
		briefingsRead: { ...c.briefingsRead, [e.by]: [...new Set([...read, e.briefing])] }
	};
}

export function cupWeighed(e: EventOf<'cup.weighed'>): Change {
	return { cup: { massesG: e.massesG, weighedAt: e.at, mixedAt: null } };
}

export function cupMixed(c: ProcessContext, e: ProcessEvent): Change {
	const late =
		c.laidG > 0 && c.windowClosesAt !== null && secondsBetween(c.windowClosesAt, e.at) > 0;
	return {
		cup: c.cup && { ...c.cup, mixedAt: e.at },
		...(late && !c.abraded
			? {
					deviations: deviation(c, e, 'A further cup was mixed after the recoat window had closed.')
				}
			: {})
	};
}

export function cupApplied(c: ProcessContext, e: ProcessEvent): Change {
	const batch = batchAtWork(c);
	const massG = Object.values(c.cup?.massesG ?? {}).reduce((sum, part) => sum + part, 0);
	const workedS = c.cup?.mixedAt ? secondsBetween(c.cup.mixedAt, e.at) : 0;
	const limitS = batch ? batch.workingS : Infinity;
	const bare = c.phase === 'shell' || c.laidG === 0;
	const closedS =
		bare && !c.abraded && c.windowClosesAt !== null ? secondsBetween(c.windowClosesAt, e.at) : 0;
	const faults = [
		...(closedS > 0
			? [
					`A cup mixed inside the recoat window was laid ${Math.ceil(closedS / 60)} min after it had closed.`
				]
			: []),
		...(workedS > limitS
			? [
					`A cup was laid ${Math.ceil(workedS / 60)} min after mixing; its working time is ${Math.floor(limitS / 60)} min.`
				]
			: [])
	];
	return {
		cup: null,
		laidAt: e.at,
		laidG: c.laidG + massG,
		cupsLaid: c.cupsLaid + 1,
		...(c.phase === 'shell' && batch
			? { finishedAt: e.at, windowClosesAt: addSeconds(e.at, batch.windowClosesS), abraded: false }
			: {}),
		deviations: faults.reduce(
			(deviations, what) => deviation({ ...c, deviations }, e, what),
			c.deviations
		)
	};
}

export function coatFinished(c: ProcessContext, e: EventOf<'coat.finished'>): Change {
	const coat = coatAtWork(c);
	return {
		finishedAt: e.at,
		// The material cures from when it was laid, whenever the end of the coat is entered.
		windowClosesAt: coat ? addSeconds(c.laidAt ?? e.at, coat.windowClosesS) : null,
		tackPassed: false,
		abraded: false,
		...(e.shortReason
			? { deviations: deviation(c, e, `${coat?.title ?? 'Coat'} stayed short: ${e.shortReason}`) }
			: {})
	};
}

export function notBrushedBack(c: ProcessContext, e: ProcessEvent): Change {
	return { deviations: deviation(c, e, 'The thin coat was not brushed back before it gelled.') };
}

/** A passed test: notes one that came far too early to be believed unseen. */
export function tackFound(c: ProcessContext, e: EventOf<'tack.tested'>): Change {
	const coat = c.laidG > 0 ? coatAtWork(c) : (c.coats[c.coatIndex - 1] ?? null);
	const tookS = c.finishedAt ? secondsBetween(c.finishedAt, e.at) : 0;
	const early = coat !== null && c.finishedAt !== null && tookS < EARLY_FRACTION * coat.tackTestS;
	return {
		// A hard last coat may be measured; a coat added to it needs a print, or abrading.
		tackPassed: e.result === 'almost tack-free',
		...(early
			? {
					deviations: deviation(
						c,
						e,
						`${coat.title} was found almost tack-free after ${Math.round(tookS / 60)} min; the data sheet lets expect ${Math.round(coat.tackTestS / 60)} min.`
					)
				}
			: {})
	};
}

export function nextCoat(c: ProcessContext): Change {
	return {
		coatIndex: c.coatIndex + 1,
		laidG: 0,
		cupsLaid: 0,
		cup: null,
		belowClosesAt: c.windowClosesAt
	};
}

export function nextRound(c: ProcessContext, e: EventOf<'coat.finished'>): Change {
	const round = c.rounds[c.roundIndex];
	return {
		roundIndex: c.roundIndex + 1,
		laidG: 0,
		cupsLaid: 0,
		cup: null,
		...(e.shortReason
			? { deviations: deviation(c, e, `${round?.title ?? 'Shell'} stayed short: ${e.shortReason}`) }
			: {})
	};
}

export function windowMissed(c: ProcessContext, e: ProcessEvent): Change {
	const cup = c.cup === null ? '' : ' The cup weighed for it was set aside.';
	return {
		cup: null,
		tackPassed: false,
		deviations: deviation(
			c,
			e,
			`The recoat window was missed: the surface is hard and takes no print.${cup}`
		)
	};
}

export function abraded(c: ProcessContext, e: EventOf<'surface.abraded'>): Change {
	return {
		cup: null,
		deviations: deviation(
			c,
			e,
			`The surface was abraded with ${e.grit}, wiped and dried: ${e.reason}`,
			true
		)
	};
}

/** Abrading that a supervisor ordered by sending the work back needs no second decision. */
export function abradedAsOrdered(c: ProcessContext, e: EventOf<'surface.abraded'>): Change {
	const order = c.sentBack;
	const made = deviation(
		c,
		e,
		`The surface was abraded with ${e.grit}, wiped and dried: ${e.reason}`
	);
	const last = made.at(-1);
	if (last && order)
		last.decided = { accepted: true, by: order.by, at: order.at, note: order.reason };
	return { cup: null, abraded: true, deviations: made };
}

export function decided(c: ProcessContext, e: EventOf<'deviation.decided'>): Change {
	const decision = { accepted: e.accepted, by: e.by, at: e.at, note: e.note };
	return {
		lastAt: e.at,
		deviations: c.deviations.map((d) => (d.decided ? d : { ...d, decided: decision }))
	};
}

export function thicknessMeasured(c: ProcessContext, e: EventOf<'thickness.measured'>): Change {
	const thinnestMm = Math.min(...e.points.map((p) => p.thicknessMm));
	return {
		thinnestMm,
		...(thinnestMm < c.plan.glove.leastMm
			? {
					deviations: deviation(
						c,
						e,
						`The glove is ${thinnestMm} mm at its thinnest point; the plan asks for ${c.plan.glove.leastMm.toFixed(1)} mm.`,
						true
					)
				}
			: {})
	};
}

function oneMoreCoat(coats: Coat[]): Coat[] {
	const last = coats.at(-1);
	if (!last) return coats;
	const number = last.number + 1;
	return [
		...coats,
		{ ...last, id: `${last.kind}-${number}`, number, title: `Extra coat ${number}` }
	];
}

export function roundAdded(c: ProcessContext, e: EventOf<'coat.added'>): Change {
	return {
		rounds: oneMoreRound(c.rounds),
		deviations: deviation(c, e, `A shell round was added: ${e.reason}`)
	};
}

function oneMoreRound(rounds: ShellRound[]): ShellRound[] {
	const last = rounds.at(-1);
	if (!last) return rounds;
	const number = last.number + 1;
	return [...rounds, { ...last, id: `shell-${number}`, number, title: `Extra round ${number}` }];
}

export function coatAdded(c: ProcessContext, e: EventOf<'coat.added'>): Change {
	const note = { accepted: true, by: e.by, at: e.at, note: `A coat was added: ${e.reason}` };
	return {
		...nextCoat(c),
		coats: oneMoreCoat(c.coats),
		// The thin reading is answered by the coat itself, and shown to the supervisor at the hold point.
		deviations: c.deviations.map((d) => (d.decided ? d : { ...d, blocking: false, decided: note }))
	};
}

function freshShell(c: ProcessContext): Change {
	return {
		rounds: c.plan.shell.rounds,
		roundIndex: 0,
		cup: null,
		laidG: 0,
		cupsLaid: 0,
		windowClosesAt: null,
		abraded: false
	};
}

export function signed(c: ProcessContext, e: EventOf<'hold.signed'>): Change {
	const decision = {
		accepted: true,
		by: e.by,
		at: e.at,
		note: `Signed at "${HOLDS[e.hold].title}"`
	};
	return {
		lastAt: e.at,
		signatures: { ...c.signatures, [e.hold]: { by: e.by, at: e.at } },
		hold: null,
		holdRequestedAt: null,
		sentBack: null,
		deviations: c.deviations.map((d) => (d.decided ? d : { ...d, decided: decision })),
		...(e.hold === 'readyForShell' ? freshShell(c) : {})
	};
}

/** The context as it must be when work goes back to `phase`: what comes after it is not done. */
export function backTo(c: ProcessContext, phase: PhaseId): Change {
	const at = PHASE_IDS.indexOf(phase);
	const kept = Object.entries(c.signatures).filter(
		([hold]) => PHASE_IDS.indexOf(HOLDS[hold as HoldId].phase) < at
	);
	const clean: Change = {
		cup: null,
		laidG: 0,
		cupsLaid: 0,
		hold: null,
		holdRequestedAt: null,
		waitSinceAt: null,
		trouble: null,
		signatures: Object.fromEntries(kept)
	};
	if (phase === 'build') {
		return {
			...clean,
			coats: oneMoreCoat(c.coats),
			coatIndex: c.coats.length,
			tackPassed: false,
			abraded: false
		};
	}
	if (phase === 'shell') {
		return {
			...clean,
			rounds: oneMoreRound(c.rounds),
			roundIndex: c.rounds.length,
			abraded: false
		};
	}
	if (at > PHASE_IDS.indexOf('build')) return clean;
	return {
		...clean,
		...(at <= PHASE_IDS.indexOf('release') ? { waxCoats: 0, filmPasses: 0 } : {}),
		coats: c.plan.coats,
		coatIndex: 0,
		finishedAt: null,
		windowClosesAt: null,
		belowClosesAt: null,
		tackPassed: false,
		abraded: false,
		thinnestMm: null
	};
}

/** The first round lies on the waxed glove, which has no window. */
function belowRound(c: ProcessContext): string | null {
	return c.roundIndex === 0 ? null : c.windowClosesAt;
}

export function redoCoat(c: ProcessContext): Change {
	return {
		trouble: null,
		cup: null,
		laidG: 0,
		cupsLaid: 0,
		tackPassed: false,
		windowClosesAt: c.phase !== 'shell' ? c.belowClosesAt : belowRound(c)
	};
}

export function troubleReported(c: ProcessContext, e: EventOf<'trouble.reported'>): Change {
	return {
		lastAt: e.at,
		// A trouble ends a pause: when it is mended, somebody is at work.
		pausedFor: null,
		trouble: { id: e.trouble, at: e.at, by: e.by, place: e.place ?? '', note: e.note },
		// A coat that dragged has not passed, whatever the fingertip said.
		...(e.trouble === 'recoat-too-early' ? { tackPassed: false } : {})
	};
}

export function looseFrame(c: ProcessContext, e: EventOf<'frame.refitted'>): Change {
	if (e.tight) return {};
	return {
		deviations: deviation(
			c,
			e,
			`The frame went back loose: the glove shrank more than planned. ${e.note ?? ''}`.trim()
		)
	};
}

export function peeled(c: ProcessContext, e: EventOf<'glove.peeled'>): Change {
	if (e.whole) return {};
	return {
		deviations: deviation(c, e, `The glove did not come off whole. ${e.note ?? ''}`.trim())
	};
}
