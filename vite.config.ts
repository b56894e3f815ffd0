import { readdirSync, readFileSync } from 'node:fs';
import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { contentCheck } from './scripts/content-plugin.ts';
import { frameInOneFile } from './scripts/frame-plugin.ts';

const all = ['unit', 'screen'].flatMap((folder) =>
	readdirSync(`tests/${folder}`, { recursive: true, encoding: 'utf8' })
		.filter((file) => file.endsWith('.test.ts'))
		.map((file) => `tests/${folder}/${file.replaceAll('\\', '/')}`)
);
/** What takes its store from here is run once for each store. */
const onStores = all.filter((file) => readFileSync(file, 'utf8').includes('fixtures/test-store'));
const onPostgres = all.filter((file) => file.includes('postgres'));

export default defineConfig({
	plugins: [contentCheck(), sveltekit(), frameInOneFile()],
	test: {
		environment: 'node',
		testTimeout: 20_000,
		projects: [
			{
				extends: true,
				test: {
					name: 'core',
					// These leave nothing behind in a module; loading the core anew for each took a third of the time.
					isolate: false,
					include: ['tests/{unit,outside,screen}/**/*.test.ts'],
					exclude: [...onStores, ...onPostgres]
				}
			},
			{ extends: true, test: { name: 'sqlite', include: onStores, env: { TEST_STORE: 'sqlite' } } },
			{
				extends: true,
				test: {
					name: 'postgresql',
					include: [...onStores, ...onPostgres],
					env: { TEST_STORE: 'postgresql' },
					globalSetup: 'tests/fixtures/postgres-setup.ts',
					testTimeout: 40_000
				}
			}
		]
	}
});
