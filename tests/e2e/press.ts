import type { Locator } from '@playwright/test';

/** Presses a button as a hand does: a tap, or, where it says "Hold", down until `answer` has come. */
export async function press(button: Locator, answer: Promise<unknown>): Promise<void> {
	if (!/\bHold\b/.test(await button.innerText())) {
		await button.click();
		return;
	}
	const { mouse } = button.page();
	await button.hover();
	await mouse.down();
	await answer;
	await mouse.up();
}
