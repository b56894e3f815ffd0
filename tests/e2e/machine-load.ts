/** A fixed piece of work, some tens of milliseconds long. */
function piece(): number {
	const from = performance.now();
	let sum = 0;
	for (let i = 0; i < 40_000_000; i++) sum = (sum + i) | 0;
	return performance.now() - from + (sum === 0.5 ? 1 : 0);
}

/** A choice. */
const MOST = 4;

/**
 * How many times longer the same work takes on this machine than when nobody else wants its cores, over the time from
 * now until it is asked: 1 on a quiet one. What a page does takes as much longer there, through no fault of its own.
 */
export function machineLoad(): () => number {
	const tookMs = [piece(), piece()];
	const beat = setInterval(() => tookMs.push(piece()), 1000);
	return () => {
		clearInterval(beat);
		const mean = tookMs.reduce((sum, ms) => sum + ms, 0) / tookMs.length;
		// The page itself takes cores too: its own work must not excuse it without end.
		return Math.min(MOST, mean / Math.min(...tookMs));
	};
}
