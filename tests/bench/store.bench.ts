import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { newActId } from '../../src/lib/server/act-id';
import { openStore } from '../../src/lib/server/store';
import { writeJob } from '../../src/lib/server/demo-write';
import { planHash } from '../../src/lib/core/plan/plan-hash';
import { seedBusyShop } from '../e2e/busy-shop';
import { signIn, WORKER_PIN } from '../e2e/seeded-shop';
import { handPlan } from '../fixtures/plan';
import { appendLines, benchAppends, startedOn } from './appends.bench';
import { benchFold } from './fold.bench';
import { medianOf } from './measure';

const ENDED = 9950;

/** Times the store with the whole server around it. Needs a build. @returns lines to print */
export async function benchStore(): Promise<string[]> {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-bench-'));
	try {
		const appends = await benchAppends(folder);
		const board = await boardMsOf(join(folder, 'board'));
		const [fromZeroMs, fromSnapshotMs] = await benchFold();
		return [
			'The store, with the whole server around it (asked for)',
			...appendLines(appends),
			`board, 10,000 jobs  ${board.toFixed(1)} ms from request to page, 50 of them running (50 ms)`,
			`fold, 10,000 events ${fromZeroMs.toFixed(0)} ms of processor time from zero, hashes verified (300 ms); ${fromSnapshotMs.toFixed(1)} ms from what is kept (20 ms)`
		];
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
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
