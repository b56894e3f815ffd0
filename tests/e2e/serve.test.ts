import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openStore } from '../../src/lib/server/store';
import { expect, test } from './app';
import { seedShop, signIn, WORKER_PIN } from './seeded-shop';
import { freePort } from '../fixtures/free-port';

const script = fileURLToPath(new URL('../../scripts/serve.mjs', import.meta.url));

/** What serving says, and its exit code, when it cannot start. */
function serve(env: Record<string, string>, identity: { uid?: number; gid?: number } = {}) {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-serve-'));
	const { status, stderr } = spawnSync(process.execPath, [script], {
		env: { ...process.env, PORT: '0', HOST: '127.0.0.1', GLOVEWRIGHT_DATA: folder, ...env },
		encoding: 'utf8',
		timeout: 30_000,
		...identity
	});
	rmSync(folder, { recursive: true, force: true });
	return { status, said: stderr.trim() };
}

function expectOneSentence(answer: { status: number | null; said: string }, words: RegExp) {
	expect(answer.said).toMatch(words);
	expect(answer.said).not.toMatch(/\n|^\s+at /m);
	expect(answer.status).toBe(1);
}

test('a taken port is said in a sentence', async () => {
	const other = createServer().listen(0, '127.0.0.1');
	await once(other, 'listening');
	const address = other.address();
	const port = typeof address === 'object' ? String(address?.port) : '';
	expectOneSentence(serve({ PORT: port }), /Port \d+ is taken by another program/);
	other.close();
});

test('a port that is no port is said in a sentence', () => {
	expectOneSentence(serve({ PORT: 'eighty' }), /PORT is "eighty"; accepted: a whole number/);
});

test('a data folder that is not writable is said in a sentence', () => {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-locked-'));
	const locked = join(folder, 'data');
	mkdirSync(locked);
	chmodSync(folder, 0o755);
	chmodSync(locked, 0o555);
	// Root may write anywhere, so the server is started as nobody.
	const nobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
	const answer = serve({ GLOVEWRIGHT_DATA: locked }, nobody);
	expectOneSentence(answer, /The data folder .*data cannot be written/);
	rmSync(folder, { recursive: true });
});

test('a database of a newer version is refused in a sentence', async () => {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-newer-'));
	const db = await openStore(folder);
	const row = { version: 99, name: 'from the future', applied_at: '2030-01-01T00:00:00Z' };
	await db.insertInto('schema_version').values(row).execute();
	await db.destroy();
	expectOneSentence(serve({ GLOVEWRIGHT_DATA: folder }), /written by a newer Glovewright/);
	rmSync(folder, { recursive: true });
});

test('stopping npm start stops the server under it', async () => {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-start-'));
	const port = await freePort();
	const npm = spawn('npm', ['start'], {
		cwd: fileURLToPath(new URL('../..', import.meta.url)),
		env: { ...process.env, PORT: String(port), HOST: '127.0.0.1', GLOVEWRIGHT_DATA: folder },
		stdio: 'ignore'
	});
	const answers = () =>
		fetch(`http://127.0.0.1:${port}/healthz`).then(
			({ status }) => status,
			() => null
		);
	await expect.poll(answers, { timeout: 100_000 }).toBe(200);
	npm.kill('SIGTERM');
	await expect.poll(answers, { timeout: 15_000 }).toBeNull();
	rmSync(folder, { recursive: true });
});

test('a line is kept for longer than a proxy keeps it, so that none is shut under a request', async ({
	app
}) => {
	const answer = await fetch(`${app.url}/healthz`);
	const [, keptS = '0'] = /timeout=(\d+)/.exec(answer.headers.get('keep-alive') ?? '') ?? [];
	// Common proxies keep an idle line for 60 s; from memory.
	expect(Number(keptS)).toBeGreaterThan(60);
});

test('a server that is told to stop ends the streams of its screens, and starts again', async ({
	app
}) => {
	const { worker, jobIds } = await seedShop(app.dataDir);
	const cookie = await signIn(app.url, worker.id, WORKER_PIN);
	const response = await fetch(`${app.url}/api/jobs/${jobIds[0]}/live`, { headers: { cookie } });
	const everything = response.text();
	await app.restart();
	// A stream that was cut off would reject.
	expect(await everything).toContain('data: {"seq":1}');
	expect((await fetch(`${app.url}/healthz`)).status).toBe(200);
});
