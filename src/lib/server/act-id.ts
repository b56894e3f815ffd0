import { randomBytes } from 'node:crypto';
import { z } from 'zod';
import { uuidV7 } from '$lib/core/log/uuid-v7';

/** The id an act comes with. Logs from before it was asked for hold others, and still count. */
export const actIdSchema = z.uuidv7({ error: 'a UUID of version 7 (RFC 9562)' });

/** An id for an act that a page is about to send. */
export function newActId(): string {
	return uuidV7(Date.now(), randomBytes(10));
}
