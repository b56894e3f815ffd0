import { json } from '@sveltejs/kit';
import { unfit } from './api';
import { problemResponse } from './problem';
import type { SignResult } from './sign';

/** The answer of the API to an act: 201 written, 200 written before, or a problem that says what now. */
export function appendAnswer(result: SignResult): Response {
	switch (result.status) {
		case 'appended':
			return json(result, { status: 201 });
		case 'duplicate':
			return json(result);
		case 'conflict':
			return problemResponse({
				status: 409,
				code: 'conflict',
				detail: `Somebody else was faster: the job stands at number ${result.headSeq}. Look at what was entered since, then send with the next number, or let it be.`,
				headSeq: result.headSeq,
				since: result.since,
				allowed: result.allowed
			});
		case 'refused':
			if (result.field !== undefined) {
				const problem = { path: result.field, message: result.reason };
				return problemResponse(unfit([problem]).problem);
			}
			return problemResponse({
				status: 409,
				code: 'refused',
				detail: result.reason,
				allowed: result.allowed
			});
		case 'no job':
			return problemResponse({ status: 404, code: 'no-job', detail: 'There is no such job.' });
		case 'wrong PIN':
			return wrongPin(result.waitS);
		case 'may not sign':
			return problemResponse({ status: 403, code: 'may-not-sign', detail: result.reason });
	}
}

/** The answer to a wrong PIN, with the wait before the next try is looked at. */
export function wrongPin(waitS: number): Response {
	return problemResponse({
		status: waitS > 0 ? 429 : 403,
		code: 'wrong-pin',
		detail:
			waitS > 0
				? `Too many wrong PINs. Wait ${waitS} seconds, then try again.`
				: 'The PIN is not right.',
		waitS
	});
}
