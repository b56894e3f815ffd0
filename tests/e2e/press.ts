import type { Locator } from '@playwright/test';

/** A finger holds what asks to be held; keys press it twice, which takes less time. */
export type Hand = 'finger' | 'keys';

/**
 * Presses a button: a tap, or, where it says "Hold", down until `answer` has come.
 * `answer` is asked for when the button is down: before, what it waits for may be true of a page that is not there yet.
 */
export async function press(
	button: Locator,
	answer: () => Promise<unknown>,
	hand: Hand = 'finger'
): Promise<void> {
	if (!/\bHold\b/.test(await button.innerText())) {
		await button.click();
		return;
	}
	if (hand === 'keys') {
		await button.press('Enter');
		await button.press('Enter');
		return;
	}
	const { mouse } = button.page();
	await button.hover();
	await mouse.down();
	await answer();
	await mouse.up();
}
