const FIRST_WAIT_MS = 500;
const LONGEST_WAIT_MS = 30_000;
/** The server's heart beats every 10 s; after two beats and a half that were not heard the line is down. */
const SILENCE_MS = 25_000;

/**
 * Follows one job, or the board, over server-sent events. Each word carries the number the log has reached;
 * on connecting the server says it at once, so nothing that happened meanwhile is missed. A line that
 * drops is opened anew, at first soon, then less often.
 */
export class LiveLine {
	state = $state<'opening' | 'live' | 'dropped'>('opening');

	/** Calls `onseq` with every number heard, until the returned function is called. */
	follow(address: string, onseq: (seq: number) => void): () => void {
		let source: EventSource | undefined;
		let again: ReturnType<typeof setTimeout> | undefined;
		let silence: ReturnType<typeof setTimeout> | undefined;
		let tries = 0;

		const open = () => {
			close();
			source = new EventSource(address);
			source.onmessage = ({ data }) => {
				heard();
				const seq = seqOf(String(data));
				if (seq !== null) onseq(seq);
			};
			source.addEventListener('beat', heard);
			source.onopen = heard;
			source.onerror = drop;
			silence = setTimeout(drop, SILENCE_MS);
		};
		const heard = () => {
			this.state = 'live';
			tries = 0;
			clearTimeout(silence);
			silence = setTimeout(drop, SILENCE_MS);
		};
		const drop = () => {
			this.state = 'dropped';
			// A browser gives up for good after an answer that is no stream, so the line is opened anew.
			close();
			again = setTimeout(open, waitMs(tries));
			tries += 1;
		};
		const close = () => {
			clearTimeout(again);
			clearTimeout(silence);
			source?.close();
		};
		const wake = () => {
			if (document.visibilityState === 'visible' && this.state === 'dropped') open();
		};
		open();
		window.addEventListener('online', open);
		window.addEventListener('offline', drop);
		document.addEventListener('visibilitychange', wake);
		return () => {
			close();
			window.removeEventListener('online', open);
			window.removeEventListener('offline', drop);
			document.removeEventListener('visibilitychange', wake);
		};
	}
}

/** Twice as long each time, and not all screens of a shop at the same moment. */
function waitMs(tries: number): number {
	const wholeMs = Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** tries);
	return wholeMs * (0.5 + Math.random() / 2);
}

function seqOf(data: string): number | null {
	try {
		const word: unknown = JSON.parse(data);
		if (typeof word !== 'object' || word === null || !('seq' in word)) return null;
		return typeof word.seq === 'number' ? word.seq : null;
	} catch {
		return null;
	}
}
