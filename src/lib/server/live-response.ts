import { onAppended, onClosing, onGap, type Appended } from './live';

/** A browser that hears nothing for longer takes its line for dropped (`LiveLine`). */
const BEAT_MS = 10_000;
/** How soon a browser whose line dropped tries again. */
const RETRY_MS = 2000;

/** Many appends in a moment are told as one: fifty screens of a busy shop would keep the server from its work. */
const PAUSE_MS = 100;

/**
 * A stream of server-sent events for the appends that `pick` lets through, the first at once and then of each
 * job the last one in each tenth of a second, with what `now` finds at once and whenever something may have
 * been missed, so that whoever was away catches up. Source: WHATWG HTML, server-sent events.
 *
 * @param onend - called once when the stream is over, whoever ended it
 */
export function liveResponse(
	pick: (appended: Appended) => object | null,
	now: () => Promise<object>,
	onend: () => void = () => {}
): Response {
	let isOver = false;
	let stop = () => {};
	const stream = new ReadableStream<Uint8Array>({
		async start(controller) {
			const encoder = new TextEncoder();
			const send = (text: string) => controller.enqueue(encoder.encode(text));
			const message = (...all: object[]) =>
				send(all.map((data) => `data: ${JSON.stringify(data)}\n\n`).join(''));
			const unsaid = new Map<string, object>();
			let pause: ReturnType<typeof setTimeout> | undefined;
			const tell = () => {
				pause = undefined;
				if (unsaid.size === 0) return;
				message(...unsaid.values());
				unsaid.clear();
				pause = setTimeout(tell, PAUSE_MS);
			};

			send(`retry: ${RETRY_MS}\n\n`);
			const beat = setInterval(() => send('event: beat\ndata: \n\n'), BEAT_MS);
			const offs = [
				onend,
				() => clearInterval(beat),
				() => clearTimeout(pause),
				onAppended((appended) => {
					const data = pick(appended);
					if (!data) return;
					unsaid.set(appended.jobId, data);
					if (pause === undefined) tell();
				}),
				onGap(() => {
					// A stream that cannot say where things stand ends, and its screen opens another.
					now()
						.then((data) => (isOver ? undefined : message(data)))
						.catch(close);
				}),
				onClosing(() => close())
			];
			const close = () => {
				if (isOver) return;
				stop();
				controller.close();
			};
			stop = () => {
				isOver = true;
				for (const off of offs.splice(0)) off();
			};
			try {
				// Read after listening has begun, so that nothing falls between.
				message(await now());
			} catch (error) {
				// A stream that fails is not canceled: what was begun for it is ended here.
				stop();
				throw error;
			}
		},
		cancel: () => stop()
	});
	return new Response(stream, {
		headers: {
			'content-type': 'text/event-stream',
			'cache-control': 'no-store',
			// A proxy that collects the stream would make the screens late.
			'x-accel-buffering': 'no'
		}
	});
}
