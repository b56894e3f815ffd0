import { setTimeout as wait } from 'node:timers/promises';
import { signIn, WORKER_PIN, type SeededShop } from '../e2e/seeded-shop';
import type { ServerProcess } from '../e2e/server-process';
import { Bench } from './bench';
import { recordOf, verifierOf } from './record-faults';
import type { Row } from './row';
import { Screen } from './screen';

export interface SharedRun {
	servers: [ServerProcess, ServerProcess];
	shop: SeededShop;
	/** Benches at each server. */
	benches: number;
	/** Acts of each bench. */
	acts: number;
	kills: number;
}

/** Two servers on one database, benches at both posting to the same jobs, one server killed meanwhile. */
export async function shareJobs(run: SharedRun): Promise<Row[]> {
	const { servers, shop, benches: perServer, acts, kills } = run;
	const faultOf = await verifierOf();
	await Promise.all(servers.map((server) => server.start()));
	const [steady, shaken] = servers;
	const cookie = await signIn(steady.url, shop.worker.id, WORKER_PIN);

	const screens = servers.flatMap(({ url }) =>
		shop.jobIds.map((jobId) => ({ url, screen: new Screen(jobId) }))
	);
	const following = screens.map(({ url, screen }) => screen.follow(url, cookie));
	const benches = servers.flatMap(({ url }) =>
		Array.from({ length: perServer }, (_, n) => ({
			url,
			bench: new Bench(shop.jobIds[n % shop.jobIds.length] ?? '')
		}))
	);
	const working = Promise.all(benches.map(({ url, bench }) => workOff(url, cookie, bench, acts)));
	let isWorking = true;
	void working.finally(() => (isWorking = false));
	let killed = 0;
	while (killed < kills && isWorking) {
		await wait(500 + Math.random() * 1000);
		await shaken.end('SIGKILL');
		await wait(Math.random() * 500);
		await shaken.start();
		killed += 1;
	}
	await working;

	let lost = 0;
	let twice = 0;
	let faults = 0;
	let strangers = 0;
	const heads = new Map<string, number>();
	for (const jobId of shop.jobIds) {
		const { text, ids } = await recordOf(steady.url, cookie, jobId);
		if (faultOf(text) !== null) faults += 1;
		const other = await recordOf(shaken.url, cookie, jobId);
		if (other.ids.join() !== ids.join()) faults += 1;
		heads.set(jobId, ids.length);
		const own = benches.filter(({ bench }) => bench.jobId === jobId);
		const acknowledged = own.flatMap(({ bench }) => bench.acknowledged);
		lost += acknowledged.filter((id) => !ids.includes(id)).length;
		twice += ids.length - new Set(ids).size;
		strangers += ids.length - 1 - acknowledged.length;
	}
	const behind = () =>
		screens.filter(({ screen }) => screen.seq !== heads.get(screen.jobId)).length;
	const sinceMs = performance.now();
	while (behind() > 0 && performance.now() - sinceMs < 10_000) await wait(20);
	const convergedMs = performance.now() - sinceMs;
	const left = behind();
	const lateMs = await lateness(run, cookie, screens);
	for (const { screen } of screens) screen.end();
	await Promise.all(following);
	await Promise.all(servers.map((server) => server.end('SIGTERM')));

	const total = benches.reduce((sum, { bench }) => sum + bench.acknowledged.length, 0);
	const seconds = benches.reduce((sum, { bench }) => sum + bench.conflicts, 0);
	const drops = screens.reduce((sum, { screen }) => sum + screen.drops, 0);
	return [
		{
			what: 'two servers on one PostgreSQL',
			done: `${benches.length} benches, ${shop.jobIds.length} jobs, ${total} acts, ${seconds} times second, one server killed ${killed} times`,
			found: `lost ${lost}, twice ${twice}, never acknowledged ${strangers}, chain faults ${faults}`,
			isGood:
				lost + twice + strangers + faults === 0 && killed > 0 && total === benches.length * acts
		},
		{
			what: 'every screen converges',
			done: `${screens.length} screens, ${drops} lines dropped`,
			found: `${left} behind after ${Math.round(convergedMs)} ms; a word across servers took at most ${Math.round(lateMs)} ms`,
			isGood: left === 0 && drops > 0 && lateMs < 1000
		}
	];
}

async function workOff(url: string, cookie: string, bench: Bench, acts: number): Promise<void> {
	while (bench.acknowledged.length < acts) {
		// Others go first for a moment, as they would when somebody looks at what came before.
		const posted = await bench.post(url, cookie);
		if (posted !== 'written') await wait(posted === 'gone' ? 100 : Math.random() * 30);
	}
}

/** The longest time from an answer of one server to the word on a screen at the other, of ten acts. */
async function lateness(
	{ servers, shop }: SharedRun,
	cookie: string,
	screens: ReadonlyArray<{ url: string; screen: Screen }>
): Promise<number> {
	const [steady, shaken] = servers;
	const jobId = shop.jobIds[0] ?? '';
	const there = screens.find(({ url, screen }) => url === shaken.url && screen.jobId === jobId);
	const bench = new Bench(jobId);
	let longestMs = 0;
	for (let n = 0; n < 10; n++) {
		while ((await bench.post(steady.url, cookie)) !== 'written');
		const answeredMs = performance.now();
		const seq = (await recordOf(steady.url, cookie, jobId)).ids.length;
		while (!there || there.screen.seq < seq) {
			if (performance.now() - answeredMs > 5000) return 5000;
			await wait(5);
		}
		longestMs = Math.max(longestMs, (there.screen.heardMs.get(seq) ?? 0) - answeredMs);
	}
	return longestMs;
}
