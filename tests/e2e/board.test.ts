import { seedBusyShop } from './busy-shop';
import { expect, testOnOneServer } from './app';
import { complaintsOf } from './complaints';
import { expectSound } from './page-checks';
import { signInByName, SUPERVISOR_PIN } from './seeded-shop';

const COUNT = 200;
const test = testOnOneServer(async (app) => {
	const { supervisor } = await seedBusyShop(app.dataDir, COUNT);
	return signInByName(app, { name: supervisor.name, pin: SUPERVISOR_PIN });
});

test('a board of 200 molds opens, puts the supervisor first, and a search narrows it', async ({
	context,
	page,
	filled
}) => {
	await context.addCookies(filled);
	const complaints = complaintsOf(page);
	await page.goto('/board?status=all');
	const rows = page.locator('main ol > li');
	await expect(rows).toHaveCount(COUNT);
	const sections = page.getByRole('heading', { level: 2 });
	await expect(sections.first()).toHaveText(/^Needs a supervisor\s+40$/);
	await expect(sections.last()).toHaveText(/^Ended\s+20$/);
	const first = page.getByRole('region', { name: /^Needs a supervisor/ }).getByRole('listitem');
	await expect(first.first()).toContainText('Trouble');
	await expect(first.last()).toContainText('Sign');

	await page.getByLabel('Find').fill('mold 117');
	await expect(rows).toHaveCount(1);
	await expect(rows).toContainText('Mold 117');
	await expect(page).toHaveURL(/q=mold(\+|%20)117/);
	await page.getByRole('link', { name: 'Show all' }).click();
	await expect(page.getByLabel('Find')).toHaveValue('');

	await page.getByLabel('Phase').selectOption('Glove cure');
	await expect(rows).toHaveCount(COUNT / 10);
	for (const text of await rows.allTextContents()) expect(text).toContain('Glove cure');
	await page.getByLabel('Phase').selectOption('Any');
	await page.getByLabel('Status').selectOption('Ended');
	await expect(rows).toHaveCount(COUNT / 10);
	await expect(sections).toHaveText([/^Ended/]);

	await page.goto('/board?status=all&sort=name');
	await expect(rows).toHaveCount(COUNT);
	await page.goto('/board?q=nothing-of-that-name');
	await expect(page.getByText('Nothing here fits')).toBeVisible();
	expect(complaints).toEqual([]);
});

test('the long board is sound on every screen', async ({ context, page, filled }) => {
	test.setTimeout(240_000);
	await context.addCookies(filled);
	await page.goto('/board');
	await expectSound(page, 'board of 200 molds', { hasKnownColors: true });
});

test('the days ahead and the wall of 200 molds are sound, and the wall’s keys turn its pages', async ({
	context,
	page,
	filled
}) => {
	test.setTimeout(240_000);
	await context.addCookies(filled);
	const complaints = complaintsOf(page);
	await page.goto('/board');
	await page.getByRole('link', { name: 'Days ahead' }).click();
	await expect(page.getByRole('heading', { level: 1, name: 'Days ahead' })).toBeVisible();
	await expectSound(page, 'days of 200 molds', { hasKnownColors: true });

	await page.emulateMedia({ reducedMotion: 'reduce' });
	await page.setViewportSize({ width: 1920, height: 1080 });
	await page.goto('/board/wall');
	const rows = page.getByRole('listitem');
	await expect(rows).toHaveCount(5);
	const before = await rows.last().textContent();
	const pages = page.getByRole('img', { name: /^Page \d+ of \d+$/ });
	await expect(pages).toHaveAccessibleName(/^Page 1 of/);
	await page.keyboard.press('ArrowRight');
	await expect(pages).toHaveAccessibleName(/^Page 2 of/);
	await expect(rows.last()).not.toHaveText(before ?? '');
	const tall = await page.evaluate(() => document.documentElement.scrollHeight);
	expect(tall, 'all of it is in sight').toBeLessThanOrEqual(1080);
	expect(complaints).toEqual([]);
});
