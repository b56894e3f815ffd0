import { isHttpError, isRedirect, type RequestEvent } from '@sveltejs/kit';
import { log } from './log';

/** Answers a request and writes one line about it: what was asked, by whom, what came of it, how long it took. */
export async function logged(
	event: RequestEvent,
	answer: () => Promise<Response>
): Promise<Response> {
	const startedMs = performance.now();
	const write = (status: number) =>
		log[levelOf(status)](lineOf(event, status, startedMs), 'request');
	try {
		const response = await answer();
		write(response.status);
		return response;
	} catch (thrown) {
		write(isRedirect(thrown) || isHttpError(thrown) ? thrown.status : 500);
		throw thrown;
	}
}

function lineOf({ locals, request, url }: RequestEvent, status: number, startedMs: number): object {
	return {
		requestId: locals.requestId,
		method: request.method,
		// Never the query: it may hold what somebody typed.
		path: url.pathname.slice(0, 200),
		status,
		ms: Math.round(performance.now() - startedMs),
		...(locals.person ? { person: locals.person.id } : {}),
		...(status === 401 || status === 403 || status === 429 ? { address: locals.address } : {})
	};
}

function levelOf(status: number): 'error' | 'warn' | 'info' {
	if (status >= 500) return 'error';
	return status === 403 || status === 429 ? 'warn' : 'info';
}
