import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { newActId } from '../../src/lib/server/act-id';
import { createJob } from '../../src/lib/server/jobs.repository';
import { openStore } from '../../src/lib/server/store';
import { seedShop, signIn, WORKER_PIN } from '../e2e/seeded-shop';
import { ServerProcess } from '../e2e/server-process';
import { freePort } from '../fixtures/free-port';
import { handPlan } from '../fixtures/plan';
import { KeepAlive } from './keep-alive';

const SCREENS = 50;
const BENCHES = 8;
/** Of a large shop, each sending one act at a time. */
const MANY_BENCHES = 40;
/** Worked on in turn by one bench, so that a log stays about as long as that of a mold. */
const JOBS_A_BENCH = 7;
/** As a device sends that was away. */
const TOGETHER = 50;
const WARM_MS = 1500;
const LOAD_MS = 5000;

const reading = { type: 'room.read', temperatureC: 22, humidityPct: 48, extractionOn: true };

export interface AppendTimes {
	bare: Bare;
	/** Acts on the disk in a second, one a request: of one bench, of `BENCHES` and of `MANY_BENCHES` at once. */
	alone: number;
	single: number;
	many: number;
	/** Of `BENCHES`, `TOGETHER` a request. */
	together: number;
	p50Ms: number;
	p99Ms: number;
}

/** The same rows by a loop that does nothing else. */
interface Bare {
	perS: number;
	/** Of one commit: what the machine and its disk take at that moment without any server. */
	p99Ms: number;
}

/** Appends through the whole server beside a bare loop on the same disk, and with screens that follow. */
export async function benchAppends(folder: string): Promise<AppendTimes> {
	const before = await bareCommits(join(folder, 'bare'));
	// Molds of their own for each line, or what one leaves behind is timed with the next.
	const { worker, jobIds } = await seedShop(join(folder, 'appends'), {
		jobs: (1 + 3 * BENCHES + MANY_BENCHES) * JOBS_A_BENCH
	});
	const server = await startedOn(join(folder, 'appends'));
	const cookie = await signIn(server.url, worker.id, WORKER_PIN);
	const line = new KeepAlive(server.url, cookie, MANY_BENCHES);
	const newBenches = (count = BENCHES) =>
		Array.from({ length: count }, () => new PostingBench(jobIds.splice(0, JOBS_A_BENCH), line));

	const alone = await perSecond(newBenches(1), 1);
	const single = await perSecond(newBenches(), 1);
	const many = await perSecond(newBenches(MANY_BENCHES), 1);
	const together = await perSecond(newBenches(), TOGETHER);
	const benches = newBenches();
	const screens = await Promise.all(
		benches
			.flatMap(({ jobIds: ids }) => ids)
			.slice(0, SCREENS)
			.map((jobId) => line.follow(`/api/jobs/${jobId}/live`))
	);
	await perSecond(benches, 1);
	const answersMs = benches.flatMap((bench) => bench.answersMs);

	if (screens.some((end) => end() < 200)) throw new Error('a screen heard nothing');
	line.end();
	await server.end('SIGTERM');
	const after = await bareCommits(join(folder, 'bare-after'));
	// The better one: other work on the machine must not make the server look good.
	const bare = after.perS > before.perS ? after : before;
	const [p50Ms, p99Ms] = [shareOf(answersMs, 0.5), shareOf(answersMs, 0.99)];
	return { bare, alone, single, many, together, p50Ms, p99Ms };
}

/** The value that this share of all is not above. */
function shareOf(values: readonly number[], share: number): number {
	const sorted = [...values].sort((a, b) => a - b);
	return sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN;
}

/** One bench at a few molds: it sends, waits for the answer and sends again, to one after another. */
class PostingBench {
	answersMs: number[] = [];
	readonly #seqs: Map<string, number>;
	#turn = 0;

	constructor(
		readonly jobIds: readonly string[],
		private readonly line: KeepAlive
	) {
		this.#seqs = new Map(jobIds.map((id) => [id, 2]));
	}

