import { binaryStl } from '../../src/lib/core/mesh/write-stl';
import { boxStl } from '../fixtures/box-stl';
import { slotted } from '../fixtures/mesh-recesses';
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

test('without WebGL: a slot is found by keys alone, listed in the plan, and told at the bench', async ({
	context,
	page,
	filled
}) => {
	test.setTimeout(240_000);
	await context.addCookies(filled);
	const complaints = complaintsOf(page);
	await context.addInitScript(() => {
		const given = HTMLCanvasElement.prototype.getContext;
		// Typed by hand: the overloads of the original cannot be written as one function.
		HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string) {
			return kind.startsWith('webgl') ? null : given.call(this, kind as '2d');
		} as typeof given;
	});
	await page.goto('/patterns/new/mesh');
	const picked = page.waitForEvent('filechooser');
	await page.getByLabel('Drop a mesh file here, or pick one').press('Enter');
	await (
		await picked
	).setFiles({
		name: 'slot.stl',
		mimeType: 'model/stl',
		buffer: Buffer.from(binaryStl(slotted(1.4, 8, 40)))
	});
	// The side is larger than the underside; here the slot has to be on top.
	const underside = page.getByRole('radio', { name: /^the file’s underside/ });
	await underside.press('Space');
	await test.step('scaled and turned by keys', async () => {
		await page.getByLabel('Unit of the file').focus();
		const typeInto = async (label: string, value: string) => {
			await page.keyboard.press('Tab');
			await expect(page.getByLabel(label, { exact: true })).toBeFocused();
			await page.keyboard.press('ControlOrMeta+A');
			await page.keyboard.type(value);
		};
		const high = (mm: number) =>
			page.getByRole('img', { name: new RegExp(`^Section .* pattern ${mm} mm high here`) });
		await typeInto('Scale', '150');
		await typeInto('Turn on the board', '0');
		// Its length was laid from left to right; now the cut crosses the slot instead of running in it.
		await expect(high(30)).toBeVisible();
		await page.keyboard.press('Shift+Tab');
		await page.keyboard.type('100');
		await typeInto('Turn on the board', '90');
		await expect(high(12)).toBeVisible();
		await page.keyboard.press('Tab');
		await expect(underside).toBeFocused();
	});
	const places = page.getByRole('region', { name: /^What a first coat that reaches/ });
	await expect(places).toContainText('groove', { timeout: 120_000 });
	await expect(page.getByText(/^This device draws nothing in space/)).toBeVisible();
	await expect(page.getByRole('img', { name: /^Section .* 3 coats and the shell/ })).toBeVisible();
	await expect(page.getByText(/shell in one piece leaves straight up/)).toBeVisible({
		timeout: 120_000
	});
	await expect(page.getByText('No undercut: the glove comes off')).toBeVisible();
	const show = page.getByRole('button', { name: 'Show place 1' });
	await show.focus();
	await page.keyboard.press('Enter');
	await expect(page.getByText('Place 1, groove: the section goes through it.')).toBeVisible();
	await expect(page.getByRole('img', { name: /^Section .*; on it .*1/ })).toBeVisible();
	await expect(page.getByRole('progressbar')).toHaveCount(0, { timeout: 120_000 });
	await expect(page.getByText(/One detail coat|Two detail coats/)).toBeVisible();
	await expectSound(page, '/patterns/new/mesh with a mesh and no WebGL');

	await page.setViewportSize({ width: 1440, height: 900 });
	await page.getByLabel('Name').fill('Block with a slot');
	await page.getByLabel('Parts wanted').fill('5');
	await page.getByRole('button', { name: 'Save the pattern' }).press('Enter');
	await expect(page.getByText('Saved', { exact: true })).toBeVisible();

	await test.step('the plan lists it and says what it asks for', async () => {
		await page.getByRole('link', { name: 'Plan a mold' }).click();
		await page.waitForURL(/\/jobs\/new/);
		const part = page.locator('#part-bridging');
		// A ball of 1.2 mm dips 0.23 mm into 1.4 mm: 7.77 mm stay under its middle, 8 mm at the walls.
		await expect(part).toContainText(/would trap air at 1 \(groove, 1\.4 mm wide, (7\.[89]|8) mm/);
		await expect(part.getByRole('row', { name: /^1 groove/ })).toContainText('1.4 mm');
		await expectSound(page, '/jobs/new with a mesh', { within: '#part-bridging' });
		await page.getByRole('button', { name: 'Accept this plan' }).click();
		await page.waitForURL(/\/jobs\/[0-9a-f-]{36}$/);
	});
	const job = page.url();
	await test.step('frozen, it shows the same, and cuts the pattern with its own coats', async () => {
		await page.goto(`${job}/plan`);
		await expect(page.getByRole('heading', { name: /Places that trap air/ })).toBeVisible();
		await expect(page.locator('#part-bridging')).toContainText('groove, 1.4 mm wide');
		await page.getByRole('button', { name: 'Look at section and model with these coats' }).click();
		const cut = page.getByRole('img', { name: /^Section .* pattern 12 mm high here/ });
		await expect(cut).toBeVisible({ timeout: 60_000 });
		await page.getByRole('slider', { name: 'Plane' }).press('Home');
		await expect(page.getByText('6 mm front of the middle', { exact: true })).toBeVisible();
		await expect(page.getByRole('progressbar')).toHaveCount(0, { timeout: 120_000 });
		await expectSound(page, 'an accepted plan of a mesh pattern', { within: '#part-bridging' });
	});
	await test.step('the bench tells it before the first cup', async () => {
		await page.goto(`${job}/bench`);
		const told = page.getByRole('region', { name: 'By the pattern’s mesh' });
		await expect(told).toContainText(/1: groove, 1\.4 mm wide, (7\.[89]|8) mm deep/);
		await expectSound(page, 'a bench with places of a mesh');
	});
	expect(complaints).toEqual([]);
});

