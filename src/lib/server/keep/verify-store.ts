import { createHash } from 'node:crypto';
import { setImmediate as turn } from 'node:timers/promises';
import { canonicalJson } from '$lib/core/log/canonical';
import { verifyChain } from '$lib/core/log/chain';
import type { Db } from '../database';
import { readEvents } from '../event-rows';
import { openMesh } from '../mesh-files';
import { nativeSha256 } from '../native-sha256';

/** The last link of a job's chain: whoever keeps it elsewhere sees a log that was rewritten whole. */
export interface Head {
	jobId: string;
	seq: number;
	headHash: string;
}

export interface StoreCheck {
	/** What is wrong, one sentence each; empty when everything is as it was written. */
	faults: string[];
	heads: Head[];
	jobs: number;
	events: number;
	photos: number;
	meshes: number;
}

/** Verifies everything in a store that has a hash: plans, logs, photos, mesh files. */
export async function verifyStore(db: Db): Promise<StoreCheck> {
	const check: StoreCheck = { faults: [], heads: [], jobs: 0, events: 0, photos: 0, meshes: 0 };
	await verifyJobs(db, check);
	await verifyPhotos(db, check);
	await verifyMeshes(db, check);
	return check;
}

async function verifyJobs(db: Db, check: StoreCheck): Promise<void> {
	const jobs = await db.selectFrom('job').select('id').orderBy('id').execute();
	for (const { id } of jobs) {
		await turn();
		const found = await verifyJob(db, id);
		check.jobs += 1;
		if ('fault' in found) check.faults.push(`Job ${id}: ${found.fault}.`);
		else {
			check.events += found.seq;
			check.heads.push(found);
		}
	}
}

/** The head of one job, or what is wrong with it. */
export async function verifyJob(db: Db, id: string): Promise<Head | { fault: string }> {
	const row = await db.selectFrom('job').selectAll().where('id', '=', id).executeTakeFirst();
	if (!row) return { fault: 'it is not there' };
	if (nativeSha256(row.plan) !== row.plan_hash)
		return { fault: 'the plan does not match its hash' };
	let log;
	try {
		log = await readEvents(db, id);
	} catch (error) {
		if (error instanceof SyntaxError) return { fault: 'an event can no longer be read' };
		throw error;
	}
	const first = log[0];
	if (first?.jobId !== id || first.event.type !== 'job.opened')
		return { fault: 'it has no opening' };
	if (first.event.planHash !== row.plan_hash) return { fault: 'it was opened with another plan' };
	const chain = verifyChain(log, nativeSha256);
	return chain.ok ? { jobId: id, seq: log.length, headHash: chain.head } : { fault: chain.reason };
}

async function verifyPhotos(db: Db, check: StoreCheck): Promise<void> {
	const photos = await db.selectFrom('photo').select('hash').orderBy('hash').execute();
	for (const { hash } of photos) {
		await turn();
		const row = await db
			.selectFrom('photo')
			.select('bytes')
			.where('hash', '=', hash)
			.executeTakeFirst();
		const found = createHash('sha256')
			.update(row?.bytes ?? '')
			.digest('hex');
		if (found !== hash) check.faults.push(`Photo ${hash}: it was altered.`);
		check.photos += 1;
	}
}

async function verifyMeshes(db: Db, check: StoreCheck): Promise<void> {
	const meshes = await db.selectFrom('mesh_file').select('hash').orderBy('hash').execute();
	for (const { hash } of meshes) {
		const sum = createHash('sha256');
		const mesh = await openMesh(db, hash);
		for await (const bytes of mesh?.stream ?? []) sum.update(bytes);
		if (sum.digest('hex') !== hash) check.faults.push(`Mesh file ${hash}: it was altered.`);
		check.meshes += 1;
	}
}

/** The list of heads as it is kept elsewhere: one line of canonical JSON with a hash of its own. */
export function headListText(heads: readonly Head[], shopName: string, at: string): string {
	const unsealed = { format: 'glovewright.heads.1', at, shop: shopName, heads };
	return canonicalJson({ ...unsealed, listHash: nativeSha256(canonicalJson(unsealed)) });
}
