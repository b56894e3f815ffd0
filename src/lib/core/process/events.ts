import { z } from 'zod';
import { LANGS } from '../language/locale';
import { PHASE_IDS, TROUBLE_IDS } from '../content/vocabulary';

const text = z.string().trim().min(1).max(2000);
const shortText = z.string().trim().min(1).max(120);
const optionalText = z.string().trim().max(2000).optional();
const massG = z.number().min(0).max(100_000);
const yes = z.literal(true, { error: 'must be confirmed' });
const hash = z.string().regex(/^[0-9a-f]{64}$/, 'a SHA-256 in 64 lower-case hex digits');

export const HOLD_IDS = ['readyToCoat', 'readyForShell', 'readyToOpen', 'moldAccepted'] as const;
export type HoldId = (typeof HOLD_IDS)[number];

const instant = z.iso.datetime({ error: 'an instant in UTC such as 2026-01-05T14:03:00Z' });

/** What every event carries: when it was done, and by whom. The server sets `by` from the session. */
const base = {
	at: instant,
	by: z.string().min(1).max(60),
	/** What the device's own clock said as it sent the act; beside the server's it shows a clock that is wrong. */
	sentAt: instant.optional(),
	/** Pictures of it, by their hash. */
	photos: z.array(hash).max(12).optional()
};

function event<T extends string, S extends z.ZodRawShape>(type: T, shape: S) {
	return z.strictObject({ type: z.literal(type), ...base, ...shape });
}

/** What is asked before a trouble that hurt somebody, or that smoked, is ended. */
export const troubleAnswers = {
	firstAidGiven: yes.optional(),
	seenBy: shortText.optional(),
	sdsTaken: yes.optional(),
	cupCold: yes.optional(),
	aired: yes.optional()
};
export type TroubleAnswer = keyof typeof troubleAnswers;

