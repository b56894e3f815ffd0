// `npm run feel`: how the built app feels on a slow tablet. For each page the layout shift until it rests, the longest
// answer to a touch or a key with the processor slowed down fourfold, and the gzipped JavaScript that it loads.
// Prints numbers and asserts nothing, since they depend on the machine.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { root } from '../scripts/run.mjs';
import { withDemoApp } from './demo-app.mjs';

const SLOWER = 4;
const TABLET = { width: 820, height: 1180 };

/** Collects what the browser measures itself: Layout Instability and Event Timing. */
function watch() {
	const seen = { shift: 0, longestMs: 0 };
	window.seen = seen;
	new PerformanceObserver((list) => {
		for (const entry of list.getEntries()) if (!entry.hadRecentInput) seen.shift += entry.value;
	}).observe({ type: 'layout-shift', buffered: true });
	new PerformanceObserver((list) => {
		for (const entry of list.getEntries()) {
			if (entry.interactionId) seen.longestMs = Math.max(seen.longestMs, entry.duration);
		}
	}).observe({ type: 'event', durationThreshold: 16, buffered: true });
}

async function pressAll(page, names) {
	for (const name of names) {
		const button = page.getByRole('button', { name, exact: false }).first();
		if (!(await button.isVisible().catch(() => false))) continue;
		await button.click();
		await page.waitForTimeout(150);
		await page.keyboard.press('Escape');
	}
}

/** Types into the first fields of the page, a key at a time. */
async function typeInto(page) {
	const fields = page.locator('main :is(input[inputmode], input[type=search], textarea):visible');
	for (const field of (await fields.all()).slice(0, 2)) {
		await field.click();
		await page.keyboard.type('123.4', { delay: 60 });
	}
}

async function measure(browser, { url, cookies, path, touches }) {
	const context = await browser.newContext({ baseURL: url, viewport: TABLET, hasTouch: true });
	await context.addCookies(cookies);
	await context.addInitScript(watch);
	const page = await context.newPage();
	const loaded = new Set();
	page.on('response', (answer) => {
		if (answer.url().includes('/_app/') && answer.url().endsWith('.js')) loaded.add(answer.url());
	});
	const devtools = await context.newCDPSession(page);
	await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
	await page.goto(path);
	await page.waitForLoadState('load');
	await page.waitForTimeout(1500);
	const atLoad = await page.evaluate(() => window.seen.shift);
	await pressAll(page, touches);
	await typeInto(page);
	await page.waitForTimeout(400);
	const seen = await page.evaluate(() => window.seen);
	const bytes = [...loaded].reduce((sum, address) => {
		const file = join(root, 'build/client', new URL(address).pathname);
		return sum + gzipSync(readFileSync(file), { level: 9 }).length;
	}, 0);
	await context.close();
	return { shift: atLoad, longestMs: seen.longestMs, bytes };
}

await withDemoApp(async ({ url, browser, cookies, jobs }) => {
	const find = (fits) => jobs.find(({ summary }) => fits(summary))?.id;
	const bench = ['How', 'Other', 'Something', 'Speak', 'Weigh the next cup'];
	const pages = [
		...['build', 'gloveCure', 'shell', 'trim'].map((phase) => [
			`/jobs/${find((summary) => summary.phase === phase && !summary.trouble)}/bench`,
			bench,
			`bench, ${phase}`
		]),
		['/board', [], 'board'],
		['/board/days', ['Tuesday'], 'days ahead'],
		['/board/wall', [], 'wall'],
		['/patterns/new', ['Add'], 'new pattern'],
		['/read', [], 'reading room']
	];
	console.log(`processor ${SLOWER} times slower\n`);
	console.log('page              layout shift   longest answer   JavaScript, all that came');
	for (const [path, touches, name] of pages) {
		const { shift, longestMs, bytes } = await measure(browser, { url, cookies, path, touches });
		console.log(
			`${name.padEnd(18)}${shift.toFixed(4).padStart(12)}${`${longestMs.toFixed(0)} ms`.padStart(17)}${`${(bytes / 1000).toFixed(1)} kB`.padStart(14)}`
		);
	}
});
