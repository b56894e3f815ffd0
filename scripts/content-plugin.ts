import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { readLibrary } from '../src/lib/core/content/library';

function markdownFiles(root: string): Record<string, string> {
	const names = readdirSync(join(root, 'content'), { recursive: true, encoding: 'utf8' });
	return Object.fromEntries(
		names
			.filter((name) => name.endsWith('.md'))
			.map((name) => `content/${name}`.replaceAll('\\', '/'))
			.map((path) => [path, readFileSync(join(root, path), 'utf8')])
	);
}

/** @throws Error that lists what is wrong with the files in `content/` below `root` */
export function checkContent(root: string): void {
	readLibrary(markdownFiles(root));
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
		buildStart() {
			checkContent(root);
		}
	};
}
