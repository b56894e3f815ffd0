import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/**
 * The one text a JSON value has: keys sorted by UTF-16 code units, no white space, numbers as
 * ECMAScript prints them. Properties that are undefined are left out.
 *
 * @throws TypeError when the value has no JSON text: undefined, a function, NaN, an infinity, a lone
 *   surrogate or a circle. Source: RFC 8785 (2020), JSON Canonicalization Scheme
 */
export function canonicalJson(value: unknown): string {
	let text: string | undefined;
	try {
		text = canonicalize(value);
	} catch (error) {
		const reason = error instanceof Error ? error.message : String(error);
		throw new TypeError(`no canonical JSON for this value: ${reason}`, { cause: error });
	}
	if (text === undefined) {
		throw new TypeError(`no canonical JSON for ${typeof value}; accepted: a JSON value`);
	}
	return text;
}

/** SHA-256 of the text's UTF-8 bytes, 64 lower-case hex digits. Source: FIPS 180-4 (2015). */
export function sha256Hex(text: string): string {
	return bytesToHex(sha256(utf8ToBytes(text)));
}
