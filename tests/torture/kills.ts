import { setTimeout as wait } from 'node:timers/promises';
import { signIn, WORKER_PIN, type SeededShop } from '../e2e/seeded-shop';
import type { ServerProcess } from '../e2e/server-process';
import { Bench } from './bench';
import { recordOf, verifierOf } from './record-faults';
import type { Row } from './row';

const JOBS = 2;
const BENCHES_A_JOB = 2;
/** Then other jobs are worked on, so that a log stays as short as that of a mold. */
const KILLS_A_ROUND = 10;

export interface KillRun {
	store: string;
	server: ServerProcess;
	shop: SeededShop;
	count: number;
	deadlineMs: number;
	/** Kills the database too, every fourth time. */
	crash?: () => Promise<void>;
}

/** How many jobs a run of so many kills needs. */
export const jobsFor = (count: number): number => JOBS * Math.ceil(count / KILLS_A_ROUND);

/** Kills a server again and again while benches post to it, and looks each time at what is left. */
export async function killAgainAndAgain(run: KillRun): Promise<Row> {
	const { store, server, shop, count, deadlineMs, crash } = run;
	const faultOf = await verifierOf();
	await server.start();
	const cookie = await signIn(server.url, shop.worker.id, WORKER_PIN);
	const tally = { kills: 0, cut: 0, acknowledged: 0, lost: 0, twice: 0, whole: 0, stray: 0 };
	let benches: Bench[] = [];

	while (tally.kills < count && performance.now() < deadlineMs) {
		if (tally.kills % KILLS_A_ROUND === 0) {
			const from = (tally.kills / KILLS_A_ROUND) * JOBS;
			const jobIds = shop.jobIds.slice(from, from + JOBS);
			benches = jobIds.flatMap((id) => Array.from({ length: BENCHES_A_JOB }, () => new Bench(id)));
		}
		const posting = benches.map((bench) => postUntilGone(server.url, cookie, bench));
		// A different instant each time: before the first answer, or well under way.
		await answered(benches, Math.floor(Math.random() * 12));
		await wait(Math.random() * 20);
		await server.end('SIGKILL');
		if (crash && tally.kills % 4 === 3) await crash();
		if ((await Promise.all(posting)).includes(true)) tally.cut += 1;
		tally.kills += 1;
		await server.start();

		let isWhole = true;
		for (const jobId of new Set(benches.map((bench) => bench.jobId))) {
			const { text, ids } = await recordOf(server.url, cookie, jobId);
			if (faultOf(text) !== null) isWhole = false;
			const own = benches.filter((bench) => bench.jobId === jobId);
			const acknowledged = own.flatMap((bench) => bench.acknowledged);
			tally.lost += acknowledged.filter((id) => !ids.includes(id)).length;
			tally.twice += ids.length - new Set(ids).size;
			// Of each bench the one act that was on its way may be there unacknowledged, and the opening.
			tally.stray += Math.max(0, ids.length - 1 - acknowledged.length - own.length);
		}
		if (isWhole) tally.whole += 1;
		if (tally.kills % KILLS_A_ROUND === 0 || tally.kills === count) {
			tally.acknowledged += benches.reduce((sum, bench) => sum + bench.acknowledged.length, 0);
		}
	}
	await server.end('SIGTERM');
	const { kills, cut, acknowledged, lost, twice, whole, stray } = tally;
	const isClean = lost + twice + stray === 0 && whole === kills;
	return {
		what: `kill -9 under posting load, ${store}`,
		done: `${kills} of ${count} kills, ${cut} in the middle of an act, ${acknowledged} acts acknowledged`,
		found: `lost ${lost}, twice ${twice}, unexplained ${stray}, chain verifies ${whole}/${kills}`,
		isGood: isClean && kills === count && cut > count / 2 && acknowledged > count,
		isCut: isClean && kills < count
	};
}

/** Waits till this many more acts were acknowledged, or for as long as a server may take to begin. */
async function answered(benches: readonly Bench[], more: number): Promise<void> {
	const count = () => benches.reduce((sum, bench) => sum + bench.acknowledged.length, 0);
	const wanted = count() + more;
	const latestMs = performance.now() + 10_000;
	while (count() < wanted && performance.now() < latestMs) await wait(1);
}

/** Posts until the server is gone. @returns whether an act was on its way then */
async function postUntilGone(url: string, cookie: string, bench: Bench): Promise<boolean> {
	for (let n = 0; n < 60; n++) {
		if ((await bench.post(url, cookie)) === 'gone') return true;
	}
	return false;
}
