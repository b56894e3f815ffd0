import { setTimeout as wait } from 'node:timers/promises';
import { newActId } from '../../src/lib/server/act-id';
import { expect, test } from './app';
import { seedShop, signIn, WORKER_PIN } from './seeded-shop';

const KILLS = 50;
/** The very file that is handed out to verify records with. */
const verifier = new URL('../../scripts/verify.mjs', import.meta.url).href;
/** Keeps the logs short enough for the whole test to stay under a few minutes. */
const MOST_ACTS_A_ROUND = 25;

interface Bench {
	jobId: string;
	seq: number;
	/** The act on its way: sent again, under the same id, until it is answered. */
	id: string;
	acknowledged: string[];
	/** Called at each acknowledgement. */
	hear: () => void;
}

interface Answer {
	status: 'appended' | 'duplicate';
	stored: { seq: number };
}

const reading = { type: 'room.read', temperatureC: 22, humidityPct: 48, extractionOn: true };

/** Posts acts one after another until the server goes away or enough were posted. @returns whether it went away */
async function postUntilGone(url: string, cookie: string, bench: Bench): Promise<boolean> {
	for (let n = 0; n < MOST_ACTS_A_ROUND; n++) {
		let response: Response;
		let answer: Answer;
		try {
			response = await fetch(`${url}/api/jobs/${bench.jobId}/events`, {
				method: 'POST',
				headers: { 'content-type': 'application/json', cookie },
				body: JSON.stringify({ id: bench.id, seq: bench.seq, event: reading })
			});
			answer = (await response.json()) as Answer;
		} catch {
			return true;
		}
		expect([200, 201], JSON.stringify(answer)).toContain(response.status);
		expect(answer.stored.seq).toBe(bench.seq);
		bench.acknowledged.push(bench.id);
		bench.seq += 1;
		bench.id = newActId();
		bench.hear();
	}
	return false;
}

/** Resolves after this many further acknowledgements, at once for none. */
function acknowledgements(benches: Bench[], most: number): Promise<void> {
	return new Promise((resolve) => {
		let left = most;
		const hear = () => {
			left -= 1;
			if (left <= 0) resolve();
		};
		for (const bench of benches) bench.hear = hear;
		if (most === 0) resolve();
	});
}

test(`killed ${KILLS} times while two benches post, the server loses no acknowledged act`, async ({
	app
}) => {
	test.setTimeout(900_000);
	const { faultOf } = (await import(verifier)) as { faultOf: (text: string) => string | null };
	const { worker, jobIds } = await seedShop(app.dataDir, { jobs: 2 });
	const cookie = await signIn(app.url, worker.id, WORKER_PIN);
	const benches = jobIds.map((jobId): Bench => ({
		jobId,
		seq: 2,
		id: newActId(),
		acknowledged: [],
		hear: () => {}
	}));
	let cutShort = 0;
	for (let kill = 0; kill < KILLS; kill++) {
		const underWay = acknowledgements(benches, kill % 7);
		const posting = benches.map((bench) => postUntilGone(app.url, cookie, bench));
		// Before the first answer or after a few, and then at a different instant each time.
		await underWay;
		await wait((kill * 37) % 23);
		await app.kill9();
		const wereCut = await Promise.all(posting);
		if (wereCut.includes(true)) cutShort += 1;

		for (const { jobId, acknowledged } of benches) {
			const response = await fetch(`${app.url}/api/jobs/${jobId}/record.json`, {
				headers: { cookie }
			});
			const text = await response.text();
			expect(faultOf(text)).toBeNull();
			const { events } = JSON.parse(text) as { events: Array<{ id: string }> };
			const ids = events.map((stored) => stored.id);
			expect(acknowledged.filter((id) => !ids.includes(id))).toEqual([]);
			expect(new Set(ids).size).toBe(ids.length);
			// At most the one act that was on its way may be there unacknowledged.
			expect(ids.length - 1 - acknowledged.length).toBeLessThanOrEqual(1);
		}
	}
	const total = benches.reduce((sum, bench) => sum + bench.acknowledged.length, 0);
	console.log(`${KILLS} kills, ${total} acts acknowledged, 0 lost, every chain verified`);
	expect(total).toBeGreaterThan(2 * KILLS);
	expect(cutShort).toBeGreaterThan(KILLS / 2);
});
