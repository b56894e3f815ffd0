/** Whether a reader unpacks gzip, by its "accept-encoding" (RFC 9110, section 12.5.3). */
function takesGzip(accepts: string | null): boolean {
	return (accepts ?? '').split(',').some((one) => {
		const [coding = '', ...weights] = one.toLowerCase().split(';');
		return coding.trim() === 'gzip' && !weights.some((weight) => /^\s*q=0(\.0*)?\s*$/.test(weight));
	});
}

/** Shorter data gains less than packing it takes, and the answer to an act is awaited. A choice. */
const LEAST_DATA_BYTES = 4096;

/** A page, or data known to be long. Not a live line: it must not wait for a block to fill. */
function isWorthPacking(headers: Headers): boolean {
	const type = headers.get('content-type') ?? '';
	if (type.startsWith('text/html')) return true;
	const bytes = Number(headers.get('content-length') ?? 0);
	return type.startsWith('application/json') && bytes >= LEAST_DATA_BYTES;
}

/**
 * A page, or long data, packed for the way, where its reader unpacks it. The page of a bench, and what a device keeps of
 * it, are six times as long unpacked, which a slow line needs a second more for.
 *
 * @param accepts - the request's "accept-encoding"
 */
export function packed(response: Response, accepts: string | null): Response {
	const { body, headers, status, statusText } = response;
	if (!body || !isWorthPacking(headers) || headers.has('content-encoding')) return response;
	headers.append('vary', 'accept-encoding');
	if (!takesGzip(accepts)) return response;
	const etag = headers.get('etag');
	// The same text in other bytes (RFC 9110, section 8.8.1).
	if (etag && !etag.startsWith('W/')) headers.set('etag', `W/${etag}`);
	headers.delete('content-length');
	headers.set('content-encoding', 'gzip');
	return new Response(body.pipeThrough(new CompressionStream('gzip')), {
		status,
		statusText,
		headers
	});
}
