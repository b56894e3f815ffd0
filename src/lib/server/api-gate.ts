import type { RequestEvent } from '@sveltejs/kit';
import { decodedPath, type Gate } from './gate';
import { problemResponse } from './problem';

/** Whether a request is for the API, which answers with problem details where pages lead elsewhere. */
export function isApi(url: URL): boolean {
	return decodedPath(url).startsWith('/api/');
}

/** Runs an API request behind its gate, and turns a framework's plain error into problem details. */
export async function apiAnswer(
	{ url, locals }: RequestEvent,
	gate: Gate,
	resolve: () => Response | Promise<Response>
): Promise<Response> {
	if (!isApi(url)) return resolve();
	if (gate === 'no shop') {
		return problemResponse({
			status: 409,
			code: 'no-shop',
			detail: 'No shop is set up yet. Open /start in a browser first.'
		});
	}
	if (gate === 'no person') {
		return problemResponse({
			status: 401,
			code: 'no-session',
			detail: 'Sign in first: POST /api/session with personId and pin, and keep the cookie.'
		});
	}
	if (gate === 'new pin') {
		return problemResponse({
			status: 403,
			code: 'given-pin',
			detail:
				'Somebody else gave you this PIN. Choose your own first: POST /api/session with personId, pin and newPin.'
		});
	}
	const response = await resolve();
	const isPlainError =
		response.status >= 400 && response.headers.get('content-type') !== 'application/problem+json';
	if (!isPlainError) return response;

	const allow = response.headers.get('allow');
	return problemResponse(
		{
			status: response.status,
			code: CODES[response.status] ?? 'failed',
			detail: detailOf(response.status, url.pathname, allow),
			requestId: locals.requestId
		},
		allow ? { allow } : {}
	);
}

const CODES: Record<number, string> = { 404: 'not-found', 405: 'method-not-allowed' };

function detailOf(status: number, path: string, allow: string | null): string {
	if (status === 404)
		return `There is nothing at ${path}. See /api/openapi.json for what there is.`;
	if (status === 405) return `${path} takes ${allow ?? 'another method'}.`;
	return 'The server could not answer. Nothing was written; the request id finds it in the log.';
}
