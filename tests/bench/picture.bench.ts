import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser } from '@playwright/test';
import { binaryStl } from '../../src/lib/core/mesh/write-stl';
import { seedShop, signInByName, SUPERVISOR_PIN } from '../e2e/seeded-shop';
import { ServerProcess } from '../e2e/server-process';
import { freePort } from '../fixtures/free-port';
import { notePictureTimes, pictureTimes, type PictureTimes } from './picture-times';
import { wavyBlock } from './wavy-block';

const PATIENCE_MS = 60_000;

/**
 * Times a pattern of about 200 000 triangles from its bytes to its first pictures in the browser at
 * `executablePath`, with the built server around it. Needs a build.
 *
 * @returns lines to print
 */
export async function benchPicture(executablePath: string): Promise<string[]> {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-bench-'));
	const pattern = wavyBlock(224);
	const path = join(folder, 'pattern.stl');
	writeFileSync(path, binaryStl(pattern));
	const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
	try {
		const { reading, look, model, space } = await timesOf(browser, folder, path);
		const ms = (from: number, to: number): string => `${(to - from).toFixed(0)} ms`;
		return [
			`Pattern of ${pattern.triangles.length / 3} triangles in Chromium ${browser.version()} (first picture asked for: within 1 s of the parse)`,
			`  section on the screen          ${ms(reading, look)} after the parse began`,
			`  model in space on the screen   ${ms(model, space)} after it came, ${ms(reading, space)} after the parse began; faults, area and volume come before it`
		];
	} finally {
		await browser.close();
		rmSync(folder, { recursive: true, force: true });
	}
}

async function timesOf(browser: Browser, folder: string, path: string): Promise<PictureTimes> {
	const dataDir = join(folder, 'data');
	const clockFile = join(folder, 'clock-offset');
	const { supervisor } = await seedShop(dataDir);
	const server = new ServerProcess({ port: await freePort(), dataDir, clockFile });
	await server.start();
	try {
		const context = await browser.newContext({ serviceWorkers: 'block' });
		const { name } = supervisor;
		await context.addCookies(await signInByName(server, { name, pin: SUPERVISOR_PIN }));
		const page = await context.newPage();
		await notePictureTimes(page);
		await page.goto(`${server.url}/patterns/new/mesh`);
		await page.getByLabel('Drop a mesh file here, or pick one').setInputFiles(path);
		return await pictureTimes(page, PATIENCE_MS);
	} finally {
		await server.end('SIGTERM');
	}
}
