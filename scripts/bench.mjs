// Times the core beside floors of the same size and prints both. It asserts nothing: other work
// on the machine slows both alike, so the ratio is what may be compared.
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { benchAlone } from './bench-alone.mjs';
import { benchBuilt } from './bench-built.mjs';

// Inside the project, so that what stays outside the bundle is found in its node_modules.
const outDir = mkdtempSync(join('node_modules', '.bench-'));
try {
	// Bundled as the app is: what people run is measured, not a loader of sources.
	await build({
		configFile: false,
		logLevel: 'error',
		build: {
			ssr: true,
			outDir,
			rollupOptions: {
				input: {
					plan: 'tests/bench/plan.bench.ts',
					mesh: 'tests/bench/mesh.bench.ts',
					alone: 'tests/bench/mesh-alone.bench.ts'
				},
				output: { entryFileNames: '[name].mjs' }
			}
		}
	});
	const { benchPlan } = await import(pathToFileURL(join(outDir, 'plan.mjs')).href);
	console.log(benchPlan().join('\n'));
	const { benchMesh } = await import(pathToFileURL(join(outDir, 'mesh.mjs')).href);
	console.log(`\n${benchMesh().join('\n')}`);
	await benchBuilt((lines) => console.log(`\n${lines}`));
	console.log();
	await benchAlone(join(outDir, 'alone.mjs'), (line) => console.log(line));
} finally {
	rmSync(outDir, { recursive: true, force: true });
}
