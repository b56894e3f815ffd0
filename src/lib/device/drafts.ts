/**
 * What was typed and not yet sent, by step and act, kept on this device for as long as its page is
 * open: a reload loses nothing, and the next step starts empty.
 */
export class Drafts {
	#prefix: string;

	constructor(jobId: string) {
		this.#prefix = `gw-draft ${jobId} `;
	}

	read(stepKey: string, type: string): Record<string, string> | null {
		try {
			const text = sessionStorage.getItem(this.#key(stepKey, type));
			const value: unknown = text === null ? null : JSON.parse(text);
			if (typeof value !== 'object' || value === null) return null;
			return Object.fromEntries(
				Object.entries(value).filter((entry): entry is [string, string] => {
					return typeof entry[1] === 'string';
				})
			);
		} catch {
			return null;
		}
	}

	keep(stepKey: string, type: string, values: Record<string, string>): void {
		try {
			sessionStorage.setItem(this.#key(stepKey, type), JSON.stringify(values));
		} catch {
			// Without storage a reload loses what was typed; nothing else.
		}
	}

	/** Forgets all drafts of this job: an act was written. */
	clear(): void {
		try {
			const keys = Object.keys(sessionStorage).filter((key) => key.startsWith(this.#prefix));
			for (const key of keys) sessionStorage.removeItem(key);
		} catch {
			// Nothing was kept.
		}
	}

	#key(stepKey: string, type: string): string {
		return `${this.#prefix}${stepKey} ${type}`;
	}
}
