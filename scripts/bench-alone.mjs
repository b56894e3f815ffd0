// Coats of a pattern and the same by a general geometry kernel, each in a process of its own,
// so that its memory can be told apart.
import { execFile } from 'node:child_process';
import { promisify } from 'node:util';

const run = promisify(execFile);
/** About 200 000 triangles. */
const FINE_CELLS = 224;
/**
 * Cells and segments of the kernel's ball. With 8 segments it is spared, and its layer comes out too thin;
 * with 32 it comes as near as ours. Its time grows with triangles and with the ball's: the last takes minutes.
 */
const STEPS = [
	[12, 32],
	[24, 32],
	[12, 8],
	[48, 8],
	[FINE_CELLS, 8]
];

/** @param {string} script the built tests/bench/mesh-alone.bench.ts */
export async function benchAlone(script, tell) {
	const fine = await alone(script, 'layers', FINE_CELLS);
	const map = await alone(script, 'bridging', FINE_CELLS);
	tell(`Pattern of ${fine.triangles} triangles, each in a process of its own, tree and all:`);
	tell(
		`  six coats and a shell   ${seconds(fine.ms)}, ${fine.isWithin ? 'within' : 'NOT within'} 0.5 %; ${cost(fine)}`
	);
	tell(`  bridging map at 1 mm    ${seconds(map.ms)}; ${cost(map)}`);
	tell('Our seven layers, and the outermost face alone by the kernel’s Minkowski sum with a ball:');
	for (const [cells, segments] of STEPS) {
		const ours = cells === FINE_CELLS ? fine : await alone(script, 'layers', cells);
		const kernel = await alone(script, 'kernel', cells, segments);
		const off = 100 * (kernel.volumeMl / ours.volumeMl - 1);
		tell(
			`  ${String(ours.triangles).padStart(6)} triangles   ours ${seconds(ours.ms)}, kernel ${seconds(kernel.ms)} ` +
				`with ${segments} segments, ${kernel.mostMb.toFixed(0)} MB, ${off.toFixed(1)} % off ours: ${(kernel.ms / ours.ms).toFixed(0)} times as long`
		);
	}
}

const seconds = (ms) => `${(ms / 1000).toFixed(1)} s`;

/** The whole process, its start included: what the machine does besides does not count. */
const cost = ({ cpuMs, mostMb }) =>
	`${seconds(cpuMs)} of one processor, start and all, ${mostMb.toFixed(0)} MB at most`;

/** @returns what the process says of itself */
async function alone(script, ...args) {
	const { stdout } = await run(process.execPath, [script, ...args.map(String)]);
	return JSON.parse(stdout);
}
