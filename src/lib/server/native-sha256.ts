import { createHash } from 'node:crypto';

/** SHA-256 of the text's UTF-8 bytes, 64 lower-case hex digits: as core's own, by the machine's own. */
export function nativeSha256(text: string): string {
	return createHash('sha256').update(text).digest('hex');
}
