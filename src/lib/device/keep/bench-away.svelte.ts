import type { NotDone } from '$lib/core/bench/not-done';
import { sendPhoto, type SentPhoto } from '../photo';
import type { BenchDesk } from './bench-desk.svelte';
import { isKeptPage } from './kept-page';
import { serverAnswers } from './kept-server';

/**
 * The bench's way on when the server is out of reach. What it takes is loaded after the page, so that
 * the page itself stays light.
 */
export class BenchAway {
	#desk = $state.raw<BenchDesk | null>(null);
	/** What was wrong with the last act judged here. */
	answer = $state.raw<NotDone | null>(null);

	/** The bench as this device knows it; null while the server is asked. */
	get view() {
		return this.#desk?.view ?? null;
	}

	/** This mold's acts that the server has not taken. */
	get waiting() {
		return this.#desk?.waiting ?? [];
	}

	get desk(): BenchDesk | null {
		return this.#desk;
	}

	/** Looks what is kept here, and keeps what the server has. */
	async open(jobId: string, viewer: { id: string; name: string; role: string }, at: string) {
		const { BenchDesk } = await import('./bench-desk.svelte');
		this.#desk = await BenchDesk.open(jobId, viewer);
		if (isKeptPage()) return void (await this.#desk?.showOwn(at));
		if (this.waiting.length > 0) await this.#desk?.send();
		await this.#desk?.keepUp();
	}

	/** News by `fromServer`, or from this device when no answer comes. */
	async refresh(fromServer: () => Promise<void>, at: string): Promise<void> {
		if (await serverAnswers()) {
			await fromServer();
			this.#desk?.showServers();
			void this.#desk?.keepUp();
		} else await this.#desk?.showOwn(at);
	}

	/** Sends what waits; then the page is the server's again. */
	async lineIsBack(fromServer: () => Promise<void>, at: string): Promise<void> {
		if (!this.#desk || (this.view === null && this.waiting.length === 0)) return;
		if (await this.#desk.send()) await this.refresh(fromServer, at);
	}

	/** Judges an act here and keeps it; whether it was taken. */
	async take(form: FormData, at: string): Promise<boolean> {
		if (!this.#desk) return false;
		this.answer = await this.#desk.take(form, at);
		await this.#desk.showOwn(at);
		return this.answer === null;
	}

	photo(file: File): Promise<SentPhoto> {
		return this.#desk?.photo(file) ?? sendPhoto(file);
	}
}
