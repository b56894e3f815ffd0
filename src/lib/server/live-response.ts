import { onAppended, onClosing, type Appended } from './live';

const BEAT_MS = 15_000;
/** How soon a browser whose line dropped tries again. */
const RETRY_MS = 2000;

/**
 * A stream of server-sent events, one for each append that `pick` lets through, with what
 * `first` finds at once, so that whoever was away catches up. Source: WHATWG HTML, server-sent events.
 */
export function liveResponse(
	pick: (appended: Appended) => object | null,
	first?: () => Promise<object>
): Response {
	let stop = () => {};
	const stream = new ReadableStream<Uint8Array>({
		async start(controller) {
			const encoder = new TextEncoder();
			const send = (text: string) => controller.enqueue(encoder.encode(text));
			const message = (data: object) => send(`data: ${JSON.stringify(data)}\n\n`);

			send(`retry: ${RETRY_MS}\n\n`);
			const beat = setInterval(() => send(': still here\n\n'), BEAT_MS);
			const offAppended = onAppended((appended) => {
				const data = pick(appended);
				if (data) message(data);
			});
			const offClosing = onClosing(() => {
				stop();
				controller.close();
			});
			stop = () => {
				clearInterval(beat);
				offAppended();
				offClosing();
			};
			try {
				// Read after listening has begun, so that nothing falls between.
				if (first) message(await first());
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