/** Everything that can be done at the bench, as a fact in the past. The log holds nothing else. */
export const eventSchema = z.discriminatedUnion('type', [
	event('job.opened', {
		jobId: z.string().min(1).max(60),
		title: shortText,
		planHash: hash,
		processVersion: z.number().int().positive(),
		/** Content hash by slug of every text this job was started with. */
		content: z.record(z.string(), hash),
		/** A supervisor's word on what a plan may be built with only on one. */
		decided: z
			.strictObject({
				by: z.string().min(1).max(60),
				reason: text,
				what: z.array(text).min(1).max(20)
			})
			.optional()
	}),
	event('briefing.read', {
		briefing: shortText,
		contentHash: hash,
		/** The language it was read in; English when left out. */
		lang: z.enum(LANGS).optional(),
		/** For how long its text was open before this was pressed, in seconds. */
		openS: z.number().int().min(0).max(86_400).optional()
	}),
	event('room.read', {
		temperatureC: z.number().min(-10).max(50),
		humidityPct: z.number().min(1).max(100),
		surfaceC: z.number().min(-10).max(60).optional(),
		extractionOn: z.boolean()
	}),
	event('brief.finished', { sdsRead: yes, ppeOut: yes, spillKitKnown: yes, trainingInDate: yes }),
	event('sealer.applied', {}),
	event('sealer.dried', { dry: yes }),
	event('pattern.prepared', {
		dry: yes,
		sound: yes,
		sealedOrDense: yes,
		inhibitorsConsidered: yes,
		fixedToBoard: yes,
		footGapsFilled: yes,
		note: optionalText
	}),
	event('wax.applied', {}),
	event('wax.buffed', {}),
	event('film.applied', {}),
	event('film.dried', { unbroken: yes }),
	event('frame.fitted', {
		gapMm: z.number().min(0).max(500),
		screwedFromBelow: yes,
		cornersTight: yes,
		/** Only where the plan has a release. */
		insideReleased: yes.optional()
	}),
	event('hold.requested', { hold: z.enum(HOLD_IDS), note: optionalText }),
	event('hold.signed', { hold: z.enum(HOLD_IDS), note: optionalText }),
	event('hold.sentBack', { hold: z.enum(HOLD_IDS), to: z.enum(PHASE_IDS), reason: text }),
	event('mold.rejected', { reason: text }),
	event('cup.weighed', {
		/** Actual masses by part, as the scale showed them; replaces an earlier weighing of the same cup. */
		massesG: z.record(z.string().max(20), massG),
		lots: z.record(z.string().max(20), shortText)
	}),
	event('cup.mixed', {
		/** Who mixed it, when that is not the person with the mold in hand. */
		mixedBy: z.string().min(1).max(60).optional(),
		/** Said by the server: whoever mixed it had no training in date, where the shop asks for it. */
		notInDate: yes.optional()
	}),
	event('cup.applied', {}),
	event('cup.discarded', {
		reason: text,
		/** "next" is the one prepared while another is laid; left out, it is the one in hand. */
		cup: z.enum(['in hand', 'next']).optional()
	}),
	event('coat.finished', {
		/** Layers of cloth or strand in a round of the shell, counted. */
		layersLaid: z.number().int().min(0).max(99).optional(),
		shortReason: optionalText
	}),
	event('coat.brushedBack', {}),
	event('tack.tested', {
		result: z.enum(['wet', 'almost tack-free', 'hard']),
		place: optionalText
	}),
	event('surface.abraded', { grit: shortText, wiped: yes, dried: yes, reason: text }),
	event('deviation.decided', { accepted: z.boolean(), note: text }),
	event('thickness.measured', {
		points: z
			.array(z.strictObject({ place: shortText, thicknessMm: z.number().min(0).max(100) }))
			.min(3)
			.max(60)
	}),
	event('coat.added', { reason: text }),
	event('glove.tested', {
		result: z.enum(['soft', 'cured']),
		shoreA: z.number().min(0).max(100).optional()
	}),
	event('glove.trimmed', { edgeSquare: yes, frameClean: yes }),
	event('glove.waxed', { wholeBack: yes, coats: z.number().int().min(1).max(6) }),
	event('frame.refitted', { tight: z.boolean(), note: optionalText }),
	event('shell.finished', {
		thicknessMm: z.number().min(0).max(200),
		cornersFull: yes,
		feetLevel: yes
	}),
	event('shell.tested', { result: z.enum(['soft', 'hard']) }),
	event('mold.opened', { boardOff: yes, wedgedEvenly: yes, note: optionalText }),
	event('mold.marked', {
		mark: shortText,
		sameSide: yes,
		partingLine: z.enum(['uneven', 'plain']).optional(),
		/** The keys of a plain line: which, and where. */
		keys: optionalText
	}),
	event('glove.peeled', { whole: z.boolean(), note: optionalText }),
	event('glove.washed', { filmGone: yes }),
	event('mold.inspected', {
		voids: z.number().int().min(0).max(1000),
		bubbles: z.number().int().min(0).max(1000),
		tears: z.number().int().min(0).max(1000),
		thinSpots: z.number().int().min(0).max(1000),
		shoreA: z.number().min(0).max(100).optional(),
		dimensions: z
			.array(
				z.strictObject({
					name: shortText,
					plannedMm: z.number().positive().max(10_000),
					measuredMm: z.number().positive().max(10_000)
				})
			)
			.max(30),
		/** Places of former trouble that were looked at, by their number. */
		lookedAt: z.record(z.string().max(4), z.boolean()).optional(),
		verdict: z.enum(['sound', 'needs repair', 'reject']),
		note: optionalText
	}),
	event('mold.repaired', { done: text }),
	event('part.poured', {
		massG: massG.positive(),
		headMm: z.number().min(1).max(10_000),
		lot: shortText
	}),
	event('part.released', { result: z.enum(['good', 'faulty']), note: optionalText }),
	event('mold.handedOver', { to: shortText, storage: text, repair: text, wornOutWhen: text }),
	event('trouble.reported', {
		trouble: z.enum(TROUBLE_IDS),
		place: optionalText,
		/** Optional only where it hurts or may at once. */
		note: optionalText
	}),
	/** A test away from the mold: does a cup foam, does a patch cure. */
	event('test.judged', {
		kind: z.enum(['test cup', 'test patch']),
		result: z.enum(['good', 'bad']),
		note: optionalText
	}),
	event('trouble.mended', {
		how: text,
		/** "resume", "redo coat", or the phase to go back to. */
		wayBack: z.union([z.literal('resume'), z.literal('redo coat'), z.enum(PHASE_IDS)])
	}),
	/** A supervisor's word on a trouble, with a PIN: how work goes on. What must be answered first depends on the trouble. */
	event('trouble.decided', {
		how: text,
		...troubleAnswers,
		wayBack: z.union([z.literal('resume'), z.literal('redo coat'), z.enum(PHASE_IDS)])
	}),
	event('job.paused', { reason: text }),
	event('job.resumed', {}),
	/** Taken by the person who goes on; the one who left need not be there. */
	event('job.takenOver', { note: optionalText }),
	event('job.abandoned', { reason: text }),
	event('act.undone', { undoes: z.string().min(1).max(60), reason: text }),
	/** A supervisor takes back an entry that the crew cannot, with a PIN. */
	event('act.takenBack', { undoes: z.string().min(1).max(60), reason: text })
]);

export type ProcessEvent = z.infer<typeof eventSchema>;
export type EventType = ProcessEvent['type'];
export type EventOf<T extends EventType> = Extract<ProcessEvent, { type: T }>;

/** An event with its identity in the log: what the fold reads. */
export interface LoggedEvent {
	id: string;
	seq: number;
	event: ProcessEvent;
}
