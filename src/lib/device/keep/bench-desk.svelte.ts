import { benchView, type BenchView } from '$lib/core/bench/bench-view';
import { notDone, type NotDone } from '$lib/core/bench/not-done';
import { readAct } from '$lib/core/bench/read-act';
import { refusalInWords } from '$lib/core/bench/refusal-in-words';
import { uuidV7 } from '$lib/core/log/uuid-v7';
import type { ProcessEvent } from '$lib/core/process/events';
import { secondsBetween } from '$lib/core/process/instant';
import { advance, contextOf } from '$lib/core/process/job';
import { clockTime } from '$lib/core/process/shop-time';
import { TROUBLES } from '$lib/core/process/troubles';
import { shrunkPhoto, postPhoto, type SentPhoto } from '../photo';
import { foldWaiting, type FoldedJob } from './fold-waiting';
import { keptActs } from './kept-acts';
import { openKept, type KeptDatabase } from './kept-database';
import { LONGEST_AWAY_S, titleIn, type KeptJob } from './kept-job';
import { KeptPhotos } from './kept-photos';
import { keptUpToDate } from './kept-server';
import { postActs } from './post-acts';
import { sendInTurn } from './send-in-turn';
import type { ActStore, WaitingAct } from './waiting-act';

interface Viewer {
	id: string;
	name: string;
	role: string;
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
		private readonly viewer: Viewer
	) {
		this.#db = db;
		this.#acts = keptActs(db);
		this.#photos = new KeptPhotos(db);
	}

	/** Null where the browser keeps nothing. */
	static async open(jobId: string, viewer: Viewer): Promise<BenchDesk | null> {
		const db = await openKept().catch(() => null);
		if (!db) return null;
		const desk = new BenchDesk(db, jobId, viewer);
		await desk.#recall();
		return desk;
	}

	/** Keeps what the server has of this mold at this instant, for the time the line may drop. */
	async keepUp(at: string, signal?: AbortSignal): Promise<void> {
		this.#kept = await keptUpToDate(this.#db, { jobId: this.jobId, at, signal });
	}

	/** Shows the mold as this device knows it; false when it keeps nothing of it. */
	async showOwn(at: string): Promise<boolean> {
		const kept = await this.#own();
		const folded = kept && this.#folded(kept);
		if (!kept || !folded) return false;
		const { zone, system, names, texts, training, plan } = kept;
		this.view = benchView(
			{ id: this.jobId, plan, ...folded },
			{
				viewer: this.viewer,
				names,
				at,
				zone,
				system,
				texts,
				training: training ?? null,
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
		const id = String(form.get('id') ?? '');
		const kept = await this.#own();
		const folded = kept && this.#folded(kept);
		if (!kept || !folded) {
			const refusal = 'No answer from the server, and this mold is not kept on this device.';
			return notDone({ type, label: type, refusal }, form);
		}
		if (this.waiting.some((act) => act.id === id)) return null;
		if (secondsBetween(kept.heardAt, at) > LONGEST_AWAY_S) {
			const refusal =
				'This device has not heard from the server for half a day. Write it on paper, and sign in again when the line is back';
			return notDone({ type, label: type, refusal }, form);
		}
		const { state, headSeq } = folded;
		const read = readAct(form, { state, by: this.viewer.id, at, texts: kept.texts });
		if (!read.ok) return read.notDone;
		// Never before the last act, however the clocks of two devices differ.
		const doneAt = at < state.lastAt ? state.lastAt : at;
		const event = { ...read.event, at: doneAt, by: this.viewer.id } as ProcessEvent;
		const { label } = read;
		const refusal =
			(await this.#asksForServer(event, contextOf(state).trouble?.id ?? null)) ??
			this.#objection(folded, { id, event }, kept);
		if (refusal !== null) return notDone({ type, label, refusal }, form);
		await this.#acts.put({
			id,
			jobId: this.jobId,
			title: titleIn(kept.log),
			seq: headSeq + 1,
			event,
			byName: this.viewer.name,
			label,
			refusal: null
		});
		await this.#recall();
		return null;
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
		if (act.event.at < lastAt) {
			return `something was entered later, at ${clockTime(lastAt, this.#kept.zone)}, and no entry goes in before another. If it still holds, do it anew at the bench`;
		}
		return this.#objection(folded, act, this.#kept);
	}

	/** Sends an act again as it was done, behind what was entered before it meanwhile. */
	async resend(act: WaitingAct, at: string): Promise<void> {
		await this.keepUp(at);
		const folded = this.#kept && this.#folded(this.#kept);
		if (!folded) return;
		await this.#acts.put({ ...act, seq: folded.headSeq + 1, refusal: null });
		await this.send();
	}

	async discard(act: WaitingAct): Promise<void> {
		await this.#acts.drop(act.id);
		await this.#photos.drop(act.event);
		await this.#recall();
	}

	/** Sends a photo, or keeps it here while no answer comes. */
	async photo(file: File): Promise<SentPhoto> {
		const body = await shrunkPhoto(file);
		if ('ok' in body) return body;
		const sent = await postPhoto(body);
		if (sent.ok || sent.stoppedBy !== 'no answer') return sent;
		return { ok: true, hash: await this.#photos.keep(body) };
	}

	async #own(): Promise<KeptJob | null> {
		this.#kept ??= (await this.#db.get('jobs', this.jobId)) ?? null;
		return this.#kept;
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

	#objection(
		{ state, headSeq }: FoldedJob,
		act: Pick<WaitingAct, 'id' | 'event'>,
		{ zone, system, texts }: KeptJob
	): string | null {
		const step = advance(state, { id: act.id, seq: headSeq + 1, event: act.event });
		return step.ok
			? null
			: refusalInWords(step.reason, { zone, system, at: act.event.at, briefings: texts.briefings });
	}

	/** What only the server can judge, since it knows who may sign. */
	async #asksForServer(event: ProcessEvent, trouble: keyof typeof TROUBLES | null) {
		return event.type === 'trouble.mended' && trouble !== null && TROUBLES[trouble].needsAnother
			? 'This needs the server: it knows who may say that work goes on. Wait for the line'
			: null;
	}
}
