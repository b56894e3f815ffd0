/** Keeps the screen lit while the page is in view, where the device can; ends with the returned function. */
export function keepScreenLit(): () => void {
	let lock: WakeLockSentinel | undefined;
	let isOver = false;

	const ask = async () => {
		if (isOver || document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
		try {
			lock = await navigator.wakeLock.request('screen');
			if (isOver) await lock.release();
		} catch {
			// Refused when the battery is low: the screen goes dark as it always does.
		}
	};
	const wake = () => void ask();
	wake();
	document.addEventListener('visibilitychange', wake);
	return () => {
		isOver = true;
		document.removeEventListener('visibilitychange', wake);
		void lock?.release();
	};
}
