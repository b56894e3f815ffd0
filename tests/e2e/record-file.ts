import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, type Page } from '@playwright/test';

const verifier = fileURLToPath(new URL('../../scripts/verify.mjs', import.meta.url));

/** Downloads the record in view and has the verifier, which shares no code with the app, look at it. */
export async function expectWholeRecord(page: Page, folder: string): Promise<void> {
	await expect(page.getByText('The server finds the record unaltered')).toBeVisible();
	await expect(page.getByText('This device has worked it all out again and agrees')).toBeVisible();
	const downloading = page.waitForEvent('download');
	await page.getByRole('link', { name: 'Download the record' }).click();
	const download = await downloading;
	expect(download.suggestedFilename()).toMatch(/\.json$/);
	const file = `${folder}/record.json`;
	await download.saveAs(file);
	const { status, stdout, stderr } = spawnSync(process.execPath, [verifier, file], {
		encoding: 'utf8'
	});
	expect([status, stdout + stderr]).toEqual([0, expect.stringMatching(/\S/)]);
}
