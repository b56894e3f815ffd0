import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Db } from '../../src/lib/server/database';
import { openPostgresStore } from '../../src/lib/server/postgres-start';
import { exportRecord } from '../../src/lib/server/record';
import { openStore } from '../../src/lib/server/store';
import { canonicalJson } from '../../src/lib/core/log/canonical';
import { fillShop, type SeededShop } from '../e2e/seeded-shop';
import { ServerProcess } from '../e2e/server-process';
import { freePort } from '../fixtures/free-port';
import { startPostgres } from '../fixtures/postgres-server';
import { alterBytes } from './altered-bytes';
import { jobsFor, killAgainAndAgain } from './kills';
import { tableOf, type Row } from './row';
import { shareJobs } from './two-servers';

export interface Measure {
	kills: number;
	benches: number;
	acts: number;
	bytes: number;
	/** How long the kills on one store may take. */
	killMinutes: number;
}

/** Runs every proof and prints each line as it is known. @returns whether all of them hold */
export async function torture(measure: Measure): Promise<boolean> {
	const rows: Row[] = [];
	const say = (row: Row) => {
		rows.push(row);
		console.log(tableOf([row]));
	};
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-torture-'));
	const postgres = await startPostgres({ isDurable: true });
	try {
		for (const row of await onSqlite(folder, measure)) say(row);
		const url = await postgres.create('kills');
		say(await onPostgres(folder, url, measure, () => postgres.kill9()));
		const shared = await postgres.create('shared');
		for (const row of await onTwoServers(folder, shared, measure)) say(row);
	} finally {
		await postgres.stop();
		rmSync(folder, { recursive: true, force: true });
	}
	console.log(`\n${tableOf(rows)}`);
	return rows.every(({ isGood }) => isGood);
}

async function server(dataDir: string, env: Record<string, string> = {}): Promise<ServerProcess> {
	return new ServerProcess({
		port: await freePort(),
		dataDir,
		clockFile: join(dataDir, 'no-offset'),
		env: { GLOVEWRIGHT_LOG: 'error', ...env }
	});
}

async function filled(db: Db, jobs: number): Promise<SeededShop> {
	const shop = await fillShop(db, { jobs });
	await db.destroy();
	return shop;
}

const deadline = (minutes: number) => performance.now() + minutes * 60_000;

async function onSqlite(folder: string, measure: Measure): Promise<Row[]> {
	const dataDir = join(folder, 'sqlite');
	const { kills: count, killMinutes } = measure;
	const shop = await filled(await openStore(dataDir), jobsFor(count));
	const killed = await killAgainAndAgain({
		store: 'SQLite',
		server: await server(dataDir),
		shop,
		count,
		deadlineMs: deadline(killMinutes)
	});
	const db = await openStore(dataDir);
	const record = await exportRecord(db, shop.jobIds[0] ?? '', new Date().toISOString());
	await db.destroy();
	return [killed, await alterBytes(canonicalJson(record), measure.bytes)];
}

async function onPostgres(
	folder: string,
	url: string,
	{ kills: count, killMinutes }: Measure,
	crash: () => Promise<void>
): Promise<Row> {
	const shop = await filled(await openPostgresStore(url), jobsFor(count));
	return killAgainAndAgain({
		store: 'PostgreSQL (itself killed every fourth time)',
		server: await server(join(folder, 'postgres'), { DATABASE_URL: url }),
		shop,
		count,
		deadlineMs: deadline(killMinutes),
		crash
	});
}

async function onTwoServers(
	folder: string,
	url: string,
	{ benches, acts }: Measure
): Promise<Row[]> {
	const shop = await filled(await openPostgresStore(url), 4);
	const env = { DATABASE_URL: url };
	return shareJobs({
		servers: [await server(join(folder, 'one'), env), await server(join(folder, 'two'), env)],
		shop,
		benches,
		acts,
		kills: 3
	});
}
