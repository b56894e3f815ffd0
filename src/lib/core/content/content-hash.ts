import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/**
 * SHA-256 of a file's raw text as UTF-8, in lower-case hex (64 digits). A record keeps it beside
 * "read by", so that years later the very words a person read can be found again.
 *
 * Source: FIPS 180-4.
 */
export function contentHash(text: string): string {
	return bytesToHex(sha256(utf8ToBytes(text)));
}