test('a fault of a mesh is named, shown on the model and the section, and what holds is said', async ({
	context,
	page,
	filled
}) => {
	test.setTimeout(120_000);
	await context.addCookies(filled);
	await page.goto('/patterns/new/mesh');
	// The last of the twelve triangles is left out: one face of the box has a hole.
	const buffer = Buffer.from(boxStl(200, 120, 60)).subarray(0, 84 + 50 * 11);
	buffer.writeUInt32LE(11, 80);
	await page
		.getByLabel('Drop a mesh file here, or pick one')
		.setInputFiles({ name: 'open.stl', mimeType: 'model/stl', buffer });
	await expect(page.getByText('The mesh is not closed')).toBeVisible();
	await page.getByRole('button', { name: 'Show it: open edges' }).click();
	await expect(page.getByText('Fault: open edges: the section goes through it.')).toBeVisible();
	await expect(page.getByLabel('Shown on it')).toHaveValue('faults');
	await expect(page.getByText('a fault of the mesh lies here')).toBeVisible();
	await expect(page.getByText('This mesh cannot become a pattern as it is.')).toBeVisible();
});

test('a file is dropped onto the page as well as picked', async ({ context, page, filled }) => {
	await context.addCookies(filled);
	await page.goto('/patterns/new/mesh');
	const bytes = [...boxStl(20, 12, 6)];
	const data = await page.evaluateHandle((list) => {
		const transfer = new DataTransfer();
		transfer.items.add(new File([new Uint8Array(list)], 'dropped.stl'));
		return transfer;
	}, bytes);
	// A page that is not awake yet lets the drop pass; so does a person see it, and drops again.
	await expect(async () => {
		await page
			.getByRole('group', { name: 'Mesh file' })
			.dispatchEvent('drop', { dataTransfer: data });
		await expect(page.getByText('dropped.stl')).toBeVisible({ timeout: 2000 });
	}).toPass();
	await expect(page.getByText('The mesh is closed and without faults.')).toBeVisible();
});
