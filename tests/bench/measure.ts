/** Wall-clock time of one run, in milliseconds. */
export function measureMs(run: () => unknown): number {
	const from = performance.now();
	run();
	return performance.now() - from;
}

/**
 * Processor time of one run, in milliseconds: what it would take on a machine with nothing else to do,
 * or a little more, since the engine's own threads are counted too.
 */
export function measureCpuMs(run: () => unknown): number {
	const from = process.cpuUsage();
	run();
	const { user, system } = process.cpuUsage(from);
	return (user + system) / 1000;
}

/** The middle of the values, or the mean of the two in the middle. */
export function medianOf(values: readonly number[]): number {
	const sorted = [...values].sort((a, b) => a - b);
	const middle = sorted.length / 2;
	const [low = Number.NaN, high = low] = [
		sorted[Math.ceil(middle) - 1],
		sorted[Math.floor(middle)]
	];
	return (low + high) / 2;
}
