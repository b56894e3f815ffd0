import process from 'node:process';
import { newestChangeMs, run } from './run.mjs';

const SOURCES = [
	'src',
	'content',
	'static',
	'scripts/content-plugin.ts',
	'svelte.config.js',
	'vite.config.ts',
	'package-lock.json'
];

/** Builds the app when a source is newer than what is built. Ends the program when that fails. */
export async function buildIfNeeded() {
	const built = newestChangeMs('build/handler.js');
	if (built > 0 && built >= newestChangeMs(...SOURCES)) return;
	console.log('Building the app …');
	const { code } = await run('npm', ['run', '--silent', 'build']);
	if (code !== 0) {
		console.error('The build failed; the reason stands above.');
		process.exit(1);
	}
}
