import { randomBytes, scrypt, timingSafeEqual, type ScryptOptions } from 'node:crypto';
import { z } from 'zod';

export const pinSchema = z.string().regex(/^\d{4,8}$/, 'a PIN of 4 to 8 digits');

/** Memory-hard: 32 MiB a try. Source: RFC 7914 (2016), scrypt; N is the cost, r the block size. */
const COST = { N: 2 ** 15, r: 8, p: 1 };
const KEY_BYTES = 32;

/** The text to keep for a PIN: "scrypt$N$r$p$salt$key", with a salt of its own. */
export async function hashPin(pin: string): Promise<string> {
	const salt = randomBytes(16);
	const key = await derive(pin, salt, COST);
	const { N, r, p } = COST;
	return ['scrypt', N, r, p, salt.toString('base64'), key.toString('base64')].join('$');
}

/** Whether `pin` is the one behind `kept`, in a time that does not depend on where they differ. */
export async function pinMatches(pin: string, kept: string): Promise<boolean> {
	const [, N, r, p, salt = '', key = ''] = kept.split('$');
	const expected = Buffer.from(key, 'base64');
	const cost = { N: Number(N), r: Number(r), p: Number(p) };
	const found = await derive(pin, Buffer.from(salt, 'base64'), cost);
	return found.length === expected.length && timingSafeEqual(found, expected);
}

function derive(pin: string, salt: Buffer, cost: Required<Pick<ScryptOptions, 'N' | 'r' | 'p'>>) {
	// Node refuses 128 * N * r bytes unless the limit is above it.
	const options = { ...cost, maxmem: 256 * cost.N * cost.r };
	return new Promise<Buffer>((resolve, reject) => {
		scrypt(pin, salt, KEY_BYTES, options, (error, key) => (error ? reject(error) : resolve(key)));
	});
}
