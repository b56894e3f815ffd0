// Runs the outside checks and prints their table; with --write it goes to the README.
import { spawnSync } from 'node:child_process';

const [, , ...asked] = process.argv;
const isWriting = asked.includes('--write');
const { status } = spawnSync(
	process.execPath,
	[
		'node_modules/vitest/vitest.mjs',
		'run',
		'tests/outside',
		'--reporter=default',
		'--reporter=./tests/outside/outside-table.ts',
		...asked.filter((word) => word !== '--write')
	],
	{
		stdio: 'inherit',
		env: { ...process.env, ...(isWriting ? { GLOVEWRIGHT_OUTSIDE_WRITE: '1' } : {}) }
	}
);
if (isWriting) {
	spawnSync(process.execPath, ['node_modules/prettier/bin/prettier.cjs', '--write', 'README.md'], {
		stdio: 'inherit'
	});
}
process.exitCode = status ?? 1;
