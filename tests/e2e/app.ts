import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test as base } from '@playwright/test';
import { freePort } from '../fixtures/free-port';
import { ServerProcess } from './server-process';

export { expect } from '@playwright/test';

export interface App {
	url: string;
	dataDir: string;
	/** Moves the server's clock on; it starts at the real time. */
	advanceClock(seconds: number): Promise<void>;
	/** Stops the server as an operator would, and starts it on the same port and data. */
	restart(): Promise<void>;
	/** Kills the server as a power cut would, and starts it again. */
	kill9(): Promise<void>;
	/** Out of reach from here on, till `start`. */
	stop(): Promise<void>;
	start(): Promise<void>;
}

/** Starts the built app on an empty data folder, lets `use` work with it, and clears up. */
async function withApp(use: (app: App) => Promise<void>): Promise<void> {
	const folder = await mkdtemp(join(tmpdir(), 'glovewright-e2e-'));
	const dataDir = join(folder, 'data');
	const clockFile = join(folder, 'clock-offset');
	const server = new ServerProcess({ port: await freePort(), dataDir, clockFile });
	let offsetS = 0;
	await server.start();
	await use({
		url: server.url,
		dataDir,
		async advanceClock(seconds) {
			offsetS += seconds;
			await writeFile(clockFile, String(offsetS));
		},
		async restart() {
			await server.end('SIGTERM');
			await server.start();
		},
		async kill9() {
			await server.end('SIGKILL');
			await server.start();
		},
		stop: () => server.end('SIGKILL'),
		start: () => server.start()
	});
	await server.end('SIGTERM');
	await rm(folder, { recursive: true, force: true });
}

/** Every test has a server of its own, with an empty data folder; `page.goto('/')` leads to it. */
export const test = base.extend<{ app: App }>({
	app: async ({ browserName: _browser }, use) => withApp(use),
	baseURL: async ({ app }, use) => use(app.url)
});

/** As `test`, but all tests of the file share one server, which `fill` has filled. */
export function testOnOneServer<Filled>(fill: (app: App) => Promise<Filled>) {
	return base.extend<object, { app: App; filled: Filled }>({
		app: [async ({ browserName: _browser }, use) => withApp(use), { scope: 'worker' }],
		filled: [async ({ app }, use) => use(await fill(app)), { scope: 'worker', auto: true }],
		baseURL: async ({ app }, use) => use(app.url)
	});
}
