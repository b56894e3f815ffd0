import { applyAction, enhance } from '$app/forms';
import { deviceNow } from '$lib/device/device-now';
import type { Drafts } from '$lib/device/drafts';
import type { BenchAway } from '$lib/device/keep/bench-away.svelte';

interface Terms {
	away: BenchAway;
	drafts: Drafts;
	/** Takes in what the server or this device says now. */
	refresh: () => Promise<void>;
	/** Shuts what lies over the step and leads to it. */
	toTheStep: () => Promise<void>;
}

/** Sends the bench's forms without leaving the page: to the server, or to this device while no answer comes. */
export class BenchActs {
	isSending = $state(false);
	/** The last form found nobody who took it. */
	noAnswer = $state(false);

	constructor(private readonly terms: Terms) {}

	/** Attached to each form of the bench. */
	readonly enhance = (element: HTMLFormElement): (() => void) => {
		const { away, drafts, refresh, toTheStep } = this.terms;
		const { destroy } = enhance(element, async ({ formData, cancel }) => {
			this.isSending = true;
			this.noAnswer = false;
			away.answer = null;
			if (away.view || !(await away.sendPhotosOf(formData))) {
				cancel();
				return void this.#takeHere(formData);
			}
			// Only now: sending the photos took its time.
			formData.set('sentAt', deviceNow());
			return async ({ result }) => {
				// Without a status no answer came at all.
				if (result.type === 'error' && result.status === undefined) return this.#takeHere(formData);
				this.isSending = false;
				if (result.type === 'error') return void (this.noAnswer = true);
				if (result.type === 'success') drafts.clear();
				await applyAction(result);
				if (result.type === 'redirect') return;
				await refresh();
				if (result.type === 'success') await toTheStep();
			};
		});
		return destroy;
	};

	async #takeHere(formData: FormData): Promise<void> {
		const { away, drafts, toTheStep } = this.terms;
		const isTaken = await away.take(formData);
		this.isSending = false;
		this.noAnswer = !isTaken && !away.answer;
		if (!isTaken) return;
		drafts.clear();
		await toTheStep();
	}
}
