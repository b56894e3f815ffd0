import { z } from 'zod';
import { planInputsSchema } from '$lib/core/plan/inputs';
import { actIdSchema } from './act-id';
import { pinSchema } from './pin-hash';
import { planDecisionSchema } from './plan-decision';

const id = z.string().regex(/^[\w-]{8,60}$/, '8 to 60 letters, digits, "_" or "-"; a UUID will do');
const hash = z.string().regex(/^[0-9a-f]{64}$/, 'a SHA-256 in 64 lower-case hex digits');

export const newSessionSchema = z.strictObject({
	personId: z.string().min(1).max(60),
	pin: z.string().max(20),
	newPin: pinSchema.optional().describe('Replaces the PIN; needed while somebody else gave it')
});

export const newJobSchema = z.strictObject({
	id: id.optional().describe('Chosen by the sender; sent twice, it opens one job'),
	title: z
		.string()
		.trim()
		.min(1)
		.max(120)
		.optional()
		.describe('What the mold is called, which no running mold may be; numbered when left out'),
	inputs: planInputsSchema,
	planHash: hash.describe('Of the plan as it was shown, so that nobody accepts another one'),
	decision: planDecisionSchema
		.optional()
		.describe(
			'Needed when the plan has a warning of severity "decide"; kept in the log, the PIN is not'
		)
});

export const newEventSchema = z.strictObject({
	id: actIdSchema.describe('A UUID of version 7, made by the sender; sent twice, it is one act'),
	seq: z.number().int().min(2).max(1_000_000).describe('Last number seen in the log, plus one'),
	event: z
		.looseObject({ type: z.string().max(60) })
		.describe(
			'An act; "by" may only be whoever is signed in; without "at" it is done at this moment'
		)
});

/** As many as a device sends at once. */
const MOST_ACTS = 100;

export const newActsSchema = z.strictObject({
	acts: z
		.array(newEventSchema.extend({ jobId: z.string().min(1).max(60) }))
		.min(1)
		.max(MOST_ACTS)
		.describe('In the order in which they were done; of any jobs')
});

export const meshPartSchema = z.strictObject({
	upload: id.describe('Chosen by the sender for one file'),
	part: z.coerce.number({ error: 'a whole number from 0' }).int().min(0)
});

export const newMeshSchema = z.strictObject({
	upload: id.describe('As given with the parts'),
	parts: z.number().int().min(1).max(1000).describe('How many parts were sent')
});

export const afterSchema = z.strictObject({
	after: z.coerce.number({ error: 'a whole number from 0' }).int().min(0)
});
