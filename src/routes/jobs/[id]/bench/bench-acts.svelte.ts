import { applyAction, enhance } from '$app/forms';
import type { Drafts } from '$lib/device/drafts';
import type { BenchAway } from '$lib/device/keep/bench-away.svelte';

interface Terms {
	away: BenchAway;
	drafts: Drafts;
	/** The present, as an ISO instant. */
	now: () => string;
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
			// What this device's clock says, so that one that is wrong shows in the record.
			// eslint-disable-next-line svelte/prefer-svelte-reactivity -- an instant that is read once
			formData.set('sentAt', new Date().toISOString());
			this.isSending = true;
			this.noAnswer = false;
			away.answer = null;
			if (away.view || !(await away.sendPhotosOf(formData))) {
				cancel();
				return void this.#takeHere(formData);
			}
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
		const { away, drafts, now, toTheStep } = this.terms;
		const isTaken = await away.take(formData, now());
		this.isSending = false;
		this.noAnswer = !isTaken && !away.answer;
		if (!isTaken) return;
		drafts.clear();
		await toTheStep();
	}
}
