import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
const HEIGHT = 900;

/** Violations of WCAG 2.2 AA that a machine can see, one line for each rule and place. */
async function violations(page: Page, rules: 'all' | 'colors', within?: string): Promise<string[]> {
	// One frame only, so the mode that needs no second window is enough.
	const axe = new AxeBuilder({ page }).setLegacyMode();
	if (within) axe.include(within);
	const { violations: found } = await (
		rules === 'all' ? axe.withTags(TAGS) : axe.withRules(['color-contrast'])
	).analyze();
	return found.flatMap(({ id, help, nodes }) =>
		nodes.slice(0, 3).map(({ target, html }) => `${id}: ${help}: ${target.join(' ')} ${html}`)
	);
}

/** By how many CSS pixels the page is wider than the screen, and what sticks out. */
function overflow(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const { scrollingElement } = document;
		const room = scrollingElement?.clientWidth ?? 0;
		if ((scrollingElement?.scrollWidth ?? 0) <= room) return [];
		return [...document.querySelectorAll('main *, header *, footer *')]
			.filter((element) => element.getBoundingClientRect().right > room + 1)
			.slice(0, 4)
			.map((element) => `${element.tagName}.${element.className}`.slice(0, 80))
			.concat(`${scrollingElement?.scrollWidth} px wide on ${room} px`);
	});
}

/** Everything once at each width; the other scheme changes colors only. */
const LOOKS = [
	{ width: 1440, colorScheme: 'light', rules: 'all' },
	{ width: 1440, colorScheme: 'dark', rules: 'colors' },
	{ width: 390, colorScheme: 'dark', rules: 'all' },
	{ width: 390, colorScheme: 'light', rules: 'colors' }
] as const;

/**
 * Looks at the page in view on a desk and on a phone, in light and dark. Nothing may stick out.
 *
 * @param options - `within`: selector of the part to look at, where another test looks at the rest;
 *   `hasKnownColors` leaves out the looks at colors alone, where another test looks at them on a shorter page
 */
export async function expectSound(
	page: Page,
	name: string,
	{ within, hasKnownColors = false }: { within?: string; hasKnownColors?: boolean } = {}
): Promise<void> {
	await expect(page.locator('main')).toBeVisible();
	for (const { width, colorScheme, rules } of LOOKS) {
		if (hasKnownColors && rules === 'colors') continue;
		await page.emulateMedia({ colorScheme });
		await page.setViewportSize({ width, height: HEIGHT });
		// As tall as the page: the bar at the foot of the bench covers what is scrolled under it.
		const height = await page.evaluate(() => document.documentElement.scrollHeight);
		await page.setViewportSize({ width, height: Math.max(HEIGHT, height) });
		const found = await violations(page, rules, within);
		expect.soft(found, `${name}, ${width} px, ${colorScheme}`).toEqual([]);
		expect.soft(await overflow(page), `${name} at ${width} px`).toEqual([]);
	}
	await page.setViewportSize({ width: 320, height: HEIGHT });
	expect.soft(await overflow(page), `${name} at 320 px`).toEqual([]);
}

/** Letters twice as large (WCAG 2.2, 1.4.4): nothing may stick out on a tablet, held upright or half a screen of it. */
export async function expectRoomForLargeLetters(page: Page, name: string): Promise<void> {
	await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
	for (const width of [820, 640]) {
		await page.setViewportSize({ width, height: HEIGHT });
		expect.soft(await overflow(page), `${name} at ${width} px, letters at 200 %`).toEqual([]);
	}
	await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
}

/** Looks at the page in view in colors that the reader's system forces upon it. */
export async function expectSoundInForcedColors(page: Page, name: string): Promise<void> {
	await page.emulateMedia({ forcedColors: 'active' });
	expect.soft(await violations(page, 'all'), `${name} in forced colors`).toEqual([]);
	await page.emulateMedia({ forcedColors: 'none' });
}
