import { z } from 'zod';
import { planSchema } from '$lib/core/plan/plan';
import { eventSchema } from '$lib/core/process/events';

const hash = z.string().regex(/^[0-9a-f]{64}$/);

/** A job's record as it is exported: one line of canonical JSON (RFC 8785). */
export const recordSchema = z.strictObject({
	format: z.literal('glovewright.record.1'),
	exportedAt: z.iso.datetime(),
	shop: z.strictObject({ name: z.string(), isDemo: z.boolean() }),
	plan: planSchema,
	planHash: hash.describe('SHA-256 of the canonical JSON of the plan'),
	events: z.array(
		z.strictObject({
			jobId: z.string(),
			seq: z.number().int().min(1),
			id: z.string(),
			recordedAt: z.iso.datetime(),
			event: eventSchema,
			prevHash: hash.describe('hash of the event before; 64 zeros for the first'),
			hash: hash.describe('SHA-256 of the canonical JSON of this event without "hash"')
		})
	),
	people: z.record(z.string(), z.string()).describe('name by id of everybody in the log'),
	headHash: hash.describe('hash of the last event'),
	recordHash: hash.describe('SHA-256 of the canonical JSON of this record without "recordHash"')
});
export type JobRecord = z.infer<typeof recordSchema>;
