import type { BenchView } from '$lib/core/bench/bench-view';
import type { NotDone } from '$lib/core/bench/not-done';
import type { SentPhoto } from '../photo';
import { atRest } from '../at-rest';
import type { BenchDesk } from './bench-desk.svelte';
import { isKeptPage } from './kept-page';
import { serverAnswers } from './server-answers';

interface Terms {
	/** The mold, and who stands at its bench. */
	jobId: string;
	viewer: BenchView['viewer'];
	/** Reads the page anew from the server. */
	fromServer: () => Promise<void>;
	/** The present, as an ISO instant. */
	now: () => string;
}

const FIRST_WAIT_MS = 5000;
const LONGEST_WAIT_MS = 120_000;

/**
 * The bench's way on when the server is out of reach. What it takes is loaded after the page, so that
 * the page itself stays light.
 */
export class BenchAway {
	#desk = $state.raw<BenchDesk | null>(null);
	#opening: Promise<BenchDesk | null> | null = null;
	#isSending = false;
	/** Aborted when the page is left: whoever signs out is not asked for news any more. */
	#left = new AbortController();
	#again: ReturnType<typeof setTimeout> | undefined;
	#waitMs = FIRST_WAIT_MS;
	/** What was wrong with the last act judged here. */
	answer = $state.raw<NotDone | null>(null);

	constructor(private readonly terms: Terms) {}

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

	/**
	 * Looks what is kept here, and keeps what the server has: once the page has come to rest, and at once where acts wait
	 * here. What judges without the server is as much again as the whole page, and would hold up the first touch.
	 */
	async open(): Promise<void> {
		const { jobId, now } = this.terms;
		const { signal } = this.#left;
		if (!isKeptPage() && !(await this.#hasWaiting())) await atRest(signal);
		if (signal.aborted) return;
		const desk = await this.#opened();
		if (isKeptPage()) return void (await desk?.showOwn(now()));
		await desk?.keepUp(now(), signal);
		const { keepBenchPage } = await import('./kept-server');
		await keepBenchPage(jobId, signal);
	}

	/** Acts that wait here go before whatever is done next. */
	async #hasWaiting(): Promise<boolean> {
		const { hasWaiting } = await import('./has-waiting').catch(() => ({ hasWaiting: null }));
		return (await hasWaiting?.(this.terms.jobId)) ?? false;
	}

	/** The way on without the server, loaded when it is first asked for; null where there is none. */
	async #opened(): Promise<BenchDesk | null> {
		const { jobId, viewer } = this.terms;
		this.#opening ??= import('./bench-desk.svelte')
			.then(({ BenchDesk }) => BenchDesk.open(jobId, viewer))
			.catch(() => null);
		this.#desk = await this.#opening;
		// Its files may have been out of reach: whoever asks next tries again.
		if (!this.#desk) this.#opening = null;
		return this.#desk;
	}

	/**
	 * News from the server, or from this device while no answer comes. What this person did here comes
	 * first: till the server has it, its own news are behind the work.
	 */
	async refresh(): Promise<void> {
		const { fromServer, now } = this.terms;
		if (!(await serverAnswers())) return this.#showOwn();
		if (this.#desk?.hasUnsent) await this.#desk.send();
		if (this.#desk?.hasUnsent) return this.#showOwn();
		if (this.#left.signal.aborted) return;
		await fromServer();
		this.#desk?.showServers();
		this.#waitMs = FIRST_WAIT_MS;
		await this.#desk?.keepUp(now(), this.#left.signal);
	}

	/** Sends what waits; then the page is the server's again. */
	async lineIsBack(): Promise<void> {
		if (this.#isSending || !this.#desk || (this.view === null && !this.#desk.hasUnsent)) return;
		this.#isSending = true;
		try {
			await this.refresh();
		} finally {
			this.#isSending = false;
		}
	}

	async #showOwn(): Promise<void> {
		const desk = await this.#opened();
		await desk?.showOwn(this.terms.now());
		this.#tryLater();
	}

	/** The server is asked again, less and less often: the line that brings its news may have been up all the time. */
	#tryLater(): void {
		clearTimeout(this.#again);
		if (this.#left.signal.aborted) return;
		this.#again = setTimeout(() => void this.lineIsBack(), this.#waitMs);
		this.#waitMs = Math.min(2 * this.#waitMs, LONGEST_WAIT_MS);
	}

	/** The page is left. */
	end(): void {
		this.#left.abort();
		clearTimeout(this.#again);
	}

	/** Judges an act here and keeps it; whether it was taken. */
	async take(form: FormData): Promise<boolean> {
		const desk = await this.#opened();
		if (!desk) return false;
		this.answer = await desk.take(form, this.terms.now());
		await this.#showOwn();
		return this.answer === null;
	}

	/** Sends the photos a form names that were kept here, and names them as the server does; false when it has not got them. */
	async sendPhotosOf(form: FormData): Promise<boolean> {
		if (!this.#desk || !form.get('photos')) return true;
		return this.#desk.sendPhotosOf(form);
	}

	async photo(file: File): Promise<SentPhoto> {
		const desk = await this.#opened();
		if (desk) return desk.photo(file);
		const { sendPhoto } = await import('../photo');
		return sendPhoto(file);
	}
}
