import { randomUUID } from 'node:crypto';
import { planHash } from '../../src/lib/core/plan/plan-hash';
import { addSeconds } from '../../src/lib/core/process/instant';
import { act } from '../../src/lib/core/process/rehearsal-act';
import { rehearseJob, type RehearsalOptions } from '../../src/lib/core/process/rehearsal';
import { writeJob } from '../../src/lib/server/demo-write';
import { openStore } from '../../src/lib/server/store';
import { handPlan } from '../fixtures/plan';
import { seedShop, type SeededShop } from './seeded-shop';

const DAY_S = 86_400;

/** Where the molds of a busy shop stand; the second one waits for a signature, the third is in trouble. */
const STATES: ReadonlyArray<Pick<RehearsalOptions, 'until' | 'mishaps'>> = [
	{ until: 'pattern' },
	{ until: (c) => c.hold !== null && c.holdRequestedAt !== null },
	{
		until: (c) => c.trouble !== null,
		mishaps: [
			{
				when: (c) => c.phase === 'build',
				acts: () => [
					act({ type: 'trouble.reported', trouble: 'bubbles', note: 'Foam all through.' }, 60)
				]
			}
		]
	},
	{ until: 'build' },
	{ until: 'gloveCure' },
	{ until: 'trim' },
	{ until: 'shell' },
	{ until: 'shellCure' },
	{ until: 'inspect' },
	{ until: 'end' }
];

/** A shop with `count` molds in turn in ten states, titled "Mold 1" and so on. */
export async function seedBusyShop(dataDir: string, count: number): Promise<SeededShop> {
	const shop = await seedShop(dataDir, { jobs: 0 });
	const startAt = addSeconds(new Date().toISOString(), -7 * DAY_S);
	const crew = { worker: shop.worker.id, supervisor: shop.supervisor.id };
	const logs = STATES.map((state) => rehearseJob(handPlan(), { ...state, startAt, crew }).log);
	const db = await openStore(dataDir);
	await db.transaction().execute(async (trx) => {
		for (let i = 0; i < count; i++) {
			const jobId = randomUUID();
			const plan = { ...handPlan(), title: `Mold ${i + 1}` };
			const log = (logs[i % logs.length] ?? []).map((logged) => ({
				...logged,
				id: randomUUID(),
				event:
					logged.event.type === 'job.opened'
						? { ...logged.event, jobId, title: plan.title, planHash: planHash(plan) }
						: logged.event
			}));
			await writeJob(trx, { jobId, plan, log });
			shop.jobIds.push(jobId);
		}
	});
	await db.destroy();
	return shop;
}
