import { z } from 'zod';
import { PHASE_IDS } from '$lib/core/content/vocabulary';
import { HOLD_IDS, troubleAnswers, type TroubleAnswer } from '$lib/core/process/events';
import { postAct } from './act';
import { actIdSchema } from './act-id';
import type { AppendResult } from './append';
import { now } from './clock';
import type { Db } from './database';
import { getPerson, maySign, type Person } from './people.repository';
import { checkPin } from './pin';
import { pinSchema } from './pin-hash';

const id = z.string().min(1).max(60);
const words = z.string().trim().min(1).max(2000);
const sealed = { id: actIdSchema, seq: z.number().int().min(2), pin: pinSchema };
const who = { ...sealed, supervisorId: id };

/**
 * A word on a hold point, a deviation or the mold, with the PIN that stands for a signature: a
 * supervisor's, and for abandoning also that of the person who has the mold in hand.
 */
export const signatureSchema = z.discriminatedUnion('decision', [
	z.strictObject({
		decision: z.literal('sign'),
		...who,
		hold: z.enum(HOLD_IDS),
		note: words.optional()
	}),
	z.strictObject({
		decision: z.literal('send back'),
		...who,
		hold: z.enum(HOLD_IDS),
		to: z.enum(PHASE_IDS),
		reason: words
	}),
	z.strictObject({ decision: z.literal('reject'), ...who, reason: words }),
	z.strictObject({ decision: z.literal('accept deviation'), ...who, note: words }),
	z.strictObject({ decision: z.literal('refuse deviation'), ...who, note: words }),
	z.strictObject({
		decision: z.literal('decide trouble'),
		...who,
		how: words,
		...troubleAnswers,
		wayBack: z.union([z.literal('resume'), z.literal('redo coat'), z.enum(PHASE_IDS)])
	}),
	z.strictObject({ decision: z.literal('take back'), ...who, undoes: id, reason: words }),
	z.strictObject({ decision: z.literal('abandon'), ...sealed, personId: id, reason: words })
]);
export type Signature = z.infer<typeof signatureSchema>;

const NOT_A_SIGNER = 'Only a supervisor or the owner signs.';

export type SignResult =
	| AppendResult
	| { status: 'wrong PIN'; waitS: number }
	| { status: 'may not sign'; reason: string };

/**
 * Checks the PIN, then appends the decision in the name of who gave it. The PIN is kept nowhere. One that
 * somebody else gave signs nothing: with it the giver could sign their own work.
 */
export async function signJob(
	db: Db,
	{ jobId, signature, address }: { jobId: string; signature: Signature; address: string }
): Promise<SignResult> {
	const { id, seq, pin } = signature;
	const by = signature.decision === 'abandon' ? signature.personId : signature.supervisorId;
	const answer = await checkPin(db, { personId: by, pin, address, at: now() });
	if (!answer.ok) return { status: 'wrong PIN', waitS: answer.waitS };

	const person = await getPerson(db, by);
	const reason = signature.decision === 'abandon' ? givenPinProblem(person) : unfitToSign(person);
	if (reason) return { status: 'may not sign', reason };
	return postAct(db, { jobId, id, seq, by, event: eventOf(signature), isSigned: true });
}

/** Why a person's signature counts for nothing; null when it counts. */
export function unfitToSign(person: Person | null): string | null {
	return person && maySign(person) ? givenPinProblem(person) : NOT_A_SIGNER;
}

function givenPinProblem(person: Person | null): string | null {
	if (!person) return NOT_A_SIGNER;
	return person.pinGivenBy === null
		? null
		: 'Somebody else gave you this PIN and knows it, so it signs nothing. Sign in, choose your own, then sign.';
}

function eventOf(signature: Signature): Record<string, unknown> {
	switch (signature.decision) {
		case 'sign': {
			const { hold, note } = signature;
			return { type: 'hold.signed', hold, ...(note ? { note } : {}) };
		}
		case 'send back': {
			const { hold, to, reason } = signature;
			return { type: 'hold.sentBack', hold, to, reason };
		}
		case 'decide trouble':
			return {
				type: 'trouble.decided',
				how: signature.how,
				wayBack: signature.wayBack,
				...answersIn(signature)
			};
		case 'take back':
			return { type: 'act.takenBack', undoes: signature.undoes, reason: signature.reason };
		case 'abandon':
			return { type: 'job.abandoned', reason: signature.reason };
		case 'reject':
			return { type: 'mold.rejected', reason: signature.reason };
		case 'accept deviation':
		case 'refuse deviation': {
			const accepted = signature.decision === 'accept deviation';
			return { type: 'deviation.decided', accepted, note: signature.note };
		}
	}
}

/** What was answered before a trouble is ended; nothing that was left out. */
function answersIn(signature: Partial<Record<TroubleAnswer, true | string>>) {
	const names = Object.keys(troubleAnswers) as TroubleAnswer[];
	return Object.fromEntries(
		names.map((name) => [name, signature[name]]).filter(([, answer]) => answer !== undefined)
	);
}
