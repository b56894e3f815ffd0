// Runs one of the commands beside the server: node scripts/tool.mjs backup. Builds them when they are not there.
import process from 'node:process';
import { newestChangeMs, run } from './run.mjs';

const TOOLS = 'build/tools.mjs';

if (newestChangeMs(TOOLS) === 0) {
	const { code } = await run(process.execPath, ['scripts/build-tools.mjs']);
	if (code !== 0) process.exit(1);
}
try {
	const { runTool } = await import('../build/tools.mjs');
	const { code, lines } = await runTool(process.argv.slice(2));
	(code === 0 ? console.log : console.error)(lines.join('\n'));
	process.exitCode = code;
} catch (error) {
	console.error(error instanceof Error ? error.message : String(error));
	process.exitCode = 1;
}
