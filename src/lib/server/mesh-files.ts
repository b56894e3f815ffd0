import { createHash } from 'node:crypto';
import { now } from './clock';
import type { Db } from './database';
import { meshFormatOf, type MeshFileFormat } from './mesh-format';

export const LARGEST_PART_BYTES = 4_000_000;
const MOST_PARTS = 75;
/** Parts that never became a file are thrown away after a day. */
const STALE_MS = 86_400_000;

export type KeptPart = { status: 'kept' } | { status: 'refused'; reason: string };
export type SavedMesh =
	| { status: 'saved'; hash: string; format: MeshFileFormat; size: number }
	| { status: 'refused'; reason: string };

/** Takes one part of a mesh file; the same part twice is kept once. */
export async function keepPart(
	db: Db,
	{ upload, part, bytes }: { upload: string; part: number; bytes: Uint8Array }
): Promise<KeptPart> {
	if (part >= MOST_PARTS) {
		const most = (MOST_PARTS * LARGEST_PART_BYTES) / 1e6;
		return { status: 'refused', reason: `The file is too large; accepted: up to ${most} MB.` };
	}
	if (bytes.length === 0 || bytes.length > LARGEST_PART_BYTES) {
		return {
			status: 'refused',
			reason: `The part has ${bytes.length} bytes; accepted: 1 to ${LARGEST_PART_BYTES}.`
		};
	}
	if (part === 0) await dropStale(db);
	await db
		.insertInto('mesh_part')
		.values({ upload, part, bytes, added_at: now() })
		.onConflict((conflict) => conflict.columns(['upload', 'part']).doNothing())
		.execute();
	return { status: 'kept' };
}

/** Makes a file of the parts of an upload, under the SHA-256 of its bytes; the same file twice is kept once. */
export async function saveMesh(
	db: Db,
	{ upload, parts }: { upload: string; parts: number }
): Promise<SavedMesh> {
	const hash = createHash('sha256');
	let head = new Uint8Array(0);
	let size = 0;
	for (let part = 0; part < parts; part += 1) {
		const bytes = await partOf(db, upload, part);
		if (!bytes) return { status: 'refused', reason: `Part ${part} of ${parts} was not sent.` };
		if (part === 0) head = new Uint8Array(bytes);
		hash.update(bytes);
		size += bytes.length;
	}
	const format = meshFormatOf(head, size);
	if (!format) {
		return { status: 'refused', reason: 'Not a mesh file; accepted: STL, OBJ, PLY or 3MF.' };
	}
	const digest = hash.digest('hex');
	await db
		.insertInto('mesh_file')
		.values({ hash: digest, upload, format, size, added_at: now() })
		.onConflict((conflict) => conflict.doNothing())
		.execute();
	const kept = await findMesh(db, digest);
	if (kept && kept.upload !== upload) {
		await db.deleteFrom('mesh_part').where('upload', '=', upload).execute();
	}
	return { status: 'saved', hash: digest, format, size };
}

export async function hasMesh(db: Db, hash: string): Promise<boolean> {
	return (await findMesh(db, hash)) !== null;
}

/** A kept file as a stream, part by part; null when there is none under this hash. */
export async function openMesh(
	db: Db,
	hash: string
): Promise<{ size: number; stream: ReadableStream<Uint8Array> } | null> {
	const file = await findMesh(db, hash);
	if (!file) return null;
	let part = 0;
	const stream = new ReadableStream<Uint8Array>({
		async pull(controller) {
			const bytes = await partOf(db, file.upload, part);
			part += 1;
			if (bytes) controller.enqueue(new Uint8Array(bytes));
			else controller.close();
		}
	});
	return { size: file.size, stream };
}

async function findMesh(db: Db, hash: string) {
	const row = await db
		.selectFrom('mesh_file')
		.selectAll()
		.where('hash', '=', hash)
		.executeTakeFirst();
	return row ?? null;
}

async function partOf(db: Db, upload: string, part: number): Promise<Uint8Array | null> {
	const row = await db
		.selectFrom('mesh_part')
		.select('bytes')
		.where('upload', '=', upload)
		.where('part', '=', part)
		.executeTakeFirst();
	return row?.bytes ?? null;
}

async function dropStale(db: Db): Promise<void> {
	const before = new Date(Date.parse(now()) - STALE_MS).toISOString();
	await db
		.deleteFrom('mesh_part')
		.where('added_at', '<', before)
		.where('upload', 'not in', db.selectFrom('mesh_file').select('upload'))
		.execute();
}
