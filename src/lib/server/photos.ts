import { createHash } from 'node:crypto';
import { now } from './clock';
import type { Db } from './database';

export const LARGEST_PHOTO_BYTES = 6_000_000;

export type SavedPhoto = { status: 'saved'; hash: string } | { status: 'refused'; reason: string };

/** Keeps a photo under the SHA-256 of its bytes; the same photo twice is kept once. */
export async function savePhoto(db: Db, { bytes }: { bytes: Uint8Array }): Promise<SavedPhoto> {
	if (bytes.length > LARGEST_PHOTO_BYTES) {
		return {
			status: 'refused',
			reason: `The photo has ${bytes.length} bytes; accepted: up to ${LARGEST_PHOTO_BYTES}.`
		};
	}
	const type = imageTypeOf(bytes);
	if (!type) return { status: 'refused', reason: 'Not a photo; accepted: JPEG, PNG or WebP.' };

	const hash = createHash('sha256').update(bytes).digest('hex');
	await db
		.insertInto('photo')
		.values({ hash, type, bytes, added_at: now() })
		.onConflict((conflict) => conflict.column('hash').doNothing())
		.execute();
	return { status: 'saved', hash };
}

export async function getPhoto(
	db: Db,
	hash: string
): Promise<{ type: string; bytes: Uint8Array } | null> {
	const row = await db
		.selectFrom('photo')
		.select(['type', 'bytes'])
		.where('hash', '=', hash)
		.executeTakeFirst();
	return row ?? null;
}

/**
 * What the first bytes say it is, whatever its name. Source: signatures of ISO/IEC 10918-1 (JPEG),
 * ISO/IEC 15948 (PNG) and RFC 9649 (WebP), from memory.
 */
function imageTypeOf(bytes: Uint8Array): string | null {
	const latin = Buffer.from(bytes.subarray(0, 16)).toString('latin1');
	if (latin.startsWith('\xff\xd8\xff')) return 'image/jpeg';
	if (latin.startsWith('\x89PNG\r\n\x1a\n')) return 'image/png';
	if (latin.startsWith('RIFF') && latin.slice(8, 12) === 'WEBP') return 'image/webp';
	return null;
}
