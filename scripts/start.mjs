// `npm start`: installs, builds and serves, each only when needed. Needs Node and npm, nothing else.
import process from 'node:process';
import { buildIfNeeded } from './build-if-needed.mjs';
import { installIfNeeded, run } from './run.mjs';

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
	console.error(`Node ${process.versions.node} is too old; accepted: Node 20.19 or later.`);
	process.exit(1);
}

/**
 * npm runs this under a shell that does not pass a signal on. When that shell is gone, the server is
 * told to stop, so that stopping npm stops everything.
 */
function stopWithNpm() {
	if (process.env.npm_lifecycle_event !== 'start') return;
	const parent = process.ppid;
	setInterval(() => {
		if (process.ppid !== parent) process.emit('SIGTERM', 'SIGTERM');
	}, 500).unref();
}

await installIfNeeded();
await buildIfNeeded();
stopWithNpm();
const { code } = await run(process.execPath, ['scripts/serve.mjs']);
process.exit(code);
