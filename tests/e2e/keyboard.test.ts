import type { Page } from '@playwright/test';
import { expect, test } from './app';
import { jobAtFirstCup } from './job-at-first-cup';
import { WORKER_PIN } from './seeded-shop';

const MOST_TABS = 60;

/** Presses Tab till the element with focus has this name; a person would do the same. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
	for (let tabs = 0; tabs < MOST_TABS; tabs++) {
		await page.keyboard.press('Tab');
		const named = await page.evaluate(() => {
			const { activeElement: at } = document;
			if (!(at instanceof HTMLElement)) return '';
			const label = (at as Partial<HTMLInputElement>).labels?.[0]?.textContent;
			return (label ?? at.getAttribute('aria-label') ?? at.innerText).replace(/\s+/g, ' ').trim();
		});
		if (name.test(named)) {
			await expect(page.locator(':focus-visible')).toHaveCount(1);
			return;
		}
	}
	throw new Error(`no ${name} within ${MOST_TABS} tabs`);
}

test('signing in and working with the keys alone, up to a cup that is mixed', async ({
	app,
	page
}) => {
	const { worker, jobId } = await jobAtFirstCup(app.dataDir);
	const listening = page.waitForRequest((request) => request.url().endsWith('/live'));
	await page.goto(`/jobs/${jobId}/bench`);
	await expect(page).toHaveURL(/\/sign-in/);
	await page.keyboard.press('Tab');
	await expect(page.getByRole('link', { name: 'Skip to the page' })).toBeFocused();
	await tabTo(page, /Ada Quill|Ben Marsh/);
	const person = page.getByRole('radio', { name: worker.name });
	while (!(await person.isChecked())) await page.keyboard.press('ArrowDown');
	await tabTo(page, /^PIN$/);
	await page.keyboard.type(WORKER_PIN);
	await page.keyboard.press('Enter');
	await expect(page).toHaveURL(/\/bench$/);
	await listening;

	const heading = page.getByRole('heading', { level: 1 });
	await expect(heading).toHaveText('Build coat 1');
	const lines = page.getByRole('list', { name: 'Pour in this order' }).getByRole('listitem');
	const [first = '', second = ''] = (await lines.allInnerTexts()).map(
		(line) => /([\d.]+)\s?g\b/.exec(line)?.[1]
	);
	await tabTo(page, /^Scale shows B/);
	await page.keyboard.type(first);
	await tabTo(page, /^Scale shows A/);
	await page.keyboard.type(second);
	await tabTo(page, /^B$/);
	await page.keyboard.type('LOT-B');
	await tabTo(page, /^A$/);
	await page.keyboard.type('LOT-A');
	await page.keyboard.press('Enter');

	const mixed = page.getByRole('button', { name: /^Cup is mixed/ });
	await expect(mixed).toBeVisible();
	// The new step has the focus, so that its first control is one key away.
	await expect(heading).toBeFocused();
	await tabTo(page, /^Cup is mixed/);
	await page.keyboard.press('Enter');
	await expect(mixed).toContainText('Press again');
	await page.keyboard.press('Space');
	// Keys are quicker than a stick in a cup: the bench asks once, and what it asks is said aloud.
	const anyway = page.getByRole('button', { name: /^Enter it all the same/ });
	await expect(page.getByRole('alert')).toContainText('of mixing');
	await tabTo(page, /^Enter it all the same/);
	await page.keyboard.press('Enter');
	await expect(anyway).toContainText('Press again');
	await page.keyboard.press('Enter');
	const laid = page.getByRole('button', { name: 'Cup is laid' });
	await expect(laid).toBeVisible();
	await expect(heading).toBeFocused();
	await tabTo(page, /^Cup is laid/);
	await page.keyboard.press('Space');
	await expect(laid).toBeHidden();

	await tabTo(page, /^Something is wrong/);
	await page.keyboard.press('Enter');
	await expect(page.getByRole('dialog')).toBeVisible();
	await page.keyboard.press('Escape');
	await expect(page.getByRole('dialog')).toBeHidden();
	await expect(page.getByRole('button', { name: 'Something is wrong' })).toBeFocused();
});
