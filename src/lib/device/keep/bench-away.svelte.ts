import type { NotDone } from '$lib/core/bench/not-done';
import type { SentPhoto } from '../photo';
import type { BenchDesk } from './bench-desk.svelte';
import { isKeptPage } from './kept-page';
import { serverAnswers } from './server-answers';

const FIRST_WAIT_MS = 5000;
const LONGEST_WAIT_MS = 120_000;

/**
 * The bench's way on when the server is out of reach. What it takes is loaded after the page, so that
 * the page itself stays light.
 */
export class BenchAway {
	#desk = $state.raw<BenchDesk | null>(null);
	#isSending = false;
	/** Aborted when the page is left: whoever signs out is not asked for news any more. */
	#left = new AbortController();
	#again: ReturnType<typeof setTimeout> | undefined;
	#waitMs = FIRST_WAIT_MS;
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
		const [{ BenchDesk }, { keepBenchPage }] = await Promise.all([
			import('./bench-desk.svelte'),
			import('./kept-server')
		]);
		this.#desk = await BenchDesk.open(jobId, viewer);
		if (isKeptPage()) return void (await this.#desk?.showOwn(at));
		await this.#desk?.keepUp(at, this.#left.signal);
		await keepBenchPage(jobId, this.#left.signal);
	}

	/**
	 * News by `fromServer`, or from this device while no answer comes. What this person did here comes
	 * first: till the server has it, its own news are behind the work.
	 */
	async refresh(fromServer: () => Promise<void>, at: string): Promise<void> {
		if (!(await serverAnswers())) return void (await this.#desk?.showOwn(at));
		if (this.#desk?.hasUnsent) await this.#desk.send();
		if (this.#desk?.hasUnsent) return void (await this.#desk.showOwn(at));
		if (this.#left.signal.aborted) return;
		await fromServer();
		this.#desk?.showServers();
		await this.#desk?.keepUp(at, this.#left.signal);
	}

	/** Sends what waits; then the page is the server's again. Tried anew, less and less often, till all is sent. */
	async lineIsBack(fromServer: () => Promise<void>, at: () => string): Promise<void> {
		if (this.#isSending || !this.#desk || (this.view === null && !this.#desk.hasUnsent)) return;
		this.#isSending = true;
		clearTimeout(this.#again);
		try {
			await this.refresh(fromServer, at());
		} finally {
			this.#isSending = false;
		}
		if (!this.#desk.hasUnsent || this.#left.signal.aborted)
			return void (this.#waitMs = FIRST_WAIT_MS);
		this.#again = setTimeout(() => void this.lineIsBack(fromServer, at), this.#waitMs);
		this.#waitMs = Math.min(2 * this.#waitMs, LONGEST_WAIT_MS);
	}

	/** The page is left. */
	end(): void {
		this.#left.abort();
		clearTimeout(this.#again);
	}

	/** Judges an act here and keeps it; whether it was taken. */
	async take(form: FormData, at: string): Promise<boolean> {
		if (!this.#desk) return false;
		this.answer = await this.#desk.take(form, at);
		await this.#desk.showOwn(at);
		return this.answer === null;
	}

	/** Sends the photos a form names that were kept here, and names them as the server does; false when it has not got them. */
	async sendPhotosOf(form: FormData): Promise<boolean> {
		if (!this.#desk || !form.get('photos')) return true;
		return this.#desk.sendPhotosOf(form);
	}

	async photo(file: File): Promise<SentPhoto> {
		if (this.#desk) return this.#desk.photo(file);
		const { sendPhoto } = await import('../photo');
		return sendPhoto(file);
	}
}
