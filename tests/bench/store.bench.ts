import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { newActId } from '../../src/lib/server/act-id';
import { openStore } from '../../src/lib/server/store';
import { writeJob } from '../../src/lib/server/demo-write';
import { planHash } from '../../src/lib/core/plan/plan-hash';
import { seedBusyShop } from '../e2e/busy-shop';
import { seedShop, signIn, WORKER_PIN } from '../e2e/seeded-shop';
import { ServerProcess } from '../e2e/server-process';
import { freePort } from '../fixtures/free-port';
import { handPlan } from '../fixtures/plan';
import { Bench } from '../torture/bench';
import { Screen } from '../torture/screen';
import { benchFold } from './fold.bench';
import { medianOf } from './measure';

const SCREENS = 50;
const JOBS = 8;
const LOAD_MS = 6000;
const ENDED = 9950;

/** Times the store with the whole server around it. Needs a build. @returns lines to print */
export async function benchStore(): Promise<string[]> {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-bench-'));
	try {
		const bare = bareCommitsPerS(join(folder, 'bare.db'));
		const appends = await appendsOf(join(folder, 'appends'));
		const board = await boardMsOf(join(folder, 'board'));
		const [fromZeroMs, fromSnapshotMs] = await benchFold();
		const share = Math.round((100 * appends.perS) / bare);
		return [
			'The store, with the whole server around it (asked for)',
			`durable appends     ${appends.perS.toFixed(0)}/s, a bare loop of the same commits ${bare.toFixed(0)}/s: ${share} % (50 %)`,
			`  with ${SCREENS} screens    p50 ${appends.p50Ms.toFixed(1)} ms, p99 ${appends.p99Ms.toFixed(1)} ms (25 ms)`,
			`board, 10,000 jobs  ${board.toFixed(1)} ms from request to page, 50 of them running (50 ms)`,
			`fold, 10,000 events ${fromZeroMs.toFixed(0)} ms of processor time from zero, hashes verified (300 ms); ${fromSnapshotMs.toFixed(1)} ms from what is kept (20 ms)`
		];
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}

/** Commits of one row of an event's size in a second, with the store's own settings and nothing else. */
function bareCommitsPerS(file: string): number {
	const db = new Sqlite(file);
	for (const pragma of ['journal_mode = WAL', 'synchronous = FULL', 'foreign_keys = ON']) {
		db.pragma(pragma);
	}
	db.exec('create table event (id text primary key, seq integer, event text, hash text) strict');
	const insert = db.prepare('insert into event values (?, ?, ?, ?)');
	const event = 'x'.repeat(200);
	const hash = '0'.repeat(128);
	const fromMs = performance.now();
	let count = 0;
	while (performance.now() - fromMs < LOAD_MS / 2) insert.run(newActId(), count++, event, hash);
	const perS = (1000 * count) / (performance.now() - fromMs);
	db.close();
	return perS;
}

async function startedOn(dataDir: string): Promise<ServerProcess> {
	const server = new ServerProcess({
		port: await freePort(),
		dataDir,
		clockFile: join(dataDir, 'no-offset'),
		env: { GLOVEWRIGHT_LOG: 'error' }
	});
	await server.start();
	return server;
}

async function appendsOf(dataDir: string): Promise<Record<'perS' | 'p50Ms' | 'p99Ms', number>> {
	const { worker, jobIds } = await seedShop(dataDir, { jobs: JOBS });
	const server = await startedOn(dataDir);
	const cookie = await signIn(server.url, worker.id, WORKER_PIN);
	const screens = Array.from({ length: SCREENS }, (_, n) => new Screen(jobIds[n % JOBS] ?? ''));
	const following = screens.map((screen) => screen.follow(server.url, cookie));
	const answersMs: number[] = [];
	const post = async (jobId: string, untilMs: number) => {
		const bench = new Bench(jobId);
		while (performance.now() < untilMs) {
			const fromMs = performance.now();
			await bench.post(server.url, cookie);
			answersMs.push(performance.now() - fromMs);
		}
	};
	const allPost = async (ms: number) => {
		answersMs.length = 0;
		const fromMs = performance.now();
		await Promise.all(jobIds.map((jobId) => post(jobId, fromMs + ms)));
		return (1000 * answersMs.length) / (performance.now() - fromMs);
	};
	await Promise.all(jobIds.map((jobId) => new Bench(jobId).post(server.url, cookie)));
	await allPost(1000);
	const perS = await allPost(LOAD_MS);
	const sorted = answersMs.toSorted((a, b) => a - b);
	for (const screen of screens) screen.end();
	await Promise.all(following);
	await server.end('SIGTERM');
	const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN;
	return { perS, p50Ms: at(0.5), p99Ms: at(0.99) };
}

async function boardMsOf(dataDir: string): Promise<number> {
	const { worker } = await seedBusyShop(dataDir, 50);
	await addEnded(dataDir, worker.id);
	const server = await startedOn(dataDir);
	const cookie = await signIn(server.url, worker.id, WORKER_PIN);
	const lookMs = async () => {
		const fromMs = performance.now();
		await (await fetch(`${server.url}/board`, { headers: { cookie } })).text();
		return performance.now() - fromMs;
	};
	await lookMs();
	const looks: number[] = [];
	for (let n = 0; n < 15; n++) looks.push(await lookMs());
	await server.end('SIGTERM');
	return medianOf(looks);
}

/** Molds that were given up as soon as they were opened. */
async function addEnded(dataDir: string, by: string): Promise<void> {
	const db = await openStore(dataDir);
	const plan = handPlan();
	const hash = planHash(plan);
	const at = plan.inputs.startAt;
	const { processVersion } = plan;
	await db.transaction().execute(async (trx) => {
		for (let n = 0; n < ENDED; n++) {
			const jobId = newActId();
			const title = `Ended ${n}`;
			await writeJob(trx, {
				jobId,
				plan,
				log: [
					{
						id: newActId(),
						seq: 1,
						event: {
							type: 'job.opened',
							at,
							by,
							jobId,
							title,
							planHash: hash,
							processVersion,
							content: {}
						}
					},
					{ id: newActId(), seq: 2, event: { type: 'job.abandoned', at, by, reason: 'Given up.' } }
				]
			});
		}
	});
	await db.destroy();
}
