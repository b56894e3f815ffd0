import { createHash } from 'node:crypto';
import { now } from './clock';
import type { Db } from './database';
import { cleanPhoto, type CleanPhoto } from './photo/clean-photo';

export const LARGEST_PHOTO_BYTES = 6_000_000;

export type SavedPhoto = { status: 'saved'; hash: string } | { status: 'refused'; reason: string };

/**
 * Keeps a photo under the SHA-256 of its bytes, without place, time and device, which a camera writes
 * beside the picture; the same photo twice is kept once.
 */
export async function savePhoto(db: Db, { bytes }: { bytes: Uint8Array }): Promise<SavedPhoto> {
	if (bytes.length > LARGEST_PHOTO_BYTES) {
		return {
			status: 'refused',
			reason: `The photo has ${bytes.length} bytes; accepted: up to ${LARGEST_PHOTO_BYTES}.`
		};
	}
	let clean: CleanPhoto;
	try {
		clean = cleanPhoto(bytes);
	} catch (error) {
		return { status: 'refused', reason: error instanceof Error ? error.message : 'Not a photo.' };
	}
	const { type } = clean;
	const hash = createHash('sha256').update(clean.bytes).digest('hex');
	await db
		.insertInto('photo')
		.values({ hash, type, bytes: clean.bytes, added_at: now() })
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
