/**
 * Live streams open at once. Each holds a connection and a place in memory for as long as it lasts, and the
 * limit on requests does not see it. Common practice, no source.
 */
export const MOST_STREAMS = {
	/** One a screen, and a person has few screens. */
	session: 20,
	/** A shop's benches may share one address. */
	address: 400
};

/** Counts what is open by key, and says when one more is too many. */
export class StreamSlots {
	readonly #open = new Map<string, number>();

	/** Takes a place under each key. @returns what gives them back, once however often it is called; null when one is full */
	take(most: Readonly<Record<string, number>>): (() => void) | null {
		const keys = Object.entries(most);
		if (keys.some(([key, limit]) => this.countOf(key) >= limit)) return null;
		for (const [key] of keys) this.#open.set(key, this.countOf(key) + 1);
		let isTaken = true;
		return () => {
			if (!isTaken) return;
			isTaken = false;
			for (const [key] of keys) this.#leave(key);
		};
	}

	countOf(key: string): number {
		return this.#open.get(key) ?? 0;
	}

	#leave(key: string): void {
		const left = this.countOf(key) - 1;
		if (left > 0) this.#open.set(key, left);
		else this.#open.delete(key);
	}
}
