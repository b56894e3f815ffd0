import { mkdtempSync, rmSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { test as base } from '@playwright/test';
import { freePort } from '../fixtures/free-port';
import { expect } from './app';
import { seedShop, signIn, SUPERVISOR_PIN, WORKER_PIN } from './seeded-shop';
import { ServerProcess } from './server-process';

const verifier = fileURLToPath(new URL('../../scripts/verify.mjs', import.meta.url));
const PASSWORD = 'walnut frame at dawn';

base(
	'whoever looks after the shop chooses a password, backs up, takes the shop away, ends a session',
	async ({ browser }) => {
		base.setTimeout(240_000);
		const folder = mkdtempSync(join(tmpdir(), 'glovewright-owner-'));
		const dataDir = join(folder, 'data');
		const server = new ServerProcess({
			port: await freePort(),
			dataDir,
			clockFile: join(folder, 'clock-offset'),
			env: { GLOVEWRIGHT_BACKUPS: join(folder, 'backups') }
		});
		await server.start();
		const { supervisor, worker } = await seedShop(dataDir);
		const cookie = await signIn(server.url, supervisor.id, SUPERVISOR_PIN);
		const workerCookie = await signIn(server.url, worker.id, WORKER_PIN);
		const get = (path: string, who: string) =>
			fetch(server.url + path, { headers: { cookie: who }, redirect: 'manual' });
		// A PIN alone opens none of it, and others are sent away.
		for (const path of ['/shop/care', '/shop/care/heads.json', '/shop/care/export.zip']) {
			const locked = await get(path, cookie);
			expect([locked.status, locked.headers.get('location')]).toEqual([
				303,
				expect.stringMatching(/^\/unlock\?next=/)
			]);
			expect((await get(path, workerCookie)).status).toBe(403);
		}

		const context = await browser.newContext({ baseURL: server.url });
		const [name = '', value = ''] = cookie.split('=');
		await context.addCookies([{ name, value, url: server.url }]);
		const page = await context.newPage();
		await page.goto('/shop/care');
		await page.getByLabel('New password', { exact: true }).fill('aaaaaaaaaaaaaa');
		await page.getByLabel('New password again').fill('aaaaaaaaaaaaaa');
		await page.getByLabel('Your PIN').fill(SUPERVISOR_PIN);
		await page.getByRole('button', { name: 'Take this password' }).click();
		await expect(page.getByText('Too few different characters')).toBeVisible();
		await page.getByLabel('New password', { exact: true }).fill(PASSWORD);
		await page.getByLabel('New password again').fill(PASSWORD);
		await page.getByLabel('Your PIN').fill(SUPERVISOR_PIN);
		await page.getByRole('button', { name: 'Take this password' }).click();
		await expect(page.getByRole('heading', { name: 'Looking after the shop' })).toBeVisible();
		await expect(page.getByText('There is no backup yet')).toBeVisible();

		await page.getByRole('button', { name: 'Make a backup now' }).click();
		await expect(page.getByText('A backup was made and verified.')).toBeVisible({
			timeout: 60_000
		});
		await expect(page.getByRole('link', { name: /^glovewright-.*\.db$/ })).toBeVisible();

		const take = async (link: string) => {
			const started = page.waitForEvent('download', { timeout: 60_000 });
			await page.getByRole('link', { name: link }).click();
			const path = join(folder, link.replaceAll(' ', '-'));
			await (await started).saveAs(path);
			return path;
		};
		const heads = await take('Download the heads');
		const shop = await take('Download the whole shop');
		const verified = spawnSync(process.execPath, [verifier, shop, heads], { encoding: 'utf8' });
		expect(verified.stdout + verified.stderr).toMatch(/^VERIFIED: .*1 molds/);

		await page.getByLabel('Register this device as').fill('Desk in the office');
		await page.getByRole('button', { name: 'Register this device' }).click();
		await expect(page.getByText('This device is registered as Desk in the office')).toBeVisible();
		await page.getByRole('button', { name: 'End the session of Ben Marsh' }).click();
		await expect(page.getByText('The session has ended.')).toBeVisible();
		expect((await get('/api/jobs', workerCookie)).status).toBe(401);

		await page.getByLabel('Only registered devices may sign in').check();
		await page.getByRole('button', { name: 'Save' }).click();
		await expect(page.getByText('Saved.')).toBeVisible();
		await expect(signIn(server.url, worker.id, WORKER_PIN)).rejects.toThrow(
			/device-not-registered/
		);
		await context.close();
		await server.end('SIGTERM');
		rmSync(folder, { recursive: true, force: true });
	}
);
