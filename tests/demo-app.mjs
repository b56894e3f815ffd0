// The built app with the demo shop in an empty folder, a signed-in supervisor and a browser: for what looks at pages.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { chromium } from '@playwright/test';
import { findChromium } from '../scripts/find-chromium.mjs';
import { root } from '../scripts/run.mjs';

const SUPERVISOR = { name: 'Tendai Brzoska', pin: '274918' };

/** Starts the built app on a free port with an empty data folder. */
async function startApp() {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-shots-'));
	const child = spawn(process.execPath, [join(root, 'scripts/serve.mjs')], {
		env: { ...process.env, PORT: '0', HOST: 'localhost', GLOVEWRIGHT_DATA: join(folder, 'data') },
		stdio: ['ignore', 'pipe', 'inherit']
	});
	const url = await new Promise((resolve, reject) => {
		child.stdout.on('data', (said) => {
			const found = /running at (\S+)/.exec(String(said));
			if (found) resolve(found[1]);
		});
		child.once('exit', (code) => reject(new Error(`the server ended with ${code}`)));
	});
	const stop = () =>
		new Promise((resolve) => {
			child.once('exit', () => resolve(rmSync(folder, { recursive: true, force: true })));
			child.kill('SIGTERM');
		});
	return { url, stop };
}

async function signIn(url) {
	const { people } = await (await fetch(`${url}/api/session`)).json();
	const personId = people.find(({ name }) => name === SUPERVISOR.name)?.id;
	const signedIn = await fetch(`${url}/api/session`, {
		method: 'POST',
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify({ personId, pin: SUPERVISOR.pin })
	});
	const cookie = signedIn.headers.getSetCookie()[0]?.split(';')[0] ?? '';
	const [name = '', value = ''] = cookie.split('=');
	return { cookie, cookies: [{ url, name, value }] };
}

/**
 * Lends `use` the app's address, cookies of a supervisor, the jobs of the demo shop and a browser; before there is a
 * shop, address and browser to `atFirst`.
 */
export async function withDemoApp(use, atFirst = async () => {}) {
	const { url, stop } = await startApp();
	const browser = await chromium.launch({
		executablePath: findChromium() ?? undefined,
		args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking']
	});
	try {
		await atFirst({ url, browser });
		await fetch(`${url}/start`, {
			method: 'POST',
			headers: { origin: url, 'content-type': 'application/x-www-form-urlencoded' },
			redirect: 'manual'
		});
		const { cookie, cookies } = await signIn(url);
		const { jobs } = await (await fetch(`${url}/api/jobs`, { headers: { cookie } })).json();
		await use({ url, browser, cookie, cookies, jobs });
	} finally {
		await browser.close();
		await stop();
	}
}
