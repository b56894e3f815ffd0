/** Whether a reader unpacks gzip, by its "accept-encoding" (RFC 9110, section 12.5.3). */
function takesGzip(accepts: string | null): boolean {
	return (accepts ?? '').split(',').some((one) => {
		const [coding = '', ...weights] = one.toLowerCase().split(';');
		return coding.trim() === 'gzip' && !weights.some((weight) => /^\s*q=0(\.0*)?\s*$/.test(weight));
	});
}

/**
 * A page packed for the way, where its reader unpacks it. The page of a bench is six times as long unpacked, which a
 * slow line needs a second more for. Pages only: a live line must not wait for a block to fill.
 *
 * @param accepts - the request's "accept-encoding"
 */
export function packed(response: Response, accepts: string | null): Response {
	const { body, headers, status, statusText } = response;
	const isPage = headers.get('content-type')?.startsWith('text/html') ?? false;
	if (!body || !isPage || headers.has('content-encoding')) return response;
	headers.append('vary', 'accept-encoding');
	if (!takesGzip(accepts)) return response;
	const etag = headers.get('etag');
	// The same page in other bytes (RFC 9110, section 8.8.1).
	if (etag && !etag.startsWith('W/')) headers.set('etag', `W/${etag}`);
	headers.delete('content-length');
	headers.set('content-encoding', 'gzip');
	return new Response(body.pipeThrough(new CompressionStream('gzip')), {
		status,
		statusText,
		headers
	});
}
