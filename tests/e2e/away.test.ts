import type { Page } from '@playwright/test';
import type { StoredEvent } from '../../src/lib/core/log/chain';
import { verifyChain } from '../../src/lib/core/log/chain';
import type { ProcessEvent } from '../../src/lib/core/process/events';
import { newActId } from '../../src/lib/server/act-id';
import { expect, test, type App } from './app';
import { jobAtFirstCup } from './job-at-first-cup';
import { press } from './press';
import { signInByName, WORKER_PIN } from './seeded-shop';

test.use({ serviceWorkers: 'allow' });

type Log = StoredEvent<ProcessEvent>[];

async function logOf(page: Page, jobId: string): Promise<Log> {
	const answer = await page.request.get(`/api/jobs/${jobId}/events`);
	return ((await answer.json()) as { events: Log }).events;
}

/** The bench of a mold at its first cup, kept on this device with all that the app is made of. */
async function keptBench(app: App, page: Page) {
	const { worker, jobId } = await jobAtFirstCup(app.dataDir);
	await page.context().addCookies(await signInByName(app, { name: worker.name, pin: WORKER_PIN }));
	await page.goto('/board');
	await page.evaluate(() => navigator.serviceWorker.ready);
	// As people come to it: by a link, without loading a page.
	const kept = page.waitForResponse(
		(answer) =>
			new URL(answer.url()).pathname === `/jobs/${jobId}/bench` &&
			answer.request().resourceType() === 'fetch'
	);
	await page.locator('main ol > li a').first().click();
	await page.getByRole('link', { name: 'To the bench' }).click();
	await expect(page).toHaveURL(/\/bench$/);
	await kept;
	return { jobId };
}

async function weigh(page: Page): Promise<void> {
	const lines = page.getByRole('list', { name: 'Pour in this order' }).getByRole('listitem');
	const lots = page.getByRole('group', { name: /^Lot numbers/ });
	for (const [i, line] of (await lines.allInnerTexts()).entries()) {
		const grams = /([\d.]+)\s?g\b/.exec(line)?.[1] ?? '';
		await page
			.getByLabel(/^Scale shows/)
			.nth(i)
			.fill(grams);
		await lots.getByRole('textbox').nth(i).fill(`LOT-${i}`);
	}
}

const notice = (page: Page) => page.getByText(/kept on this device$/);

test('with the server gone the work goes on, over a reload, and all of it arrives in order', async ({
	app,
	page
}) => {
	const { jobId } = await keptBench(app, page);
	const before = await logOf(page, jobId);
	await app.stop();

	await weigh(page);
	await page.getByRole('button', { name: 'Cup is weighed' }).click();
	await expect(notice(page)).toHaveText('One entry is kept on this device');
	const mixed = page.getByRole('button', { name: /mixed/i });
	await expect(mixed).toBeVisible();

	await page.reload();
	await expect(notice(page)).toHaveText('One entry is kept on this device');
	// Quicker than a stick in a cup: this device asks once, as the server would.
	await press(mixed, () => expect(page.getByRole('alert').first()).toContainText('of mixing'));
	const anyway = page.getByRole('button', { name: /^Enter it all the same/ });
	await press(anyway, () => expect(notice(page)).toHaveText('2 entries are kept on this device'));
	await expect(notice(page)).toHaveText('2 entries are kept on this device');

	await page.goto('/board');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('No line to the shop’s server');
	await page.getByRole('listitem').getByRole('link').click();
	await expect(notice(page)).toHaveText('2 entries are kept on this device');
	await page.goto('/read');
	await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
	await page.goto(`/jobs/${jobId}/bench`);

	await app.start();
	await expect(notice(page)).toHaveCount(0, { timeout: 40_000 });
	const log = await logOf(page, jobId);
	const added = log.slice(before.length);
	expect(added.map(({ event }) => event.type)).toEqual(['cup.weighed', 'cup.mixed']);
	for (const { event, recordedAt } of added) {
		expect(Date.parse(recordedAt)).toBeGreaterThan(Date.parse(event.at));
	}
	expect(verifyChain(log)).toMatchObject({ ok: true });
	await expect(page.getByText('Line dropped')).toHaveCount(0);
});

test('what no longer fits waits with its reason, and is let go only by hand', async ({
	app,
	page
}) => {
	const { jobId } = await keptBench(app, page);
	const before = await logOf(page, jobId);
	await app.stop();
	await weigh(page);
	await page.getByRole('button', { name: 'Cup is weighed' }).click();
	await expect(notice(page)).toHaveText('One entry is kept on this device');
	// The page asks again by itself; meanwhile somebody else is faster.
	await page.goto('about:blank');
	await app.start();
	const answer = await page.request.post(`/api/jobs/${jobId}/events`, {
		data: { id: newActId(), seq: before.length + 1, event: { type: 'job.paused', reason: 'Lunch' } }
	});
	expect(answer.status()).toBe(201);

	await page.goto(`/jobs/${jobId}/bench`);
	await expect(page.getByText(/^Needs a look: .*Weigh/i)).toBeVisible();
	await expect(page.getByText('Somebody else entered something on this mold')).toBeVisible();
	await expect(
		page.getByText(/would not be taken now either: something was entered/)
	).toBeVisible();
	// An entry that nobody looks at yet must not keep the line busy.
	let requests = 0;
	page.on('request', () => (requests += 1));
	await page.waitForTimeout(4000);
	expect(requests).toBeLessThan(12);
	await page.goto('/board');
	const note = page.getByText('Entries wait on this device');
	await expect(note).toBeVisible();
	await page.goto(`/jobs/${jobId}/bench`);
	const discard = page.getByRole('button', { name: /Discard it/ });
	await press(discard, () => expect(discard).toHaveCount(0));
	await expect(page.getByText(/Needs a look/)).toHaveCount(0);
	expect(await logOf(page, jobId)).toHaveLength(before.length + 1);
});
