import { isRedirect, type RequestEvent } from '@sveltejs/kit';
import type { z } from 'zod';
import { accepted, issueWords } from '$lib/core/plan/issue-words';
import { DamagedRecord } from './job-file';
import { log, SECRETS } from './log';
import { ApiProblem, problemResponse, type FieldProblem, type Problem } from './problem';
import { storageProblem } from './storage-problem';
import { isWellFormed } from './well-formed';

/** Wraps a route of the API, so that whatever goes wrong is answered with problem details. */
export function api<E extends RequestEvent>(
	handler: (event: E) => Response | Promise<Response>
): (event: E) => Promise<Response> {
	return async (event) => {
		try {
			return await handler(event);
		} catch (error) {
			if (isRedirect(error)) throw error;
			const { requestId } = event.locals;
			return problemResponse({ ...problemOf(error, requestId), requestId });
		}
	};
}

/** The problem behind whatever went wrong; what nobody expected is logged under the request's id. */
export function problemOf(error: unknown, requestId: string): Problem {
	if (error instanceof ApiProblem) return error.problem;
	if (statusOf(error) === 413) {
		return { status: 413, code: 'too-large', detail: 'The request is too large; accepted: 8 MB.' };
	}
	if (error instanceof DamagedRecord) {
		return { status: 503, code: 'record-damaged', detail: error.message };
	}
	log.error({ requestId, err: error }, 'a request failed');
	return (
		storageProblem(error) ?? {
			status: 500,
			code: 'failed',
			detail: 'The server could not answer; the request id finds it in the log.'
		}
	);
}

/** The framework refuses a body over its limit with an error that has a status. */
function statusOf(error: unknown): unknown {
	return error instanceof Error && 'status' in error ? error.status : undefined;
}

/** The body as JSON that fits `schema`. @throws ApiProblem 400, 415 or 422, naming each field */
export async function readJson<S extends z.ZodType>(
	request: Request,
	schema: S
): Promise<z.output<S>> {
	const type = request.headers.get('content-type') ?? 'none';
	if (!/^application\/json\s*(;|$)/i.test(type)) {
		throw new ApiProblem({
			status: 415,
			code: 'not-json',
			detail: `The content type is ${type.slice(0, 80)}; accepted: application/json.`
		});
	}
	return fit(schema, parseJson(await request.text()));
}

function parseJson(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		throw new ApiProblem({
			status: 400,
			code: 'not-json',
			detail: 'The body is not JSON; accepted: one JSON object in UTF-8.'
		});
	}
}

/** `value` as `schema` has it. @throws ApiProblem 422, naming each field and what it accepts */
export function fit<S extends z.ZodType>(schema: S, value: unknown): z.output<S> {
	const result = schema.safeParse(value);
	if (!result.success) throw unfit(fieldProblems(result.error, value));
	if (!isWellFormed(value)) {
		throw unfit([{ path: '', message: 'a text holds half a character; accepted: whole Unicode' }]);
	}
	return result.data;
}

/** The problem of well-formed JSON that does not say something acceptable. */
export function unfit(errors: FieldProblem[]): ApiProblem {
	const [first] = errors;
	const message = first?.message ?? 'not acceptable';
	// Where the words begin with the field they need not be told it twice.
	const isNamed = !first?.path || first.path.endsWith(message.split(' ', 1)[0] ?? message);
	const where = isNamed ? '' : `${first.path}: `;
	const stop = /[.!?]$/.test(message) ? '' : '.';
	const more = errors.length > 1 ? ` And ${errors.length - 1} more.` : '';
	return new ApiProblem({
		status: 422,
		code: 'invalid',
		detail: `${where}${message}${stop}${more}`,
		errors: errors.slice(0, 50)
	});
}

/** Each thing wrong with `given`: where, and in words what it is and what would be accepted. */
export function fieldProblems(error: z.ZodError, given: unknown): FieldProblem[] {
	return error.issues.map((issue) => {
		const path = issue.path.map(String);
		const name = path.at(-1) ?? '';
		// What is secret is told to nobody, not even to whoever sent it.
		const isSecret = SECRETS.includes(name);
		const message = isSecret
			? `${name} cannot be taken; accepted: ${accepted(issue)}.`
			: issueWords(issue, given);
		return { path: path.join('.'), message };
	});
}

export function noSuchJob(id: string): ApiProblem {
	return new ApiProblem({
		status: 404,
		code: 'no-job',
		detail: `There is no job ${id.slice(0, 60)}.`
	});
}

/** The person of the session. The gate has refused everybody else; this tells the types. */
export function personOf(locals: App.Locals): NonNullable<App.Locals['person']> {
	if (locals.person) return locals.person;
	throw new ApiProblem({ status: 401, code: 'no-session', detail: 'Sign in first.' });
}
