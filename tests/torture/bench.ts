import { newActId } from '../../src/lib/server/act-id';

const reading = { type: 'room.read', temperatureC: 22, humidityPct: 48, extractionOn: true };

/** `gone`: nobody answered, so it is not known whether the act was written. */
export type Posted = 'written' | 'second' | 'gone';

/** One bench at one job: each act goes out under one id until it is answered, as a device does it. */
export class Bench {
	readonly jobId: string;
	readonly acknowledged: string[] = [];
	/** How often somebody else was faster. */
	conflicts = 0;
	#seq = 2;
	#id = newActId();

	constructor(jobId: string) {
		this.jobId = jobId;
	}

	/** Sends the act at hand once. @throws Error for an answer that a bench must not get */
	async post(url: string, cookie: string): Promise<Posted> {
		let response: Response;
		let answer: { stored?: { seq: number; id: string }; code?: string; headSeq?: number };
		try {
			response = await fetch(`${url}/api/jobs/${this.jobId}/events`, {
				method: 'POST',
				headers: { 'content-type': 'application/json', cookie },
				body: JSON.stringify({ id: this.#id, seq: this.#seq, event: reading })
			});
			answer = (await response.json()) as typeof answer;
		} catch {
			return 'gone';
		}
		if (response.ok && answer.stored?.id === this.#id) {
			this.acknowledged.push(this.#id);
			this.#seq = answer.stored.seq + 1;
			this.#id = newActId();
			return 'written';
		}
		if (answer.code === 'conflict' && answer.headSeq !== undefined) {
			// What was typed is kept, and sent again at the place that is free.
			this.#seq = answer.headSeq + 1;
			this.conflicts += 1;
			return 'second';
		}
		// A store that is away for a moment is no answer either.
		if (response.status === 503) return 'gone';
		throw new Error(`a bench was answered ${response.status}: ${JSON.stringify(answer)}`);
	}
}
