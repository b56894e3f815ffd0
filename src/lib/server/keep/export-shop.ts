import { existsSync, renameSync, rmSync } from 'node:fs';
import type { Db } from '../database';
import { openMesh } from '../mesh-files';
import { schemaOf } from '../ready';
import { exportRecord } from '../record';
import { getShop } from '../shop.repository';
import { canonicalJson } from '$lib/core/log/canonical';
import { csvFiles } from './export-csv';
import { exportReadme } from './export-readme';
import { manifestHashOf, meshName, photoName, recordName, type Manifest } from './manifest';
import { ShopExport } from './read-export';
import { PLAIN_TABLES, plainRows } from './shop-tables';
import { headListText, verifyJob, type Head } from './verify-store';
import { ZipWriter, type Chunks } from './zip-writer';

export interface ExportOptions {
	/** Where the zip goes; there must be no file yet. */
	to: string;
	at: string;
	/** With the hashes of PINs, so that people can go on signing in where it is read. */
	withPins: boolean;
}

/**
 * Writes the whole shop as one zip of open formats. The store must hold still meanwhile: a copy, or a
 * transaction that sees one instant. The zip appears under its name only after it was read again from the
 * disk: every file against its hash, every chain from its first event.
 *
 * @throws Error when there is no shop, or the file cannot be written or is not whole; then there is no file
 */
export async function exportShop(db: Db, options: ExportOptions): Promise<Manifest> {
	const { to } = options;
	if (existsSync(to)) throw new Error(`There is a ${to} already.`);
	const partial = `${to}.partial`;
	// Left over by a process that was killed.
	rmSync(partial, { force: true });
	try {
		const manifest = await write(db, partial, options);
		verifyExport(partial);
		renameSync(partial, to);
		return manifest;
	} catch (error) {
		rmSync(partial, { force: true });
		throw error;
	}
}

async function write(db: Db, path: string, options: ExportOptions): Promise<Manifest> {
	const zip = new ZipWriter(path);
	try {
		const manifest = await fill(db, zip, options);
		manifest.manifestHash = manifestHashOf(manifest);
		await zip.add('manifest.json', [JSON.stringify(manifest, null, '\t')]);
		zip.finish();
		return manifest;
	} finally {
		zip.close();
	}
}

/** @throws Error when a file, or a mold's chain, is not what was to be written */
function verifyExport(path: string): void {
	const written = new ShopExport(path);
	try {
		for (const job of written.manifest.jobs) written.record(job);
	} finally {
		written.close();
	}
}

async function fill(db: Db, zip: ZipWriter, { at, withPins }: ExportOptions): Promise<Manifest> {
	const shop = await getShop(db);
	if (!shop) throw new Error('There is no shop in this store yet.');
	const manifest: Manifest = {
		format: 'glovewright.shop.1',
		exportedAt: at,
		shop: shop.name,
		schema: (await schemaOf(db)) ?? 0,
		hasPins: withPins,
		damaged: [],
		jobs: [],
		photos: [],
		meshes: [],
		files: {},
		manifestHash: ''
	};
	const add = async (name: string, chunks: Chunks, packed = true) => {
		manifest.files[name] = await zip.add(name, chunks, { packed });
	};
	await add('README.md', [exportReadme(shop.name, at, withPins)]);
	for (const table of Object.keys(PLAIN_TABLES)) {
		const rows = await plainRows(db, table, withPins);
		await add(
			`tables/${table}.jsonl`,
			rows.map((row) => `${JSON.stringify(row)}\n`)
		);
	}
	const heads = await addRecords(db, at, { manifest, add });
	await add('heads.json', [headListText(heads, shop.name, at)]);
	for (const [name, chunks] of csvFiles(
		db,
		manifest.jobs.map(({ id }) => id)
	)) {
		await add(name, chunks);
	}
	await addFiles(db, { manifest, add });
	return manifest;
}

interface Target {
	manifest: Manifest;
	add: (name: string, chunks: Chunks, packed?: boolean) => Promise<void>;
}

async function addRecords(db: Db, at: string, { manifest, add }: Target): Promise<Head[]> {
	const jobs = await db
		.selectFrom('job')
		.select(['id', 'opened_at'])
		.orderBy('opened_at')
		.orderBy('id')
		.execute();
	const heads: Head[] = [];
	for (const { id, opened_at } of jobs) {
		const head = await verifyJob(db, id);
		const record = 'fault' in head ? null : await exportRecord(db, id, at);
		if ('fault' in head || !record) {
			manifest.damaged.push(`${id}: ${'fault' in head ? head.fault : 'it is not there'}`);
			continue;
		}
		await add(recordName(id), [canonicalJson(record)]);
		heads.push(head);
		const { seq, headHash } = head;
		manifest.jobs.push({ id, openedAt: opened_at, headHash, seq });
	}
	return heads;
}

async function addFiles(db: Db, { manifest, add }: Target): Promise<void> {
	const photos = await db.selectFrom('photo').select('hash').orderBy('hash').execute();
	for (const { hash } of photos) {
		const { bytes, type, added_at } = await db
			.selectFrom('photo')
			.selectAll()
			.where('hash', '=', hash)
			.executeTakeFirstOrThrow();
		// Packed already by their own format.
		await add(photoName(hash, type), [bytes], false);
		manifest.photos.push({ hash, type, addedAt: added_at });
	}
	const meshes = await db.selectFrom('mesh_file').selectAll().orderBy('hash').execute();
	for (const { hash, format, added_at } of meshes) {
		const mesh = await openMesh(db, hash);
		if (mesh) await add(meshName(hash, format), mesh.stream);
		manifest.meshes.push({ hash, format, addedAt: added_at });
	}
}
