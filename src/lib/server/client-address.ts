import type { RequestEvent } from '@sveltejs/kit';
import { log } from './log';

let isProxyNoticed = false;
let isFallbackNoticed = false;

/**
 * Makes asking where a request came from safe. A health probe that goes round the proxy has not the header
 * that ADDRESS_HEADER names, or too few addresses in it: then it is the other end of the line.
 */
export function guardAddress(event: RequestEvent): void {
	noticeProxy(event.request.headers);
	const ask = event.getClientAddress;
	event.getClientAddress = () => {
		try {
			return ask();
		} catch (error) {
			noticeFallback(error);
			return event.platform?.req?.socket.remoteAddress ?? 'unknown';
		}
	};
	Object.defineProperty(event.locals, 'address', { get: () => event.getClientAddress() });
}

/** Says once that a proxy was seen which nobody told the server of: all benches would count as one address. */
function noticeProxy(headers: Headers): void {
	if (isProxyNoticed || process.env.ADDRESS_HEADER || !headers.has('x-forwarded-for')) return;
	isProxyNoticed = true;
	log.warn(
		'A request came through a proxy (x-forwarded-for), but ADDRESS_HEADER is not set: every bench behind it ' +
			'counts as one address. If the proxy is yours, set ADDRESS_HEADER=x-forwarded-for and XFF_DEPTH to the number of proxies.'
	);
}

/** Said once: a probe is nothing to worry about, an XFF_DEPTH that is too large for every request is. */
function noticeFallback(error: unknown): void {
	if (isFallbackNoticed) return;
	isFallbackNoticed = true;
	log.warn({ err: error }, 'A request without the proxy’s address counts as the line it came by.');
}
