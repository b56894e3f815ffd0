import type { Locator } from '@playwright/test';

/**
 * Presses a button as a hand does: a tap, or, where it says "Hold", down until `answer` has come.
 * `answer` is asked for when the button is down: before, what it waits for may be true of a page that is not there yet.
 */
export async function press(button: Locator, answer: () => Promise<unknown>): Promise<void> {
	if (!/\bHold\b/.test(await button.innerText())) {
		await button.click();
		return;
	}
	const { mouse } = button.page();
	await button.hover();
	await mouse.down();
	await answer();
	await mouse.up();
}
