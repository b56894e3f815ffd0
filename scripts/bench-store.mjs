import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { buildIfNeeded } from './build-if-needed.mjs';

/** Times the store with the built server around it. @returns lines to print */
export async function benchStore() {
	await buildIfNeeded();
	// A bundle of its own: it finds the server by where it lies itself.
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
					input: { store: 'tests/bench/store.bench.ts' },
					output: { entryFileNames: '[name].mjs' }
				}
			}
		});
		const store = await import(pathToFileURL(join(outDir, 'store.mjs')).href);
		return await store.benchStore();
	} finally {
		rmSync(outDir, { recursive: true, force: true });
	}
}
