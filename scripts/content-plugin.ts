import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { runnerImport, type Plugin } from 'vite';

type Reader = Pick<typeof import('../src/lib/core/content/read-all'), 'readAll'>;

function markdownFiles(folder: string): Record<string, string> {
	const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
	return Object.fromEntries(
		names
			.filter((name) => name.endsWith('.md'))
			.map((name) => [
				`content/${name.replaceAll('\\', '/')}`,
				readFileSync(join(folder, name), 'utf8')
			])
	);
}

/**
 * Checks all Markdown of a content folder with the parser of the project at `root`.
 *
 * @throws Error that lists every problem: file, field, reason
 */
export async function checkContent(root: string, folder = join(root, 'content')): Promise<void> {
	// Loaded only now, so that reading the Vite config does not pull in the whole parser.
	const { module } = await runnerImport<Reader>(resolve(root, 'src/lib/core/content/read-all.ts'));
	module.readAll(markdownFiles(folder));
}

/** Fails a build when a file in content/ is broken, and names the file, the field and the reason. */
export function contentCheck(): Plugin {
	let root = '';
	return {
		name: 'content-check',
		apply: 'build',
		configResolved(config) {
			root = config.root;
		},
		buildStart: () => checkContent(root)
	};
}
