import { z } from 'zod';
import { PHASE_IDS } from '$lib/core/content/vocabulary';
import { HOLD_IDS } from '$lib/core/process/events';
import { postAct } from './act';
import type { AppendResult } from './append';
import { now } from './clock';
import type { Db } from './database';
import { getPerson, maySign } from './people.repository';
import { checkPin } from './pin';
import { pinSchema } from './pin-hash';

const id = z.string().min(1).max(60);
const words = z.string().trim().min(1).max(2000);
const who = { id, seq: z.number().int().min(2), supervisorId: id, pin: pinSchema };

/** A supervisor's word on a hold point, a deviation or the mold, with the PIN that stands for a signature. */
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
	z.strictObject({ decision: z.literal('refuse deviation'), ...who, note: words })
]);
export type Signature = z.infer<typeof signatureSchema>;

export type SignResult =
	| AppendResult
	| { status: 'wrong PIN'; waitS: number }
	| { status: 'may not sign'; reason: string };

/** Checks the PIN, then appends the decision in the supervisor's name. The PIN is kept nowhere. */
export async function signJob(
	db: Db,
	{ jobId, signature, address }: { jobId: string; signature: Signature; address: string }
): Promise<SignResult> {
	const { id, seq, supervisorId, pin } = signature;
	const answer = await checkPin(db, { personId: supervisorId, pin, address, at: now() });
	if (!answer.ok) return { status: 'wrong PIN', waitS: answer.waitS };

	const person = await getPerson(db, supervisorId);
	if (!person || !maySign(person)) {
		return { status: 'may not sign', reason: 'Only a supervisor or the owner signs.' };
	}
	const event = eventOf(signature);
	return postAct(db, { jobId, id, seq, by: supervisorId, event, isSigned: true });
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
		case 'reject':
			return { type: 'mold.rejected', reason: signature.reason };
		case 'accept deviation':
		case 'refuse deviation': {
			const accepted = signature.decision === 'accept deviation';
			return { type: 'deviation.decided', accepted, note: signature.note };
		}
	}
}
