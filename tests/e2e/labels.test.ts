import jsQR from 'jsqr';
import { expect, testOnOneServer } from './app';
import { CREW, openDemoShop } from './demo-shop';
import { signInByName } from './seeded-shop';

const test = testOnOneServer(async (app) => {
	await openDemoShop(app);
	return signInByName(app, CREW.maker);
});

// ISO/IEC 18004 by a reader that is not the writer's.
test('the code on a label, photographed, leads to the mold', async ({ context, page, filled }) => {
	await context.addCookies(filled);
	await page.emulateMedia({ colorScheme: 'dark' });
	const answer = await page.request.get('/api/jobs');
	const { jobs } = (await answer.json()) as { jobs: Array<{ id: string }> };
	await page.goto(`/jobs/${jobs[0]?.id}`);
	await page.getByRole('link', { name: 'Labels' }).click();
	const cups = page.getByRole('region', { name: 'For the cups' }).getByRole('article');
	await expect(cups.nth(3)).toBeVisible();

	const code = page.getByRole('img', { name: 'Leads to this mold' });
	const { pixels, side } = await code.evaluate(async (svg) => {
		const side = 600;
		const picture = new Image();
		picture.src = URL.createObjectURL(
			new Blob([svg.outerHTML.replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"')], {
				type: 'image/svg+xml'
			})
		);
		await picture.decode();
		const canvas = document.createElement('canvas');
		canvas.width = canvas.height = side;
		const pen = canvas.getContext('2d');
		pen?.drawImage(picture, 0, 0, side, side);
		return { pixels: [...(pen?.getImageData(0, 0, side, side).data ?? [])], side };
	});
	const read = jsQR(Uint8ClampedArray.from(pixels), side, side)?.data;
	expect(read).toBe(page.url().replace('/labels', ''));
});
