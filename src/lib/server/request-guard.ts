import type { RequestEvent } from '@sveltejs/kit';
import { isApi } from './api-gate';
import { decodedPath, isDecodable } from './gate';
import { ApiProblem, problemResponse, type Problem } from './problem';
import { RateLimiter, rateKindOf, ratesOf, type RateKind } from './rate-limit';

const SAFE = ['GET', 'HEAD', 'OPTIONS'];
/** Bodies by path; everything else is a form or a short JSON. The server itself stops at 8 MB. */
const LARGEST_BODY_BYTES: Record<string, number> = {
	'/api/photos': 6_000_000,
	'/api/meshes/parts': 4_000_000
};
const OTHER_BODY_BYTES = 2_000_000;

const limiter = new RateLimiter();
const rates = ratesOf();

/** Why a request is turned away before anything is read of it, as an answer; null when it may go on. */
export function turnAway(event: RequestEvent): Response | null {
	const isAddress = isDecodable(event.url);
	const problem = isAddress
		? (tooMany(event) ?? foreignOrigin(event) ?? tooLarge(event))
		: { status: 400, code: 'malformed', detail: 'This address cannot be decoded.' };
	if (!problem) return null;
	const { requestId } = event.locals;
	if (isAddress && isApi(event.url)) return problemResponse({ ...problem, requestId });
	return new Response(`${problem.detail}\nRequest ${requestId}\n`, {
		status: problem.status,
		headers: {
			'content-type': 'text/plain; charset=utf-8',
			...(problem.waitS ? { 'retry-after': String(problem.waitS) } : {})
		}
	});
}

function tooMany({ request, url, locals }: RequestEvent): Problem | null {
	const kind = rateKindOf(request.method, decodedPath(url));
	if (!kind) return null;
	return tooManyOf(kind, locals.address, 1);
}

function tooManyOf(kind: RateKind, address: string, count: number): Problem | null {
	const waitS = limiter.take(`${kind} ${address}`, rates[kind], performance.now(), count);
	if (waitS === 0) return null;
	return {
		status: 429,
		code: 'too-many-requests',
		detail: `Too many requests from this address. Wait ${waitS} s, then go on; nothing was written.`,
		waitS
	};
}

/** Counts what a request carries beside its first act as if each had come by itself. @throws ApiProblem 429 */
export function countActs(address: string, acts: number): void {
	const problem = acts > 1 ? tooManyOf('write', address, acts - 1) : null;
	if (problem) throw new ApiProblem(problem);
}

/** A write that another site's page sent. A program sends neither header, and has no cookie of ours. */
function foreignOrigin({ request, url }: RequestEvent): Problem | null {
	if (SAFE.includes(request.method)) return null;
	const origin = request.headers.get('origin');
	const isForeign =
		origin === null
			? request.headers.get('sec-fetch-site') === 'cross-site'
			: origin !== url.origin;
	if (!isForeign) return null;
	return {
		status: 403,
		code: 'foreign-origin',
		detail: `This request came from a page of ${origin ?? 'another site'}; only pages of ${url.origin} may write here.`
	};
}

function tooLarge({ request, url }: RequestEvent): Problem | null {
	const most = LARGEST_BODY_BYTES[decodedPath(url)] ?? OTHER_BODY_BYTES;
	const bytes = Number(request.headers.get('content-length') ?? 0);
	if (!(bytes > most)) return null;
	return {
		status: 413,
		code: 'too-large',
		detail: `The request has ${bytes} bytes; accepted here: up to ${most}.`
	};
}
