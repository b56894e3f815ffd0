// `npm run torture`: the proofs of the log under kills, several servers, altered bytes and fuzzed
// requests, as a table. `-- --short` is what `npm test` runs. Needs a build; makes one when it is old.
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { buildIfNeeded } from './build-if-needed.mjs';
import { run } from './run.mjs';

const isShort = process.argv.includes('--short');
const measure = isShort
	? { kills: 8, benches: 6, acts: 10, bytes: 1000, killMinutes: 5 }
	: { kills: 200, benches: 20, acts: 25, bytes: 10_000, killMinutes: 20 };

await buildIfNeeded();
// Inside the project, so that what stays outside the bundle is found in its node_modules.
const outDir = mkdtempSync(join('node_modules', '.torture-'));
process.on('exit', () => rmSync(outDir, { recursive: true, force: true }));
await build({
	configFile: false,
	logLevel: 'error',
	resolve: { alias: { $lib: join(process.cwd(), 'src/lib') } },
	build: {
		ssr: true,
		outDir,
		rollupOptions: {
			input: { torture: 'tests/torture/torture.ts' },
			output: { entryFileNames: '[name].mjs' }
		}
	}
});
const { torture } = await import(pathToFileURL(join(outDir, 'torture.mjs')).href);
let isGood = await torture(measure);
if (!isShort) {
	const { code } = await run('npx', ['playwright', 'test', '-c', 'tests', 'fuzz'], {
		env: { GLOVEWRIGHT_FUZZ: '100000' }
	});
	isGood &&= code === 0;
}
process.exit(isGood ? 0 : 1);
