// Coats of a fine pattern and the same by a general geometry kernel, each in a process of its own:
// so its memory can be told apart, and one that takes too long can be stopped.
import { execFile } from 'node:child_process';
import { promisify } from 'node:util';

const run = promisify(execFile);
/** About 200 000 triangles and about 600: the kernel ends in time only on the small one. */
const FINE_CELLS = 224;
const COARSE_CELLS = 12;
/** A ball this coarse holds a quarter less than a true one: the kernel is spared, its answer is not as good. */
const BALL_SEGMENTS = 8;
/** The kernel is given this many times as long as all seven layers took. */
const PATIENCE = 25;

/** @param {string} script the built tests/bench/mesh-alone.bench.ts */
export async function benchAlone(script) {
	const fine = await alone(script, ['layers', FINE_CELLS]);
	const map = await alone(script, ['bridging', FINE_CELLS]);
	const coarse = await alone(script, ['layers', COARSE_CELLS]);
	const small = await alone(script, ['kernel', COARSE_CELLS, BALL_SEGMENTS]);
	const limitMs = Math.max(PATIENCE * fine.ms, small.ms);
	const large = await alone(script, ['kernel', FINE_CELLS, BALL_SEGMENTS], limitMs);
	const times = large ? large.ms / fine.ms : limitMs / fine.ms;
	return [
		`Six coats and a shell, each in a process of its own; the kernel sums the outermost face alone, with a ball of ${BALL_SEGMENTS} segments:`,
		`  ${fine.triangles} triangles, all seven layers   ${seconds(fine.ms)}; ${cost(fine)}`,
		`  ${fine.triangles} triangles, kernel, one face   ${large ? seconds(large.ms) : `stopped after ${seconds(limitMs)}, not done`}: ${large ? '' : 'at least '}${times.toFixed(0)} times as long`,
		`  ${coarse.triangles} triangles, all seven layers      ${seconds(coarse.ms)}`,
		`  ${coarse.triangles} triangles, kernel, one face      ${seconds(small.ms)}: ${(small.ms / coarse.ms).toFixed(1)} times as long`,
		`  bridging map at 1 mm, tree and all    ${seconds(map.ms)}; ${cost(map)}`
	];
}

const seconds = (ms) => `${(ms / 1000).toFixed(1)} s`;

/** The whole process, its start included: what the machine does besides does not count. */
const cost = ({ cpuMs, mostMb }) =>
	`${seconds(cpuMs)} of one processor, start and all, ${mostMb.toFixed(0)} MB at most`;

/** @returns what the process says; null when it was stopped at the limit */
async function alone(script, args, limitMs = 0) {
	try {
		const { stdout } = await run(process.execPath, [script, ...args.map(String)], {
			timeout: Math.ceil(limitMs),
			killSignal: 'SIGKILL'
		});
		return JSON.parse(stdout);
	} catch (error) {
		if (limitMs > 0 && error.killed) return null;
		throw error;
	}
}
