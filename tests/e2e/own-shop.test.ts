import { newActId } from '../../src/lib/server/act-id';
import { addPerson } from '../../src/lib/server/people.repository';
import { openStore } from '../../src/lib/server/store';
import { expect, test } from './app';
import { Crew } from './crew';
import { seedShop, SUPERVISOR_PIN, WORKER_PIN } from './seeded-shop';

test('a shop is set up, a restart loses nothing, and wrong PINs are slowed', async ({
	app,
	page
}) => {
	await page.goto('/');
	await page.getByRole('link', { name: 'Set up this shop' }).click();
	await expect(page).toHaveURL(/\/setup$/);
	await page.getByLabel('Name of the shop').fill('Quarry Lane Casting (invented)');
	await page.getByLabel('Time zone').selectOption('America/Denver');
	await page.getByLabel('Currency').fill('USD');
	await page.getByLabel('Your name').fill('Ada Quill');
	await page.getByLabel('PIN', { exact: true }).fill('7302');
	await page.getByLabel('PIN again').fill('7303');
	await page.getByRole('button', { name: 'Set up the shop' }).click();
	await expect(page.getByRole('alert')).toContainText('PIN');
	await expect(page.getByLabel('Name of the shop')).toHaveValue('Quarry Lane Casting (invented)');
	await page.getByLabel('PIN', { exact: true }).fill('7302');
	await page.getByLabel('PIN again').fill('7302');
	await page.getByRole('button', { name: 'Set up the shop' }).click();
	await expect(page).not.toHaveURL(/\/setup$/);

	await app.restart();
	await page.goto('/board');
	await expect(page).toHaveURL(/\/board$/);
	await expect(page.getByText('Quarry Lane Casting (invented)').first()).toBeVisible();
	await expect(page.getByText('Ada Quill').first()).toBeVisible();
	await expect(page.getByText('No molds yet')).toBeVisible();

	await page.getByRole('button', { name: 'Sign out' }).first().click();
	await page.goto('/sign-in');
	const tryPin = async (pin: string) => {
		await page.getByRole('radio', { name: 'Ada Quill' }).check();
		await page.getByLabel('PIN', { exact: true }).fill(pin);
		await page.getByRole('button', { name: 'Sign in' }).click();
	};
	await expect(async () => {
		await tryPin('1111');
		await expect(page.getByText(/That is not the PIN\. Wait/)).toBeVisible({ timeout: 1000 });
	}).toPass();
	await tryPin('7302');
	await expect(page.getByText(/That is not the PIN\. Wait/)).toBeVisible();
	await app.advanceClock(3600);
	await tryPin('7302');
	await expect(page).toHaveURL(/\/board$/);
});

test('an apprentice cannot sign, and nobody signs their own work', async ({ app, page }) => {
	test.setTimeout(240_000);
	const { supervisor, worker, jobIds } = await seedShop(app.dataDir);
	const jobId = jobIds[0] ?? '';
	const db = await openStore(app.dataDir);
	await addPerson(db, { name: 'Noor Vale', role: 'apprentice', pin: '975310' });
	await addPerson(db, { name: 'Tomas Reed', role: 'supervisor', pin: '864200' });
	await db.destroy();

	// The first supervisor builds the mold herself, so that she has worked on it.
	const maker = new Crew(page, app, { name: supervisor.name, pin: SUPERVISOR_PIN });
	await maker.openBench(jobId);
	await maker.workUntil(/^Hold point: ready to coat/);
	// The pattern's surface is read first.
	await maker.act();
	await maker.act();
	await page.getByRole('link', { name: 'Open the signing page' }).click();
	const signers = page.getByRole('group', { name: 'Who signs' });
	await expect(signers.getByRole('radio')).toHaveCount(1);
	await expect(signers.getByRole('radio', { name: 'Tomas Reed' })).toBeVisible();
	for (const { name } of [supervisor, worker, { name: 'Noor Vale' }]) {
		await expect(signers.getByRole('radio', { name })).toHaveCount(0);
	}

	// Past the screen the answer is the same.
	const session = await page.request.get(`/api/jobs/${jobId}`);
	const { headSeq } = (await session.json()) as { headSeq: number };
	const sign = (supervisorId: string, pin: string) =>
		page.request.post(`/api/jobs/${jobId}/sign`, {
			data: {
				id: newActId(),
				seq: headSeq + 1,
				supervisorId,
				pin,
				decision: 'sign',
				hold: 'readyToCoat'
			}
		});
	const own = await sign(supervisor.id, SUPERVISOR_PIN);
	expect([own.status(), await own.json()]).toMatchObject([
		409,
		{ detail: expect.stringContaining('nobody signs their own work') }
	]);
	const makers = await sign(worker.id, WORKER_PIN);
	expect([makers.status(), await makers.json()]).toMatchObject([403, { code: 'may-not-sign' }]);

	await signers.getByRole('radio', { name: 'Tomas Reed' }).check();
	await page.getByRole('radio', { name: 'Sign: work goes on' }).check();
	await page.getByLabel('Your own PIN', { exact: true }).fill('1111');
	await page.getByRole('button', { name: 'Put it into the record' }).click();
	await expect(page.getByRole('alert')).toContainText('That is not the PIN');
	await page.getByLabel('Your own PIN', { exact: true }).fill('864200');
	await page.getByRole('button', { name: 'Put it into the record' }).click();
	await expect(page).toHaveURL(new RegExp(`/jobs/${jobId}$`));
});
