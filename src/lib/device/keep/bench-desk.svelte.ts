import { benchView, type BenchView } from '$lib/core/bench/bench-view';
import { notDone, type NotDone } from '$lib/core/bench/not-done';
import { uuidV7 } from '$lib/core/log/uuid-v7';
import { loadWords } from '$lib/core/language/load-words';
import type { Locale } from '$lib/core/language/locale';
import type { Words } from '$lib/core/language/words';
import { clockTime } from '$lib/core/process/shop-time';
import { shrunkPhoto, postPhoto, type SentPhoto } from '../photo';
import { actAway, objectionTo, type KnownJob } from './act-away';
import { foldWaiting, type FoldedJob } from './fold-waiting';
import { keptActs } from './kept-acts';
import { openKept, type KeptDatabase } from './kept-database';
import type { KeptJob } from './kept-job';
import { KeptPhotos } from './kept-photos';
import { keptUpToDate } from './kept-server';
import { postActs } from './post-acts';
import { sendInTurn } from './send-in-turn';
import type { ActStore, WaitingAct } from './waiting-act';

interface Viewer {
	id: string;
	name: string;
	role: string;
	locale: Locale;
}

/** The bench of one mold while the server is out of reach: judged here, kept here, sent later. */
export class BenchDesk {
	/** What the bench shows meanwhile; null while the server is asked. */
	view = $state.raw<BenchView | null>(null);
	/** This mold's acts that the server has not taken. */
	waiting = $state.raw<WaitingAct[]>([]);
	#db: KeptDatabase;
	#acts: ActStore;
	#photos: KeptPhotos;
	#kept: KeptJob | null = null;

	private constructor(
		db: KeptDatabase,
		private readonly jobId: string,
		private readonly viewer: Viewer,
		readonly words: Words
	) {
		this.#db = db;
		this.#acts = keptActs(db);
		this.#photos = new KeptPhotos(db);
	}

	/** Null where the browser keeps nothing. */
	static async open(jobId: string, viewer: Viewer): Promise<BenchDesk | null> {
		const db = await openKept().catch(() => null);
		if (!db) return null;
		const desk = new BenchDesk(db, jobId, viewer, await loadWords(viewer.locale));
		await desk.#recall();
		return desk;
	}

	/** Keeps what the server has of this mold at this instant, for the time the line may drop. */
	async keepUp(at: string, signal?: AbortSignal): Promise<void> {
		this.#kept = await keptUpToDate(this.#db, {
			jobId: this.jobId,
			lang: this.words.lang,
			viewerId: this.viewer.id,
			at,
			signal
		});
	}

	/** Shows the mold as this device knows it; false when it keeps nothing of it. */
	async showOwn(at: string): Promise<boolean> {
		const known = await this.#known();
		if (!known) return false;
		const { zone, system, names, texts, training, plan } = known.kept;
		this.view = benchView(
			{ id: this.jobId, plan, ...known.folded },
			{
				viewer: this.viewer,
				names,
				at,
				zone,
				system,
				texts,
				training: training ?? null,
				words: this.words,
				actId: uuidV7(Date.parse(at), crypto.getRandomValues(new Uint8Array(10)))
			}
		);
		return true;
	}

	/** Back to what the server says. */
	showServers(): void {
		this.view = null;
	}

	/** Judges an act here and keeps it for the server; what is wrong with it, or null. */
	async take(form: FormData, at: string): Promise<NotDone | null> {
		const type = String(form.get('type') ?? '');
		const not = (refusal: string) => notDone({ type, label: type, refusal }, form);
		try {
			// Another tab of this device may have kept something since.
			await this.#recall();
			const known = await this.#known();
			if (!known) return not(this.words.errors.notKept);
			if (this.waiting.some(({ id }) => id === form.get('id'))) return null;
			const judged = actAway(form, known, { doer: this.viewer, at });
			if ('notDone' in judged) return judged.notDone;
			await this.#acts.put(judged.act);
			// What waits must outlive a device that runs short of room; asked where it matters first.
			void navigator.storage?.persist?.().catch(() => {});
			await this.#recall();
			return null;
		} catch {
			return not(this.words.errors.storageFull);
		}
	}

	/** Sends what waits, of all molds. */
	async send(): Promise<void> {
		await sendInTurn(this.#acts, (acts) => postActs(acts, this.#photos), this.viewer.id);
		await this.#recall();
	}

	/** Whether this person has acts on this mold that only wait to be sent. */
	get hasUnsent(): boolean {
		return this.waiting.some(
			({ refusal, event }) => refusal === null && event.by === this.viewer.id
		);
	}

	/** Why an act that was not taken would not be taken now either; null when it would. */
	whyNotNow(act: WaitingAct): string | null {
		const folded = this.#kept && this.#folded(this.#kept);
		if (!this.#kept || !folded) return null;
		const { lastAt } = folded.state;
		if (Date.parse(act.event.at) < Date.parse(lastAt)) {
			return this.words.pieces.kept.enteredLater(clockTime(lastAt, this.#kept.zone));
		}
		return objectionTo(act, { kept: this.#kept, folded, words: this.words });
	}

	/** Sends an act again as it was done, behind what was entered before it meanwhile. */
	async resend(act: WaitingAct, at: string): Promise<void> {
		await this.keepUp(at);
		const known = await this.#known();
		if (!known) return;
		await this.#acts.put({ ...act, seq: known.folded.headSeq + 1, refusal: null });
		await this.send();
	}

	async discard(act: WaitingAct): Promise<void> {
		await this.#acts.drop(act.id);
		await this.#recall();
	}

	/** Sends a photo, or keeps it here while no answer comes. */
	async photo(file: File): Promise<SentPhoto> {
		const body = await shrunkPhoto(file);
		if ('ok' in body) return body;
		const sent = await postPhoto(body);
		if (sent.ok || sent.stoppedBy !== 'no answer') return sent;
		try {
			return { ok: true, hash: await this.#photos.keep(body) };
		} catch {
			return { ok: false, reason: 'No answer from the server, and this device cannot keep it.' };
		}
	}

	/** Names in a form the photos kept here as the server has them, after sending them; false when it has not. */
	async sendPhotosOf(form: FormData): Promise<boolean> {
		const hashes = form.getAll('photos').map(String).filter(Boolean);
		const sent = await this.#photos.sendAll(hashes).catch(() => null);
		if (!sent) return false;
		form.delete('photos');
		for (const hash of sent) form.append('photos', hash);
		return true;
	}

	async #known(): Promise<KnownJob | null> {
		this.#kept ??= (await this.#db.get('jobs', this.jobId)) ?? null;
		const folded = this.#kept && this.#folded(this.#kept);
		return this.#kept && folded ? { kept: this.#kept, folded, words: this.words } : null;
	}

	#folded(kept: KeptJob): FoldedJob | null {
		try {
			return foldWaiting(kept, this.waiting);
		} catch {
			// Kept by another version of the process: only the server can go on with it.
			return null;
		}
	}

	async #recall(): Promise<void> {
		const all = await this.#acts.all();
		this.waiting = all.filter(({ jobId }) => jobId === this.jobId);
	}
}
