import { expect, testOnOneServer } from './app';
import { complaintsOf } from './complaints';
import { CREW, openDemoShop } from './demo-shop';
import { expectSound } from './page-checks';
import { signInByName } from './seeded-shop';

interface Job {
	id: string;
	title: string;
	summary: { phase: string; status: string };
}

const test = testOnOneServer(async (app) => {
	await openDemoShop(app);
	const cookies = await signInByName(app, CREW.supervisor);
	const cookie = cookies.map(({ name, value }) => `${name}=${value}`).join('; ');
	const answer = await fetch(`${app.url}/api/jobs`, { headers: { cookie } });
	const { jobs } = (await answer.json()) as { jobs: Job[] };
	return { cookies, jobs };
});

for (const half of [0, 1]) {
	test(`the bench of every mold of the demo, whatever its state, ${half + 1} of 2`, async ({
		context,
		page,
		filled: { cookies, jobs }
	}) => {
		await context.addCookies(cookies);
		const complaints = complaintsOf(page);
		expect(jobs.length).toBeGreaterThanOrEqual(8);
		for (const { id, title, summary } of jobs.filter((_, i) => i % 2 === half)) {
			await page.goto(`/jobs/${id}/bench`);
			await expect(page.getByRole('heading', { level: 1 })).not.toBeEmpty();
			await expectSound(page, `bench of ${title} in ${summary.phase}, ${summary.status}`);
		}
		expect(complaints).toEqual([]);
	});
}

for (const part of ['', '/sign', '/record', '/labels', '/briefing']) {
	test(`a finished mold and one at work: /jobs/[id]${part}`, async ({
		context,
		page,
		filled: { cookies, jobs }
	}) => {
		await context.addCookies(cookies);
		const complaints = complaintsOf(page);
		const finished = jobs.find(({ summary }) => summary.status === 'handed over');
		const signable = jobs.find(({ summary }) => summary.phase === 'shellRelease');
		for (const job of [finished, signable]) {
			expect(job).toBeDefined();
			await page.goto(`/jobs/${job?.id}${part}`);
			await expectSound(page, `${part} of ${job?.title}`);
		}
		expect(complaints).toEqual([]);
	});
}

test('a frozen plan: /jobs/[id]/plan', async ({ context, page, filled: { cookies, jobs } }) => {
	await context.addCookies(cookies);
	const complaints = complaintsOf(page);
	await page.goto(`/jobs/${jobs[0]?.id}/plan`);
	await expectSound(page, `plan of ${jobs[0]?.title}`);
	const number = page.getByRole('button', { name: /how .+ was found/ }).first();
	await number.click();
	const sheet = page.getByRole('dialog');
	await expect(sheet.getByText('Source', { exact: true })).toBeVisible();
	await expectSound(page, 'how a number was found');
	await page.keyboard.press('Escape');
	await expect(sheet).toBeHidden();
	expect(complaints).toEqual([]);
});

test('the panels beside a step open, are read, and shut by Escape', async ({
	context,
	page,
	filled: { cookies, jobs }
}) => {
	await context.addCookies(cookies);
	const job = jobs.find(({ summary }) => ['build', 'detail'].includes(summary.phase));
	await page.goto(`/jobs/${job?.id}/bench`);
	for (const name of ['How to do it', 'Other']) {
		await page.getByRole('button', { name, exact: true }).click();
		const panel = page.getByRole('dialog');
		await expect(panel).toBeVisible();
		await expectSound(page, `panel "${name}"`);
		await page.keyboard.press('Escape');
		await expect(panel).toBeHidden();
	}
});
