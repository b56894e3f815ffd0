import { expect, testOnOneServer, type App } from './app';
import { complaintsOf } from './complaints';
import { Crew } from './crew';
import { CREW, openDemoShop, type Somebody } from './demo-shop';
import { seenFields } from './bench-fields';
import { signInByName } from './seeded-shop';
import { giveWord } from './signing';

interface Job {
	id: string;
	title: string;
	summary: { phase: string; status: string; needsSupervisor: unknown; worker: string | null };
}

const test = testOnOneServer(async (app: App) => {
	await openDemoShop(app);
	const [cookie] = await signInByName(app, CREW.supervisor);
	const answer = await fetch(`${app.url}/api/jobs`, {
		headers: { cookie: `${cookie?.name}=${cookie?.value}` }
	});
	const { jobs } = (await answer.json()) as { jobs: Job[] };
	const { people } = (await (await fetch(`${app.url}/api/session`)).json()) as {
		people: Array<{ id: string; name: string }>;
	};
	const inHand = ({ summary }: Job) => people.find(({ id }) => id === summary.worker)?.name;
	/** A mold at work in `phase` that `other` does not have in hand. */
	return (phase: string, other: Somebody) => {
		const found = jobs.find(
			(job) =>
				job.summary.phase === phase &&
				job.summary.status === 'open' &&
				!job.summary.needsSupervisor &&
				inHand(job) !== other.name
		);
		if (!found) throw new Error(`the demo shop has no mold at work in ${phase}`);
		return found.id;
	};
});

/** The smallest picture a browser takes: one red pixel, as PNG. */
const PIXEL = Buffer.from(
	'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==',
	'base64'
);

test('a mold is taken over, paused, stopped by a spill with a photo, and goes on', async ({
	app,
	page,
	filled: molds
}) => {
	const complaints = complaintsOf(page);
	const jobId = molds('build', CREW.maker);
	const maker = new Crew(page, app, CREW.maker);
	await maker.openBench(jobId);
	const takeOver = maker.form.getByRole('button', { name: /^Take over from / });
	await expect(takeOver).toBeVisible();
	await maker.send();
	await expect(takeOver).toBeHidden();
	const working = await maker.title.innerText();

	const panel = page.getByRole('dialog');
	await page.getByRole('button', { name: 'Other', exact: true }).click();
	await panel.locator('summary').filter({ hasText: 'Pause' }).click();
	const pause = panel.locator('form').filter({ visible: true });
	await maker.fill([[/^Why/, 'A delivery is at the gate.']], pause);
	await maker.send(pause);
	await expect(maker.title).toHaveText(/^Paused/);
	await maker.send();
	await expect(maker.title).toHaveText(working);

	await page.getByRole('button', { name: /^Something is wrong/ }).click();
	const report = panel.locator('form').filter({ visible: true });
	await report.getByRole('radio', { name: 'Spill' }).check();
	await report.getByLabel('What you see').fill('A cup of B went over the edge of the board.');
	await report.getByLabel(/^Photo/).setInputFiles({
		name: 'spill.png',
		mimeType: 'image/png',
		buffer: PIXEL
	});
	await expect(report.getByRole('img')).toBeVisible();
	await maker.send(report);
	await expect(maker.title).toHaveText('Spill');
	for (const field of await seenFields(maker.form)) expect(field.label).not.toBe('');
	await maker.workUntil(new RegExp(`^${working.replace(/[()]/g, '\\$&')}$`), [
		[/^How work goes on/, 'Go on where we were'],
		[/^What was (done|found)/, 'Ringed in, taken up, vented container outside.']
	]);

	await page.goto(`/jobs/${jobId}/record`);
	await expect(page.getByText('A cup of B went over the edge of the board.').first()).toBeVisible();
	const photo = page.getByRole('img', { name: /Spill|Trouble/ }).first();
	await expect(photo).toBeVisible();
	expect(await photo.evaluate((img: HTMLImageElement) => img.naturalWidth)).toBeGreaterThan(0);
	await page.goto(`/jobs/${jobId}`);
	await expect(page.getByText('A delivery is at the gate.').first()).toBeVisible();
	expect(complaints).toEqual([]);
});

test('a mold is given up only with a PIN and a reason', async ({ app, page, filled: molds }) => {
	const jobId = molds('gloveCure', CREW.apprentice);
	const apprentice = new Crew(page, app, CREW.apprentice);
	await apprentice.open(`/jobs/${jobId}`);
	await expect(page.getByText(/^A mold is abandoned by a supervisor/)).toBeVisible();
	await expect(page.getByText('Abandon this mold')).toBeHidden();

	await page.getByRole('button', { name: 'Sign out' }).first().click();
	const supervisor = new Crew(page, app, CREW.supervisor);
	await supervisor.open(`/jobs/${jobId}`);
	await page.getByText('Abandon this mold').first().click();
	await page.getByLabel('Why the mold is given up').fill('The pattern cracked under the coat.');
	const giveUp = async (pin: string) => {
		await page.getByLabel('Your own PIN', { exact: true }).fill(pin);
		const answer = page.waitForResponse((response) => response.url().includes('?/abandon'));
		const button = page.getByRole('button', { name: /Abandon this mold/ });
		await button.hover();
		await page.mouse.down();
		await answer;
		await page.mouse.up();
	};
	await giveUp('1111');
	await expect(page.getByRole('alert')).toContainText('That is not the PIN');
	await expect(page.getByLabel('Why the mold is given up')).toHaveValue(
		'The pattern cracked under the coat.'
	);
	await giveUp(CREW.supervisor.pin);
	await expect(page.getByText('The pattern cracked under the coat.').first()).toBeVisible();
	await expect(page.getByRole('link', { name: 'To the bench' })).toBeHidden();
});

test('a mold inspected as not usable can be rejected, not accepted', async ({
	app,
	browser,
	page,
	filled: molds
}) => {
	test.setTimeout(300_000);
	const complaints = complaintsOf(page);
	const jobId = molds('shell', CREW.maker);
	const maker = new Crew(page, app, CREW.maker);
	const office = await browser.newContext();
	const supervisor = new Crew(await office.newPage(), app, CREW.supervisor);
	await maker.openBench(jobId);
	await maker.send();
	await maker.workUntil(/^Hold point: ready to open/, [
		[/^If less went on/, 'The last cup was not needed.']
	]);
	await maker.act();
	await supervisor.open(`/jobs/${jobId}/sign`);
	await giveWord(supervisor.page, CREW.supervisor, { decision: 'Sign: work goes on' });
	await expect(maker.title).not.toHaveText(/^Hold point/);
	await maker.workUntil(/^Hold point: mold accepted/, [[/^Your verdict/, 'Not usable']]);
	await maker.act();

	await supervisor.open(`/jobs/${jobId}/sign`);
	await expect(
		supervisor.page.getByText('The inspection found it not usable: reject the mold')
	).toBeVisible();
	await expect(supervisor.page.getByRole('radio', { name: 'Sign: work goes on' })).toHaveCount(0);
	await giveWord(supervisor.page, CREW.supervisor, {
		decision: 'Reject the mold: it cannot be used',
		reason: 'The glove is torn through at the flange.'
	});
	await expect(maker.title).toHaveText(/^Rejected/);
	await supervisor.page.goto(`/jobs/${jobId}/record`);
	await expect(
		supervisor.page.getByText('The glove is torn through at the flange.').first()
	).toBeVisible();
	await office.close();
	expect(complaints).toEqual([]);
});
