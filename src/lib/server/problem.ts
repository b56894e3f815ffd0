/** One thing wrong with what was sent: where, and what would be accepted. */
export interface FieldProblem {
	path: string;
	message: string;
}

/** What a refused request is told. Source: RFC 9457 (2023), Problem Details for HTTP APIs. */
export interface Problem {
	status: number;
	/** Short word for programs, for example "conflict"; an extension member. */
	code: string;
	detail: string;
	errors?: FieldProblem[];
	/** Acts that would be taken instead. */
	allowed?: string[];
	/** Number of the last event in the job's log. */
	headSeq?: number;
	/** Events that came first. */
	since?: readonly object[];
	/** Seconds to wait before trying again. */
	waitS?: number;
	requestId?: string;
}

const TITLES: Record<number, string> = {
	400: 'Bad Request',
	401: 'Unauthorized',
	403: 'Forbidden',
	404: 'Not Found',
	405: 'Method Not Allowed',
	409: 'Conflict',
	413: 'Content Too Large',
	415: 'Unsupported Media Type',
	422: 'Unprocessable Content',
	429: 'Too Many Requests',
	500: 'Internal Server Error',
	503: 'Service Unavailable',
	507: 'Insufficient Storage'
};

/** The answer for a problem, as application/problem+json. */
export function problemResponse(problem: Problem, headers: Record<string, string> = {}): Response {
	const { status, ...members } = problem;
	const body = { type: 'about:blank', title: TITLES[status] ?? 'Error', status, ...members };
	return new Response(JSON.stringify(body), {
		status,
		headers: {
			'content-type': 'application/problem+json',
			'cache-control': 'no-store',
			...(problem.waitS ? { 'retry-after': String(problem.waitS) } : {}),
			...headers
		}
	});
}

/** Thrown by a route to answer with a problem. */
export class ApiProblem extends Error {
	override name = 'ApiProblem';
	readonly problem: Problem;

	constructor(problem: Problem) {
		super(problem.detail);
		this.problem = problem;
	}
}