	/** @returns how many acts were written until then */
	async post(count: number, untilMs: number): Promise<number> {
		this.answersMs = [];
		let written = 0;
		while (performance.now() < untilMs) {
			const fromMs = performance.now();
			const jobId = this.jobIds[this.#turn++ % this.jobIds.length] ?? '';
			const seq = this.#seqs.get(jobId) ?? 2;
			const acts = Array.from({ length: count }, (_, n) => ({
				id: newActId(),
				seq: seq + n,
				event: reading
			}));
			await this.#send(jobId, acts);
			this.#seqs.set(jobId, seq + count);
			written += count;
			this.answersMs.push(performance.now() - fromMs);
		}
		return written;
	}

	async #send(
		jobId: string,
		acts: Array<{ id: string; seq: number; event: object }>
	): Promise<void> {
		const [only] = acts;
		if (acts.length === 1 && only) {
			await this.line.post(`/api/jobs/${jobId}/events`, only);
			return;
		}
		const said = await this.line.post('/api/acts', {
			acts: acts.map((act) => ({ ...act, jobId }))
		});
		if (said.includes('"problem"')) throw new Error(`not written: ${said.slice(0, 500)}`);
	}
}

async function perSecond(benches: readonly PostingBench[], count: number): Promise<number> {
	const run = async (ms: number) => {
		const fromMs = performance.now();
		const each = await Promise.all(benches.map((bench) => bench.post(count, fromMs + ms)));
		return (1000 * each.reduce((sum, n) => sum + n, 0)) / (performance.now() - fromMs);
	};
	await run(WARM_MS);
	return run(LOAD_MS);
}

export async function startedOn(dataDir: string): Promise<ServerProcess> {
	const server = new ServerProcess({
		port: await freePort(),
		dataDir,
		// None: reading one at each look at the clock is no part of what is timed.
		clockFile: '',
		env: { GLOVEWRIGHT_LOG: 'error' }
	});
	await server.start();
	return server;
}

/** Commits of the same rows into the same table, with the store's own settings and nothing else. */
async function bareCommits(folder: string): Promise<Bare> {
	mkdirSync(folder, { recursive: true });
	const store = await openStore(folder);
	const at = new Date().toISOString();
	const jobId = await createJob(store, { plan: handPlan(), by: 'somebody', at, content: {} });
	await store.destroy();
	const db = new Sqlite(join(folder, 'glovewright.db'));
	for (const pragma of ['journal_mode = WAL', 'synchronous = FULL', 'foreign_keys = ON']) {
		db.pragma(pragma);
	}
	const insert = db.prepare(
		'insert into event (id, job_id, seq, event, recorded_at, prev_hash, hash) values (?, ?, ?, ?, ?, ?, ?)'
	);
	const event = JSON.stringify({ ...reading, at, by: newActId() });
	const hash = '0'.repeat(64);
	const eachMs: number[] = [];
	const fromMs = performance.now();
	let lastMs = fromMs;
	let seq = 2;
	while (lastMs - fromMs < LOAD_MS / 2) {
		insert.run(newActId(), jobId, seq++, event, at, hash, hash);
		const nowMs = performance.now();
		eachMs.push(nowMs - lastMs);
		lastMs = nowMs;
	}
	db.close();
	return { perS: (1000 * eachMs.length) / (lastMs - fromMs), p99Ms: shareOf(eachMs, 0.99) };
}

/** Lines to print. */
export function appendLines(times: AppendTimes): string[] {
	const { bare, alone, single, many, together, p50Ms, p99Ms } = times;
	const beside = (perS: number) =>
		`${perS.toFixed(0).padStart(5)}/s beside ${bare.perS.toFixed(0)}/s of a bare loop: ${Math.round((100 * perS) / bare.perS)} %`;
	return [
		`durable appends (50 %)`,
		`  ${BENCHES} benches, ${TOGETHER} acts a request  ${beside(together)}`,
		`  ${MANY_BENCHES} benches, one a request     ${beside(many)}`,
		`  ${BENCHES} benches, one a request      ${beside(single)}`,
		`  one bench, act after act     ${beside(alone)}`,
		`  ${BENCHES} benches, one a request, ${SCREENS} screens following  p50 ${p50Ms.toFixed(1)} ms, p99 ${p99Ms.toFixed(1)} ms (25 ms); p99 of a bare commit ${bare.p99Ms.toFixed(1)} ms`
	];
}
