import type { BrowserContext, Page } from '@playwright/test';
import { expect, testOnOneServer } from './app';
import { complaintsOf } from './complaints';
import { seedShop, signIn, WORKER_PIN } from './seeded-shop';

const test = testOnOneServer(async ({ url, dataDir }) => {
	const { worker } = await seedShop(dataDir, { jobs: 0 });
	return signIn(url, worker.id, WORKER_PIN);
});

async function letIn(context: BrowserContext, url: string, cookie: string): Promise<void> {
	const [name = '', value = ''] = cookie.split('=');
	await context.addCookies([{ url, name, value }]);
}

const HTML = '<img src=x onerror="document.title=1"><b>Cap</b>';
const LONG = 'x'.repeat(10_000);

/** Types into one field of the pattern's form and saves: the summary names it, and the text stays. */
async function expectRefused(page: Page, label: string, typed: string, says: RegExp) {
	const field = page.getByLabel(label).first();
	await field.fill(typed);
	await page.getByRole('button', { name: 'Save the pattern' }).click();
	const summary = page.getByRole('alert').filter({ hasText: 'need' });
	const line = summary.getByRole('listitem').filter({ hasText: says });
	await expect(line.first(), `${label}: ${typed.slice(0, 20)}`).toBeVisible();
	await expect(field).toHaveValue(typed);
	await expect(field).toHaveAttribute('aria-invalid', 'true');
	await expect(page).toHaveURL(/\/patterns\/new/);
}

async function fillPattern(page: Page): Promise<void> {
	await page.getByLabel('Name').first().fill('Plain block');
	await page.getByLabel('Parts wanted').fill('4');
	await page.getByLabel('Length').fill('200');
	await page.getByLabel('Width').fill('150');
	await page.getByLabel('Height').fill('80');
}

test.beforeEach(({ app, filled, context }) => letIn(context, app.url, filled));

test('a pattern with bad input is refused by field and accepted range, and nothing typed is lost', async ({
	page
}) => {
	const complaints = complaintsOf(page);
	await page.goto('/patterns/new');
	await fillPattern(page);
	const good: Record<string, string> = { Length: '200', 'Parts wanted': '4', 'Finest line': '' };
	const bad: Array<[string, string, RegExp]> = [
		['Length', '-20', /length.*-20.*accepted: .*\d/i],
		['Length', '0', /length.*accepted: .*\d/i],
		['Length', 'NaN', /length.*NaN.*accepted: a number such as 12\.5 mm/i],
		['Length', '1e308', /length.*1e308.*accepted: .*\d/i],
		['Length', '200 kg', /length.*200 kg.*accepted: a number such as 12\.5 mm/i],
		['Length', '', /length.*nothing is entered/i],
		['Parts wanted', '2.5', /parts wanted.*2\.5.*accepted/i],
		['Parts wanted', '-1', /parts wanted.*-1.*accepted/i],
		['Finest line', '-0.2', /finest line.*-0\.2.*accepted/i]
	];
	for (const [label, typed, says] of bad) {
		await expectRefused(page, label, typed, says);
		await expect(page.getByLabel('Width')).toHaveValue('150');
		await page
			.getByLabel(label)
			.first()
			.fill(good[label] ?? '');
	}
	await expectRefused(page, 'Name', '', /name.*nothing is entered/i);
	await expectRefused(page, 'Name', LONG, /name.*10,000 characters are too many.*up to \d+/i);

	await page.getByLabel('Name').first().fill(HTML);
	await page.getByRole('button', { name: 'Save the pattern' }).click();
	await expect(page).toHaveURL(/\/patterns\/[\w-]+\?saved/);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(HTML);
	await page.goto('/patterns');
	await expect(page.getByText(HTML).first()).toBeVisible();
	expect(await page.locator('img').count()).toBe(0);
	expect(complaints.filter((text) => !/status of 4\d\d/.test(text))).toEqual([]);
});

test('without a script the form says the same, and keeps what was typed', async ({
	app,
	browser,
	filled
}) => {
	const context = await browser.newContext({ javaScriptEnabled: false, baseURL: app.url });
	await letIn(context, app.url, filled);
	const page = await context.newPage();
	await page.goto('/patterns/new');
	await fillPattern(page);
	await expectRefused(page, 'Length', '-20', /length.*-20.*accepted: .*\d/i);
	await expect(page.getByLabel('Width')).toHaveValue('150');
	await context.close();
});

test('a data sheet whose ratios and densities disagree is flagged with the number that is off', async ({
	page
}) => {
	await page.goto('/materials/new');
	await page.getByLabel('Name', { exact: true }).fill('Invented contradiction');
	await page.getByLabel('Maker').fill('Invented Materials');
	const rows = page
		.getByRole('group', { name: 'Parts and mixing' })
		.getByRole('listitem')
		.filter({ has: page.getByLabel('Density') });
	if ((await rows.count()) < 2) await page.getByRole('button', { name: 'Add a part' }).click();
	await expect(rows).toHaveCount(2);
	// 80:100 by weight at 1:1 by volume means that A weighs 0.80 of B; 1.20 against 1.10 does not.
	for (const [i, part, density, weight] of [
		[0, 'A', '1.20', '80'],
		[1, 'B', '1.10', '100']
	] as const) {
		await rows.nth(i).getByLabel('Part', { exact: true }).fill(part);
		await rows.nth(i).getByLabel('Density').fill(density);
		await rows.nth(i).getByLabel('Ratio by weight').fill(weight);
		await rows.nth(i).getByLabel('Ratio by volume').fill('1');
	}
	await page.getByLabel('Mixed density').fill('1.15');
	const flag = page.getByRole('note').filter({ hasText: 'This sheet contradicts itself' });
	await expect(flag).toBeVisible();
	await expect(flag).toContainText('80:100');
	await expect(flag).toContainText('0.8');
	for (const [name, value] of [
		['potLife.timeS', '20'],
		['potLife.massG', '100'],
		['potLife.atC', '23']
	] as const) {
		await page.locator(`[name="${name}"]`).fill(value);
	}
	await page.getByRole('button', { name: 'Save the data sheet' }).click();
	await expect(page).toHaveURL(/\/materials\/invented-contradiction/);
	await page.goto('/materials');
	await expect(
		page.getByRole('listitem').filter({ hasText: 'Invented contradiction' })
	).toContainText('contradicts itself');
});
