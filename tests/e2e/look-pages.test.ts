import { expect, test as base, testOnOneServer } from './app';
import { complaintsOf } from './complaints';
import { CREW, openDemoShop } from './demo-shop';
import { expectRoomForLargeLetters, expectSound, expectSoundInForcedColors } from './page-checks';
import { signInByName } from './seeded-shop';

const test = testOnOneServer(async (app) => {
	await openDemoShop(app);
	return signInByName(app, CREW.supervisor);
});

const PAGES = [
	'/board',
	'/board?status=all&sort=name',
	'/board/days',
	'/board/wall',
	'/patterns',
	'/patterns/new',
	'/patterns/demo-relief-panel',
	'/materials',
	'/materials/new',
	'/materials/demo-paste-wax',
	'/jobs/new',
	'/jobs/new?pattern=demo-relief-panel',
	'/read',
	'/read?q=tack',
	'/read/steps/tack-test',
	'/read/briefings/isocyanates',
	'/read/troubles/bubbles',
	'/refresh',
	'/refresh/isocyanate',
	'/people',
	'/shop',
	'/gallery',
	'/sign-in',
	'/sign-out'
];

for (const path of PAGES) {
	test(`${path} can be read by everybody, on every screen`, async ({ context, page, filled }) => {
		await context.addCookies(filled);
		const complaints = complaintsOf(page);
		const answer = await page.goto(path);
		expect(answer?.status()).toBe(200);
		await expectSound(page, path);
		await expectRoomForLargeLetters(page, path);
		expect(complaints).toEqual([]);
	});
}

// The gallery has the clocks, gauges, sections and windows of all the others.
test('colors that the reader’s system forces leave everything readable', async ({
	context,
	page,
	filled
}) => {
	await context.addCookies(filled);
	for (const path of ['/gallery', '/board']) {
		await page.goto(path);
		await expectSoundInForcedColors(page, path);
	}
});

test('what a person has learned can be read on every screen', async ({ context, page, filled }) => {
	await context.addCookies(filled);
	await page.goto('/people');
	await page.getByRole('link', { name: CREW.supervisor.name, exact: true }).click();
	await expect(page.getByRole('heading', { level: 1 })).toContainText(CREW.supervisor.name);
	await expectSound(page, '/people/[id]');
});

test('a page that is not there says so, readably', async ({ context, page, filled }) => {
	await context.addCookies(filled);
	const answer = await page.goto('/no-such-page');
	expect(answer?.status()).toBe(404);
	await expectSound(page, '/no-such-page');
});

base('start and setup can be read by everybody, on every screen', async ({ page }) => {
	const complaints = complaintsOf(page);
	for (const path of ['/start', '/setup']) {
		await page.goto(path);
		await expect(page).toHaveURL(new RegExp(`${path}$`));
		await expectSound(page, path);
	}
	expect(complaints).toEqual([]);
});
