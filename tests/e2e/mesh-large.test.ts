import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { heightBlock } from '../../src/lib/core/mesh/demo/height-block';
import { binaryStl } from '../../src/lib/core/mesh/write-stl';
import { expect, testOnOneServer } from './app';
import { CREW, openDemoShop } from './demo-shop';
import { machineLoad } from './machine-load';
import { signInByName } from './seeded-shop';

const test = testOnOneServer(async (app) => {
	await openDemoShop(app);
	return signInByName(app, CREW.supervisor);
});

/** About 4 n² triangles of our own. */
function wavyFile(n: number): Uint8Array {
	return binaryStl(
		heightBlock({
			lengthMm: 300,
			widthMm: 200,
			cells: [n, n],
			heightMm: (x, y) => 60 + 12 * Math.sin(x / 14) * Math.cos(y / 11)
		})
	);
}

test('five million triangles are looked at first, judged to the end, and leave the page alive', async ({
	context,
	page,
	filled
}) => {
	test.setTimeout(300_000);
	await context.addCookies(filled);
	const folder = await mkdtemp(join(tmpdir(), 'fine-'));
	try {
		const path = join(folder, 'fine.stl');
		await writeFile(path, wavyFile(1118));
		await page.goto('/patterns/new/mesh');
		await page.evaluate(() => {
			// The longest time in which the page did nothing at all.
			let last = performance.now();
			Object.assign(globalThis, { longestMs: 0 });
			setInterval(() => {
				const now = performance.now();
				const longest = Reflect.get(globalThis, 'longestMs') as number;
				Object.assign(globalThis, { longestMs: Math.max(longest, now - last) });
				last = now;
			}, 50);
		});
		const load = machineLoad();
		const from = performance.now();
		await page.getByLabel('Drop a mesh file here, or pick one').setInputFiles(path);
		await expect(page.getByText(/Reading the triangles: 300 × 200 × /)).toBeVisible({
			timeout: 120_000
		});
		const readMs = performance.now() - from;
		const look = page.getByRole('img', { name: /First look: .* 5,0\d\d,\d\d\d triangles/ });
		await expect(look).toBeVisible({ timeout: 180_000 });
		const lookMs = performance.now() - from;
		await expect(page.getByText(/^Area, volume and sizes are of the whole mesh/)).toBeVisible({
			timeout: 180_000
		});
		for (const title of ['Bridged places', 'Coming off', 'Coats as solids']) {
			await expect(page.getByRole('heading', { name: title })).toBeVisible({ timeout: 180_000 });
		}
		await expect(page.getByRole('progressbar')).toHaveCount(0, { timeout: 180_000 });
		const endMs = performance.now() - from;
		await expect(page.locator('.aside dl')).toContainText('cm²');
		const longestMs = await page.evaluate(() => Reflect.get(globalThis, 'longestMs') as number);
		const times = load();
		test.info().annotations.push({
			type: 'times',
			description: `numbers ${readMs.toFixed(0)} ms, picture ${lookMs.toFixed(0)} ms, all ${endMs.toFixed(0)} ms, longest silence ${longestMs.toFixed(0)} ms, machine slower by ${times.toFixed(2)}`
		});
		expect(longestMs / times).toBeLessThan(2000);
	} finally {
		await rm(folder, { recursive: true });
	}
});
