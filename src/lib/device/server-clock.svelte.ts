import { addSeconds } from '$lib/core/process/instant';
import { isKeptPage } from './keep/kept-page';

const EPOCH = '1970-01-01T00:00:00Z';
const OFFSET_KEY = 'gw-clock-offset-ms';

/** How far the server was ahead of this device when they last spoke. */
function keptOffsetMs(): number | null {
	try {
		const text = localStorage.getItem(OFFSET_KEY);
		return text === null || !Number.isFinite(Number(text)) ? null : Number(text);
	} catch {
		return null;
	}
}

function keepOffset(offsetMs: number): void {
	try {
		localStorage.setItem(OFFSET_KEY, String(offsetMs));
	} catch {
		// Without storage a page opened without the server goes by the device's own clock.
	}
}

/** Electronic paper takes most of a second to draw and leaves a shadow each time, so there the clock moves in steps. */
function tickMs(): number {
	return document.documentElement.dataset.theme === 'e-ink' ? 5000 : 1000;
}

/**
 * The server's clock, kept going on the device: the page brings the server's instant, the device only
 * counts on from it, so that a wrong clock in a tablet moves no window.
 */
export class ServerClock {
	#offsetMs = $state(0);
	#ms = $state(0);
	/** Whether the server was ever heard by this device: without, the two clocks cannot be held together. */
	#isHeard = $state(true);

	/** The instant of a page that was kept on this device: long past. */
	#stale: string | null = null;

	constructor(serverNow: string) {
		if (isKeptPage()) this.#stale = serverNow;
		const kept = keptOffsetMs();
		this.#isHeard = !isKeptPage() || kept !== null;
		this.#offsetMs = isKeptPage() ? (kept ?? 0) : Date.parse(serverNow) - Date.now();
		this.#ms = Date.now() + this.#offsetMs;
	}

	/** The present as an ISO instant, to the second. */
	get now(): string {
		return addSeconds(EPOCH, this.#ms / 1000);
	}

	/** By how much this device's clock runs ahead of the server's, s; null before the server was heard. */
	get skewS(): number | null {
		return this.#isHeard ? -this.#offsetMs / 1000 : null;
	}

	/** Takes the server's instant from an answer that has just come in. */
	set(serverNow: string): void {
		if (serverNow === this.#stale) return;
		this.#offsetMs = Date.parse(serverNow) - Date.now();
		this.#isHeard = true;
		keepOffset(this.#offsetMs);
		this.#tick();
	}

	/** Lets the clock go, until the returned function is called. */
	run(): () => void {
		this.#tick();
		const timer = setInterval(() => this.#tick(), tickMs());
		// A tablet that slept has missed its ticks.
		const wake = () => this.#tick();
		document.addEventListener('visibilitychange', wake);
		return () => {
			clearInterval(timer);
			document.removeEventListener('visibilitychange', wake);
		};
	}

	#tick(): void {
		this.#ms = Math.floor((Date.now() + this.#offsetMs) / 1000) * 1000;
	}
}
