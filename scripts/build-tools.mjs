// Bundles what runs beside the server (backup, restore, export, import) into build/tools.mjs.
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const here = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));

await build({
	configFile: false,
	root: here('.'),
	logLevel: 'error',
	resolve: { alias: { $lib: here('src/lib') } },
	build: {
		ssr: true,
		outDir: here('build'),
		emptyOutDir: false,
		copyPublicDir: false,
		rollupOptions: {
			input: { tools: here('src/tools/tools.ts') },
			output: { entryFileNames: '[name].mjs', chunkFileNames: 'tools-[name].mjs' }
		}
	}
});
