import { spawn } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

/** The project's folder, wherever the script was started. */
export const root = fileURLToPath(new URL('..', import.meta.url));

const isWindows = process.platform === 'win32';

/** Runs a command in the project's folder. Resolves to its exit code and, when asked for, its output. */
export function run(command, args, { env = {}, isKept = false } = {}) {
	return new Promise((resolve) => {
		const child = spawn(command, args, {
			cwd: root,
			env: { ...process.env, ...env },
			stdio: ['inherit', isKept ? 'pipe' : 'inherit', 'inherit'],
			// npm is a script on Windows, which only a shell can start.
			shell: isWindows && command === 'npm'
		});
		let output = '';
		child.stdout?.on('data', (chunk) => {
			output += chunk;
			process.stdout.write(chunk);
		});
		const pass = (signal) => child.kill(signal);
		process.on('SIGTERM', pass);
		process.on('SIGINT', pass);
		const end = (code) => {
			process.off('SIGTERM', pass);
			process.off('SIGINT', pass);
			resolve({ code, output });
		};
		child.on('error', (error) => {
			console.error(`${command} cannot be started: ${error.message}`);
			end(1);
		});
		child.on('exit', (code, signal) => end(code ?? (signal ? 1 : 0)));
	});
}

/** When the newest file under these paths was changed, in ms; 0 when there is none. */
export function newestChangeMs(...paths) {
	return Math.max(0, ...paths.map((path) => changeMs(join(root, path))));
}

function changeMs(path) {
	const entry = statSync(path, { throwIfNoEntry: false });
	if (!entry) return 0;
	if (!entry.isDirectory()) return entry.mtimeMs;
	return Math.max(0, ...readdirSync(path).map((name) => changeMs(join(path, name))));
}

/** Installs what package-lock.json names, when it is not there or the lock is newer. */
export async function installIfNeeded() {
	const installed = newestChangeMs('node_modules/.package-lock.json');
	if (installed > 0 && installed >= newestChangeMs('package-lock.json')) return;
	console.log('Installing what the app needs …');
	const { code } = await run('npm', ['ci', '--no-audit', '--no-fund']);
	if (code !== 0) {
		console.error('Installing failed; the reason stands above. Is there a network?');
		process.exit(1);
	}
}
