import { json } from '@sveltejs/kit';
import { unfit } from './api';
import { isWritten, type Held, type Written } from './append';
import { problemResponse, type Problem } from './problem';
import type { SignResult } from './sign';

/** The answer of the API to an act: 201 written, 200 written before, or a problem that says what now. */
export function appendAnswer(result: SignResult): Response {
	return isWritten(result)
		? json(result, { status: statusOfWritten(result) })
		: problemResponse(problemOfAct(result));
}

/** 201 for what was written now, 200 for what was written before. */
export function statusOfWritten({ status }: Written): 200 | 201 {
	return status === 'appended' ? 201 : 200;
}

/** Why an act was not written, and what can be done now. */
export function problemOfAct(result: Exclude<SignResult | Held, Written>): Problem {
	switch (result.status) {
		case 'conflict':
			return {
				status: 409,
				code: 'conflict',
				detail: `Somebody else was faster: the job stands at number ${result.headSeq}. Look at what was entered since, then send with the next number, or let it be.`,
				headSeq: result.headSeq,
				since: result.since,
				allowed: result.allowed
			};
		case 'refused':
			return result.field === undefined
				? { status: 409, code: 'refused', detail: result.reason, allowed: result.allowed }
				: unfit([{ path: result.field, message: result.reason }]).problem;
		case 'unfit':
			return unfit(result.errors).problem;
		case 'no job':
			return { status: 404, code: 'no-job', detail: 'There is no such job.' };
		case 'held':
			return {
				status: 409,
				code: 'held',
				detail: 'An act before this one was not taken, so this one was not looked at.'
			};
		case 'wrong PIN':
			return problemOfPin(result.waitS);
		case 'may not sign':
			return { status: 403, code: 'may-not-sign', detail: result.reason };
	}
}

/** The answer to a wrong PIN, with the wait before the next try is looked at. */
export function wrongPin(waitS: number): Response {
	return problemResponse(problemOfPin(waitS));
}

function problemOfPin(waitS: number): Problem {
	return {
		status: waitS > 0 ? 429 : 403,
		code: 'wrong-pin',
		detail:
			waitS > 0
				? `Too many wrong PINs. Wait ${waitS} seconds, then try again.`
				: 'The PIN is not right.',
		waitS
	};
}
