// `npm run icons`: draws static/icon.svg at the sizes an installed app asks for. Run it when the drawing changes.
import { readFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { findChromium } from './find-chromium.mjs';

/** A maskable icon may be cut to a circle of 80 % of its width. Source: W3C, Web Application Manifest, icon masks. */
const SAFE = 0.8;
/** The drawing's outermost corner lies 35 of its 64 units from the middle. */
const IN_CIRCLE = (SAFE / 2) * (64 / 35);

const ICONS = [
	{ name: 'icon-192', px: 192, share: 1 },
	{ name: 'icon-512', px: 512, share: 1 },
	{ name: 'icon-maskable-512', px: 512, share: IN_CIRCLE }
];

const drawing = readFileSync('static/icon.svg', 'utf8');
const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
try {
	const page = await browser.newPage();
	for (const { name, px, share } of ICONS) {
		const width = Math.round(px * share);
		await page.setViewportSize({ width: px, height: px });
		await page.setContent(
			`<style>body { display: grid; place-content: center; height: 100vh; margin: 0; background: #fff }
			svg { width: ${width}px; height: ${width}px }</style>${drawing}`
		);
		await page.screenshot({ path: `static/${name}.png` });
	}
} finally {
	await browser.close();
}
