import { setTimeout as wait } from 'node:timers/promises';

/** A screen that follows one job over server-sent events and opens its line anew when it drops. */
export class Screen {
	readonly jobId: string;
	/** The highest number heard. */
	seq = 0;
	drops = 0;
	/** When each number was first known here, by `performance.now()`; what was skipped is not in it. */
	readonly heardMs = new Map<number, number>();
	readonly #over = new AbortController();

	constructor(jobId: string) {
		this.jobId = jobId;
	}

	async follow(url: string, cookie: string): Promise<void> {
		const { signal } = this.#over;
		while (!signal.aborted) {
			try {
				const headers = { cookie };
				const response = await fetch(`${url}/api/jobs/${this.jobId}/live`, { headers, signal });
				if (!response.body) throw new Error('no stream');
				for await (const text of response.body.pipeThrough(new TextDecoderStream())) {
					for (const [, seq] of text.matchAll(/"seq":(\d+)/g)) this.#hear(Number(seq));
				}
			} catch {
				// The line is opened anew below.
			}
			if (signal.aborted) return;
			this.drops += 1;
			await wait(200, undefined, { signal }).catch(() => {});
		}
	}

	#hear(seq: number): void {
		if (seq <= this.seq) return;
		this.seq = seq;
		this.heardMs.set(seq, performance.now());
	}

	end(): void {
		this.#over.abort();
	}
}
