import { expect, type Page } from '@playwright/test';
import type { Somebody } from './demo-shop';

export type Word =
	| { decision: 'Sign: work goes on' }
	| { decision: 'Send back to a step'; to: string; reason: string }
	| { decision: 'Reject the mold: it cannot be used'; reason: string }
	| { decision: 'Accept the deviation: work goes on'; reason: string };

/** Fills the signing page that is open for `by`, and presses its button. */
async function sign(page: Page, by: Somebody, word: Word): Promise<void> {
	await expect(page.getByRole('heading', { name: 'What was really done' })).toBeVisible();
	await page.getByRole('radio', { name: word.decision }).check();
	if ('to' in word) {
		const where = page.getByRole('group', { name: 'Back to' });
		await where.getByRole('radio', { name: word.to, exact: true }).check();
	}
	if ('reason' in word) await page.getByLabel(/^Reason, or a note/).fill(word.reason);
	await page.getByRole('radio', { name: by.name }).check();
	await page.getByLabel('Your own PIN', { exact: true }).fill(by.pin);
	await page.getByRole('button', { name: 'Put it into the record' }).click();
}

/** As `sign`, and waits till the word is in the record. */
export async function giveWord(page: Page, by: Somebody, word: Word): Promise<void> {
	await sign(page, by, word);
	await expect(page).toHaveURL(/\/jobs\/[\w-]+$/);
}
