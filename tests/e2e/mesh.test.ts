import { boxStl } from '../fixtures/box-stl';
import { expect, testOnOneServer } from './app';
import { complaintsOf } from './complaints';
import { CREW, openDemoShop } from './demo-shop';
import { expectSound } from './page-checks';
import { signInByName } from './seeded-shop';

const test = testOnOneServer(async (app) => {
	await openDemoShop(app);
	return signInByName(app, CREW.supervisor);
});

const SIZES = { Length: '200', Width: '120', Height: '60' };

test('a box in a file becomes a pattern with the numbers of the box, and a plan from the mesh', async ({
	context,
	page,
	filled
}) => {
	test.setTimeout(120_000);
	await context.addCookies(filled);
	const complaints = complaintsOf(page);
	await page.goto('/patterns/new');
	for (const [label, value] of Object.entries(SIZES)) await page.getByLabel(label).fill(value);
	const figures = page.locator('.aside dl');
	await expect(figures).toContainText('cm²');
	const described = await figures.innerText();

	await page.getByRole('link', { name: 'From a mesh file' }).click();
	const name = 'box.stl';
	const buffer = Buffer.from(boxStl(20, 12, 6));
	await page
		.getByLabel('Drop a mesh file here, or pick one')
		.setInputFiles({ name, mimeType: 'model/stl', buffer });
	await expect(page.getByText('The mesh is closed and without faults.')).toBeVisible();
	// 20 by 12 by 6 of what? Millimeters would do as well: a person says centimeters.
	await expect(page.getByText(/The file has no unit/)).toBeVisible();
	await page.getByLabel('Unit of the file').selectOption('centimeters');
	await expect(page.getByRole('radio', { name: /240 cm², 60 mm high/ }).first()).toBeChecked();
	const section = page.getByRole('img', { name: /^Section .* pattern 60 mm high here, 3 coats/ });
	await expect(section).toBeVisible();
	await page.getByRole('slider', { name: 'Plane' }).press('Home');
	await expect(page.getByText('60 mm front of the middle')).toBeVisible();
	await expect(figures).toContainText('cm²', { timeout: 60_000 });
	expect(await figures.innerText()).toBe(described);
	await expect(page.getByRole('progressbar')).toHaveCount(0, { timeout: 60_000 });
	await expectSound(page, '/patterns/new/mesh');

	await page.setViewportSize({ width: 1440, height: 900 });
	await page.getByLabel('Name').fill('Box from a file');
	await page.getByLabel('Parts wanted').fill('5');
	await page.getByRole('button', { name: 'Save the pattern' }).click();
	await expect(page.getByText('Saved')).toBeVisible();
	await expect(page.getByText('From the mesh file box.stl, 12 triangles')).toBeVisible();
	expect(await figures.innerText()).toBe(described);
	await page.getByRole('button', { name: 'Look at section and model' }).click();
	await expect(section).toBeVisible();
	const file = await page.request.get(
		(await page.getByRole('link', { name: 'Take the file away' }).getAttribute('href')) ?? ''
	);
	expect(await file.body()).toEqual(buffer);

	await page.getByRole('link', { name: 'Plan a mold' }).click();
	await page.waitForURL(/\/jobs\/new/);
	await page
		.getByRole('button', { name: /how Exposed area was found/ })
		.first()
		.click();
	const trace = page.getByRole('dialog', { name: 'Exposed area' });
	await expect(trace).toContainText('From the mesh');
	await expect(trace).toContainText('box.stl');
	expect(complaints).toEqual([]);
});

test('a broken file is refused in words, another one can be stopped, and ours can be tried', async ({
	context,
	page,
	filled
}) => {
	await context.addCookies(filled);
	await page.goto('/patterns/new/mesh');
	const pick = page.getByLabel('Drop a mesh file here, or pick one');
	const send = (buffer: Buffer, name = 'broken.stl') =>
		pick.setInputFiles({ name, mimeType: 'model/stl', buffer });
	const alert = page.getByRole('alert');
	await send(Buffer.from(boxStl(20, 12, 6)).subarray(0, 400));
	await expect(alert).toContainText('cut short');
	await expect(alert).toContainText('Where: header, bytes 81 to 84. Accepted: an STL file');
	await send(Buffer.alloc(0));
	await expect(alert).toContainText('The file is empty');
	await send(Buffer.from('<svg/>'), 'drawing.svg');
	await expect(alert).toContainText('Files that end in .svg are not read');

	await page.getByRole('button', { name: /pulley/ }).click();
	await expect(page.getByText('stepped-pulley.stl')).toBeVisible();
	await page.getByRole('button', { name: 'Stop' }).click();
	await expect(page.getByText('stepped-pulley.stl')).toBeHidden();
	await page.getByRole('button', { name: 'Save the pattern' }).click();
	await expect(alert.first()).toContainText('not measured yet');
});
