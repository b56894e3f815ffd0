import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { buildIfNeeded } from './build-if-needed.mjs';
import { findChromium } from './find-chromium.mjs';

/** Times the store and the first picture with the built server around them; prints its lines by `tell`. */
export async function benchBuilt(tell) {
	await buildIfNeeded();
	// A bundle of its own, all of it in one folder: it finds the server by where it lies itself.
	const outDir = mkdtempSync(join('node_modules', '.bench-'));
	try {
		await build({
			configFile: false,
			logLevel: 'error',
			resolve: { alias: { $lib: join(process.cwd(), 'src/lib') } },
			build: {
				ssr: true,
				outDir,
				rollupOptions: {
					input: { store: 'tests/bench/store.bench.ts', picture: 'tests/bench/picture.bench.ts' },
					output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' }
				}
			}
		});
		const load = (name) => import(pathToFileURL(join(outDir, `${name}.mjs`)).href);
		const chromium = findChromium();
		if (chromium) tell((await (await load('picture')).benchPicture(chromium)).join('\n'));
		else tell('First picture: NOT measured, there is no Chromium here.');
		tell((await (await load('store')).benchStore()).join('\n'));
	} finally {
		rmSync(outDir, { recursive: true, force: true });
	}
}
