import { addSeconds } from '$lib/core/process/instant';

const EPOCH = '1970-01-01T00:00:00Z';

/**
 * The server's clock, kept going on the device: the page brings the server's instant, the device only
 * counts on from it, so that a wrong clock in a tablet moves no window.
 */
export class ServerClock {
	#offsetMs = 0;
	#ms = $state(0);

	constructor(serverNow: string) {
		this.#ms = Date.parse(serverNow);
		this.#offsetMs = this.#ms - Date.now();
	}

	/** The present as an ISO instant, to the second. */
	get now(): string {
		return addSeconds(EPOCH, this.#ms / 1000);
	}

	/** Takes the server's instant from an answer that has just come in. */
	set(serverNow: string): void {
		this.#offsetMs = Date.parse(serverNow) - Date.now();
		this.#tick();
	}

	/** Lets the clock go, until the returned function is called. */
	run(): () => void {
		this.#tick();
		const timer = setInterval(() => this.#tick(), 1000);
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
