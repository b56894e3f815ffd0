const RETRY_MS = 3000;

/**
 * Follows one job over server-sent events. Each word carries the number the log has reached; on
 * connecting again the server says it at once, so nothing that happened meanwhile is missed.
 */
export class LiveLine {
	state = $state<'opening' | 'live' | 'dropped'>('opening');

	/** Calls `onseq` with every number heard, until the returned function is called. */
	follow(address: string, onseq: (seq: number) => void): () => void {
		let source: EventSource | undefined;
		let again: ReturnType<typeof setTimeout> | undefined;
		let isOver = false;

		const open = () => {
			if (isOver) return;
			source?.close();
			source = new EventSource(address);
			source.onopen = () => (this.state = 'live');
			source.onmessage = ({ data }) => {
				this.state = 'live';
				const seq = seqOf(String(data));
				if (seq !== null) onseq(seq);
			};
			source.onerror = () => {
				this.state = 'dropped';
				// A browser gives up for good after an answer that is no stream, so the line is opened anew.
				source?.close();
				clearTimeout(again);
				again = setTimeout(open, RETRY_MS);
			};
		};
		const wake = () => {
			if (document.visibilityState === 'visible' && this.state === 'dropped') open();
		};
		open();
		window.addEventListener('online', open);
		document.addEventListener('visibilitychange', wake);
		return () => {
			isOver = true;
			clearTimeout(again);
			source?.close();
			window.removeEventListener('online', open);
			document.removeEventListener('visibilitychange', wake);
		};
	}
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
