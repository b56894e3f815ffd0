import { readFileSync } from 'node:fs';

/**
 * The server's instant, ISO in UTC. For rehearsals and tests GLOVEWRIGHT_CLOCK_OFFSET_FILE names a
 * file that holds seconds to add, read at every call.
 */
export function now(): string {
	return new Date(Date.now() + offsetS() * 1000).toISOString();
}

function offsetS(): number {
	const file = process.env.GLOVEWRIGHT_CLOCK_OFFSET_FILE;
	if (!file) return 0;
	try {
		const offset = Number(readFileSync(file, 'utf8'));
		return Number.isFinite(offset) ? offset : 0;
	} catch {
		return 0;
	}
}
