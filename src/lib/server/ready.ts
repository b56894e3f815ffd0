import { accessSync, constants, statfsSync } from 'node:fs';
import type { Db } from './database';

/** Below it the next photo or backup may not fit. */
const LEAST_FREE_BYTES = 50_000_000;

export type Fitness = 'ok' | 'failed';
export interface Readiness {
	ready: boolean;
	checks: { store: Fitness; schema: Fitness; folder: Fitness; space: Fitness; running: Fitness };
}

let isStopping = false;

/** From now on the server says that it takes no new work. */
export function beginStopping(): void {
	isStopping = true;
}

/** The newest step of the schema that was taken, or null when the store does not answer. */
export async function schemaOf(db: Db): Promise<number | null> {
	try {
		const query = db.selectFrom('schema_version').select((e) => e.fn.max('version').as('version'));
		return (await query.executeTakeFirst())?.version ?? 0;
	} catch {
		return null;
	}
}

/**
 * Whether work can be taken: store reachable, with the schema this server migrated it to and no newer one,
 * data folder writable with room left, not stopping.
 */
export async function readiness(
	db: Db,
	{ folder, schema }: { folder: string; schema: number }
): Promise<Readiness> {
	const found = await schemaOf(db);
	const checks = {
		store: fit(found !== null),
		schema: fit(found === schema),
		folder: fit(isWritable(folder)),
		space: fit(freeBytes(folder) >= LEAST_FREE_BYTES),
		running: fit(!isStopping)
	};
	return { ready: Object.values(checks).every((check) => check === 'ok'), checks };
}

/** Room on the disk of a folder, in bytes; 0 when it cannot be asked. */
export function freeBytes(folder: string): number {
	try {
		const { bavail, bsize } = statfsSync(folder);
		return bavail * bsize;
	} catch {
		return 0;
	}
}

function isWritable(folder: string): boolean {
	try {
		accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
		return true;
	} catch {
		return false;
	}
}

function fit(isFit: boolean): Fitness {
	return isFit ? 'ok' : 'failed';
}
