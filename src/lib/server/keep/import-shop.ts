import { randomInt, randomUUID } from 'node:crypto';
import { canonicalJson } from '$lib/core/log/canonical';
import type { Db } from '../database';
import { insertEvent } from '../event-rows';
import { LARGEST_PART_BYTES } from '../mesh-files';
import { hashPin } from '../pin-hash';
import { schemaOf } from '../ready';
import { foldFault, rowFault } from './imported-faults';
import { meshName, photoName } from './manifest';
import { ShopExport } from './read-export';
import { insertPlainRow, PLAIN_TABLES, type Row } from './shop-tables';
import { verifyStore, type StoreCheck } from './verify-store';

/** A PIN for somebody's first visit, after which they choose their own. */
export interface FirstPin {
	name: string;
	pin: string;
}

export type Imported =
	| { status: 'imported'; check: StoreCheck; firstPins: FirstPin[] }
	| { status: 'not empty' }
	| { status: 'unfit'; reason: string };

/** An export that is whole, and yet not one that this version can work with. */
class Unfit extends Error {}

/**
 * Reads a whole shop into an empty store, all of it or nothing. Every file and every chain is verified
 * before the first row is written; before it is kept, the store is verified again, every row is read as the
 * pages will read it, and every log is folded.
 */
export async function importShop(db: Db, path: string): Promise<Imported> {
	let shop: ShopExport;
	try {
		shop = new ShopExport(path);
	} catch (error) {
		return { status: 'unfit', reason: sentenceOf(error) };
	}
	try {
		const reason = await unfitReason(db, shop);
		if (reason) return { status: 'unfit', reason };
		return await db.transaction().execute(async (trx): Promise<Imported> => {
			if (!(await isEmpty(trx))) return { status: 'not empty' };
			const firstPins = await writePlainTables(trx, shop);
			await writeJobs(trx, shop);
			await writeFiles(trx, shop);
			const check = await verifyStore(trx);
			if (check.faults.length > 0)
				throw new Error(`what was written is not whole: ${check.faults[0]}`);
			const fault = (await rowFault(trx)) ?? (await foldFault(trx, check.heads));
			if (fault) throw new Unfit(fault);
			return { status: 'imported', check, firstPins };
		});
	} catch (error) {
		if (error instanceof Unfit) return { status: 'unfit', reason: error.message };
		throw error;
	} finally {
		shop.close();
	}
}

/** Why nothing of an export is read, found without writing; null when it may be tried. */
async function unfitReason(db: Db, shop: ShopExport): Promise<string | null> {
	const [theirs, ours] = [shop.manifest.schema, (await schemaOf(db)) ?? 0];
	if (theirs > ours) {
		return `it was written by a newer Glovewright (schema ${theirs}; this one reads up to ${ours}), so read it with that version`;
	}
	try {
		for (const job of shop.manifest.jobs) shop.record(job);
		return null;
	} catch (error) {
		return sentenceOf(error);
	}
}

function sentenceOf(error: unknown): string {
	return error instanceof Error ? error.message : String(error);
}

/** Whether nobody has begun anything in this store. */
export async function isEmpty(db: Db): Promise<boolean> {
	for (const table of ['shop', 'person', 'job'] as const) {
		const row = await db.selectFrom(table).select('id').limit(1).executeTakeFirst();
		if (row) return false;
	}
	return true;
}

async function writePlainTables(trx: Db, shop: ShopExport): Promise<FirstPin[]> {
	const firstPins: FirstPin[] = [];
	for (const table of Object.keys(PLAIN_TABLES)) {
		// A table that a later version added is not in an older export.
		if (!shop.manifest.files[`tables/${table}.jsonl`]) continue;
		for (const row of shop.rows(table)) {
			const isPerson = table === 'person' && !shop.manifest.hasPins;
			await insertPlainRow(trx, table, isPerson ? await withFirstPin(row, firstPins) : row);
		}
	}
	return firstPins;
}

/** Those who may sign are given a PIN, which is not their own until they choose another; they give the others theirs. */
async function withFirstPin(row: Row, firstPins: FirstPin[]): Promise<Row> {
	const pin = String(randomInt(10_000_000, 100_000_000));
	const isSigner = row.role === 'owner' || row.role === 'supervisor';
	if (isSigner && row.retired === 0) firstPins.push({ name: String(row.name), pin });
	return { ...row, pin_hash: await hashPin(pin), pin_given_by: 'import' };
}

async function writeJobs(trx: Db, shop: ShopExport): Promise<void> {
	for (const job of shop.manifest.jobs) {
		const { plan, planHash, events } = shop.record(job);
		await trx
			.insertInto('job')
			.values({
				id: job.id,
				plan: canonicalJson(plan),
				plan_hash: planHash,
				opened_at: job.openedAt
			})
			.execute();
		for (const stored of events) await insertEvent(trx, stored);
	}
}

async function writeFiles(trx: Db, shop: ShopExport): Promise<void> {
	for (const { hash, type, addedAt } of shop.manifest.photos) {
		const bytes = shop.read(photoName(hash, type));
		await trx.insertInto('photo').values({ hash, type, bytes, added_at: addedAt }).execute();
	}
	for (const { hash, format, addedAt } of shop.manifest.meshes) {
		const bytes = shop.read(meshName(hash, format));
		const upload = randomUUID();
		for (let part = 0; part * LARGEST_PART_BYTES < bytes.length; part += 1) {
			const start = part * LARGEST_PART_BYTES;
			await trx
				.insertInto('mesh_part')
				.values({
					upload,
					part,
					bytes: bytes.subarray(start, start + LARGEST_PART_BYTES),
					added_at: addedAt
				})
				.execute();
		}
		await trx
			.insertInto('mesh_file')
			.values({ hash, upload, format, size: bytes.length, added_at: addedAt })
			.execute();
	}
}
