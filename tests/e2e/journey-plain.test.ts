import { expect, test } from './app';
import { complaintsOf } from './complaints';
import { Crew } from './crew';
import { CREW } from './demo-shop';
import { expectWholeRecord } from './record-file';
import { giveWord } from './signing';

test('from the first click to the record of a mold without detail coats, on one device', async ({
	app,
	page
}, { outputDir }) => {
	test.setTimeout(900_000);
	const complaints = complaintsOf(page);
	await page.goto('/');
	await expect(page).toHaveURL(/\/start$/);
	await page.getByRole('button', { name: 'Open the demo shop' }).click();
	await expect(page).toHaveURL(/\/sign-in/, { timeout: 60_000 });
	const maker = new Crew(page, app, CREW.maker);
	await maker.signIn();
	await expect(page).toHaveURL(/\/board$/);

	await page.getByRole('link', { name: 'Patterns' }).first().click();
	await expect(page).toHaveURL(/\/patterns$/);
	await page
		.getByRole('link', { name: /bollard/i })
		.first()
		.click();
	await expect(page.getByRole('heading', { level: 1, name: /bollard/i })).toBeVisible();
	await page.getByRole('link', { name: 'Plan a mold' }).click();
	await expect(page).toHaveURL(/\/jobs\/new\?pattern=/);
	await page.getByRole('button', { name: 'Accept this plan' }).click();
	await expect(page).toHaveURL(/\/jobs\/[0-9a-f-]{36}$/);
	const jobId = new URL(page.url()).pathname.split('/')[2] ?? '';

	await maker.openBench(jobId);
	for (const hold of ['ready to coat', 'glove accepted', 'ready to open', 'mold accepted']) {
		await maker.workUntil(new RegExp(`^Hold point: ${hold}`));
		// The pattern's surface is read first.
		if (hold === 'ready to coat') await maker.act();
		await maker.act();
		await page.getByRole('link', { name: 'Open the signing page' }).click();
		await giveWord(page, CREW.supervisor, { decision: 'Sign: work goes on' });
		await maker.openBench(jobId);
	}
	await maker.workUntil(/^Handed over$/);
	expect(maker.titles.filter((title) => /detail/i.test(title))).toEqual([]);

	await page.getByRole('link', { name: 'Open the record' }).click();
	await expect(page).toHaveURL(/\/record$/);
	await expect(page.getByRole('heading', { name: 'Signatures' })).toBeVisible();
	await expectWholeRecord(page, outputDir);
	await page.goto('/board?status=ended');
	await expect(page.getByRole('link', { name: /bollard/i }).first()).toBeVisible();
	expect(complaints).toEqual([]);
});
