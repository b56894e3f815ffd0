import { sealEvent } from '../../src/lib/core/log/chain';
import { newActId } from '../../src/lib/server/act-id';
import { openDatabase } from '../../src/lib/server/database';
import { insertEvent } from '../../src/lib/server/event-rows';
import { isDamaged, readJobFile, type JobFile } from '../../src/lib/server/job-file';
import { createJob } from '../../src/lib/server/jobs.repository';
import { migrate } from '../../src/lib/server/migrate';
import { handPlan } from '../fixtures/plan';
import { medianOf } from './measure';

const EVENTS = 10_000;
/** What came after the snapshot. */
const NEWS = 50;

/** Reads a job of 10,000 events, from nothing and from what is kept. @returns processor time of both, ms */
export async function benchFold(): Promise<[fromZeroMs: number, fromSnapshotMs: number]> {
	const db = openDatabase(':memory:');
	const at = '2026-01-01T00:00:00.000Z';
	await migrate(db, at);
	const jobId = await createJob(db, { plan: handPlan(), by: 'somebody', at, content: {} });
	const event = {
		...{ type: 'room.read' as const, at, by: 'somebody' },
		...{ temperatureC: 22, humidityPct: 48, extractionOn: true }
	};
	const read = async (known?: JobFile): Promise<JobFile> => {
		const job = await readJobFile(db, jobId, known);
		if (!job || isDamaged(job)) throw new Error('the bench wrote a job it cannot read');
		return job;
	};
	const grow = async (from: JobFile, until: number) => {
		let { headHash: prevHash } = from;
		await db.transaction().execute(async (trx) => {
			for (let seq = from.headSeq + 1; seq <= until; seq++) {
				const stored = sealEvent({ jobId, seq, id: newActId(), recordedAt: at, event, prevHash });
				await insertEvent(trx, stored);
				prevHash = stored.hash;
			}
		});
	};
	await grow(await read(), EVENTS - NEWS);
	const snapshot = await read();
	await grow(snapshot, EVENTS);
	const times = async (run: () => Promise<unknown>) => {
		const each: number[] = [];
		for (let n = 0; n < 7; n++) {
			const from = process.cpuUsage();
			await run();
			const { user, system } = process.cpuUsage(from);
			each.push((user + system) / 1000);
		}
		return medianOf(each);
	};
	const result = [await times(() => read()), await times(() => read(snapshot))] as const;
	await db.destroy();
	return [...result];
}
