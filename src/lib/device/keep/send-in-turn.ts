import { sendWaiting, type Post, type Sent } from './send-waiting';
import type { ActStore } from './waiting-act';

/** Sends what waits, one tab of this device at a time where the browser can hold the others back. */
export function sendInTurn(store: ActStore, post: Post, personId: string): Promise<Sent> {
	const send = () => sendWaiting(store, post, personId);
	// A shop's server without a certificate is no secure context, and has no locks: sent twice is one act.
	return 'locks' in navigator ? navigator.locks.request('glovewright send', send) : send();
}
