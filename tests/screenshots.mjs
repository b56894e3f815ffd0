// `npm run shots -- <folder> [words]`: pictures of every page of the built app with the demo shop, on
// three screens, light and dark, for looking at. With "readme" as words: the pictures of the README.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { withDemoApp } from './demo-app.mjs';

const SCREENS = [
	['phone', 390, 844],
	['tablet', 820, 1180],
	['desk', 1440, 900]
];

/** Every page worth a look, by name; those of molds in the state that shows most. */
function pagesOf(jobs) {
	const find = (words) => jobs.find(({ title, summary }) => words(summary, title))?.id ?? '';
	const weighing = find(
		({ phase, window, nextAct }) => phase === 'build' && window && /weighed/.test(nextAct)
	);
	const coating = find(({ phase, trouble }) => phase === 'build' && !trouble);
	const asking = find(({ phase }) => phase === 'shellRelease');
	const inTrouble = find(({ trouble }) => trouble !== null);
	const finished = find(({ status }) => status === 'handed over');
	const curing = find(({ phase }) => phase === 'gloveCure');
	const shelling = find(({ phase }) => phase === 'shell');
	return [
		['sign-in', '/sign-in'],
		['board', '/board'],
		['board-days', '/board/days'],
		['board-wall', '/board/wall'],
		['patterns', '/patterns'],
		['pattern', '/patterns/demo-relief-panel'],
		['pattern-new', '/patterns/new'],
		['materials', '/materials'],
		['material-new', '/materials/new'],
		['plan-new', '/jobs/new?pattern=demo-relief-panel'],
		['mold', `/jobs/${asking}`],
		['briefing', `/jobs/${coating}/briefing`],
		['plan', `/jobs/${finished}/plan`],
		['bench', `/jobs/${weighing}/bench`],
		['bench-coat', `/jobs/${coating}/bench`],
		['bench-cure', `/jobs/${curing}/bench`],
		['bench-shell', `/jobs/${shelling}/bench`],
		['bench-trouble', `/jobs/${inTrouble}/bench`],
		['sign', `/jobs/${asking}/sign`],
		['record', `/jobs/${finished}/record`],
		['read', '/read'],
		['read-step', '/read/steps/tack-test'],
		['people', '/people'],
		['shop', '/shop']
	];
}

/** Name, screen and light of the README's pictures: what is seen without scrolling. */
const README = [
	['start', 'desk', 'light'],
	['bench', 'tablet', 'light'],
	['board', 'desk', 'light']
];

async function shoot(browser, { url, cookies, pages, folder, wanted }) {
	for (const [screen, width, height] of SCREENS) {
		for (const light of ['light', 'dark']) {
			const context = await browser.newContext({
				baseURL: url,
				viewport: { width, height },
				colorScheme: light,
				reducedMotion: 'reduce',
				locale: 'en-US',
				timezoneId: 'America/Chicago'
			});
			await context.addCookies(cookies);
			const page = await context.newPage();
			for (const [name, path] of pages) {
				if (!wanted(name, screen, light)) continue;
				await page.goto(path);
				await page.evaluate(() => document.fonts.ready);
				const isReadme = folder.isReadme;
				const file = isReadme ? `${name}.png` : `${name}-${screen}-${light}.png`;
				await page.screenshot({ path: join(folder.path, file), fullPage: !isReadme });
				console.log(file);
			}
			await context.close();
		}
	}
}

async function main([path, words = '']) {
	if (!path) throw new Error('name a folder: npm run shots -- <folder> [words]');
	const isReadme = words === 'readme';
	mkdirSync(path, { recursive: true });
	const shared = {
		folder: { path, isReadme },
		wanted: (...shot) =>
			isReadme
				? README.some((each) => each.every((word, i) => word === shot[i]))
				: shot.join('-').includes(words)
	};
	await withDemoApp(
		({ url, browser, cookies, jobs }) =>
			shoot(browser, { url, cookies, pages: pagesOf(jobs), ...shared }),
		({ url, browser }) =>
			shoot(browser, { url, cookies: [], pages: [['start', '/start']], ...shared })
	);
}

await main(process.argv.slice(2));
