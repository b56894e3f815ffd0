import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { expect, testOnOneServer } from './app';
import { seedShop, signIn, WORKER_PIN } from './seeded-shop';

const test = testOnOneServer(async (app) => {
	const { worker, jobIds } = await seedShop(app.dataDir);
	return { jobId: jobIds[0], cookie: await signIn(app.url, worker.id, WORKER_PIN) };
});
const client = fileURLToPath(new URL('../../build/client/', import.meta.url));

/** What a page may make a tablet on a slow line load before it answers, gzipped. */
const MOST_BYTES = 80_000;
/** Each file more is another turn of waiting on a slow line: a browser asks for six at a time. */
const MOST_FILES = 10;

/** The files with all that they import, whether the page names it or not: SvelteKit leaves out what is also loaded on demand. */
function withImports(files: Iterable<string>): Set<string> {
	const found = new Set<string>();
	const visit = (file: string): void => {
		if (found.has(file)) return;
		found.add(file);
		const text = readFileSync(client + file, 'utf8');
		for (const [, path = ''] of text.matchAll(/(?:from|import)\s*["'](\.{1,2}\/[^"']+\.js)["']/g)) {
			visit(posix.join(posix.dirname(file), path));
		}
	};
	for (const file of files) visit(file);
	return found;
}

test('the bench asks for no more JavaScript than it may', async ({ app, filled }) => {
	const answer = await fetch(`${app.url}/jobs/${filled.jobId}/bench`, {
		headers: { cookie: filled.cookie, accept: 'text/html' }
	});
	expect(answer.status).toBe(200);
	const said = `${answer.headers.get('link')} ${await answer.text()}`;
	const files = new Set(said.match(/_app\/immutable\/[\w./-]+\.js/g));
	// SvelteKit's two starts, the outermost layout, the page and what they share.
	expect(files.size).toBeGreaterThan(4);
	expect(withImports(files).size).toBeLessThanOrEqual(MOST_FILES);
	const bytes = [...withImports(files)].map((file) => gzipSync(readFileSync(client + file)).length);
	expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(MOST_BYTES);
});

test('no page waits for its scripts to be styled', async ({ context, page, app, filled }) => {
	const [name = '', value = ''] = filled.cookie.split('=');
	await context.addCookies([{ name, value, url: app.url }]);
	const job = `/jobs/${filled.jobId}`;
	for (const path of ['/read', '/materials', '/refresh', `${job}/plan`, `${job}/briefing`]) {
		const answer = await page.goto(path);
		const sent = await answer?.text();
		await page.waitForLoadState('networkidle');
		const styles = await page
			.locator('link[rel="stylesheet"]')
			.evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
		expect(styles.length, path).toBeGreaterThan(0);
		const late = styles.filter((href) => !sent?.includes(href.split('/').at(-1) ?? href));
		expect(late, path).toEqual([]);
	}
});
