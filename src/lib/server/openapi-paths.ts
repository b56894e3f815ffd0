const ref = (name: string) => ({ $ref: `#/components/schemas/${name}` });
const jsonOf = (schema: object) => ({ 'application/json': { schema } });
const problem = { content: { 'application/problem+json': { schema: ref('Problem') } } };

interface Operation {
	summary: string;
	body?: object;
	ok: [status: number, description: string, content?: object];
	refusals?: Record<number, string>;
	parameters?: object[];
	isOpen?: boolean;
}

/** One operation; every one may also answer 401 without a session and 5xx, as problem details. */
function operation({ summary, body, ok, refusals = {}, parameters, isOpen }: Operation): object {
	const [status, description, content] = ok;
	const all = isOpen ? refusals : { 401: 'No session', ...refusals };
	return {
		summary,
		...(parameters ? { parameters } : {}),
		...(isOpen ? { security: [] } : {}),
		...(body ? { requestBody: { required: true, content: body } } : {}),
		responses: {
			[status]: { description, ...(content ? { content } : {}) },
			...Object.fromEntries(
				Object.entries(all).map(([code, why]) => [code, { description: why, ...problem }])
			),
			default: { description: 'The server could not answer', ...problem }
		}
	};
}

const inPath = (name: string) => ({
	name,
	in: 'path',
	required: true,
	schema: { type: 'string' }
});
const anyObject = jsonOf({ type: 'object' });
const stream = { 'text/event-stream': { schema: { type: 'string' } } };
const image = { schema: { type: 'string', format: 'binary' } };
const images = { 'image/jpeg': image, 'image/png': image, 'image/webp': image };
const invalid = { 422: 'Something in the body is not acceptable; "errors" names each field' };
const noJob = { 404: 'No such job' };
const judged = {
	...noJob,
	...invalid,
	409: 'code "conflict": another act came first, see headSeq; code "refused": the process does not take it now, see allowed'
};

/** Every route of the API. A test compares this list with the routes that exist. */
export const openApiPaths = {
	'/api/session': {
		get: operation({
			summary: 'Who is signed in, and who can sign in',
			ok: [200, 'Person and people', anyObject],
			isOpen: true
		}),
		post: operation({
			summary: 'Sign in; the answer sets the session cookie',
			body: jsonOf(ref('NewSession')),
			ok: [201, 'Signed in', anyObject],
			refusals: { ...invalid, 403: 'Wrong PIN', 429: 'Too many wrong PINs; see waitS' },
			isOpen: true
		}),
		delete: operation({ summary: 'Sign out', ok: [204, 'Signed out'], isOpen: true })
	},
	'/api/plan': {
		post: operation({
			summary: 'Compute a plan; nothing is stored',
			body: jsonOf(ref('PlanInputs')),
			ok: [
				200,
				'The plan and its hash',
				jsonOf({
					type: 'object',
					properties: { plan: ref('Plan'), planHash: { type: 'string' } }
				})
			],
			refusals: invalid
		})
	},
	'/api/jobs': {
		get: operation({ summary: 'Every job with its summary', ok: [200, 'Jobs', anyObject] }),
		post: operation({
			summary: 'Accept a plan: freeze it and open its job',
			body: jsonOf(ref('NewJob')),
			ok: [201, 'The id of the job', anyObject],
			refusals: { ...invalid, 409: 'The inputs give another plan than the one that was shown' }
		})
	},
	'/api/jobs/{id}': {
		get: operation({
			summary: 'A job: plan, log, summary and the step at hand',
			parameters: [inPath('id')],
			ok: [200, 'The job', anyObject],
			refusals: noJob
		})
	},
	'/api/jobs/{id}/events': {
		get: operation({
			summary: 'The log after a number',
			parameters: [
				inPath('id'),
				{ name: 'after', in: 'query', schema: { type: 'integer', minimum: 0, default: 0 } }
			],
			ok: [200, 'Events', anyObject],
			refusals: { ...noJob, ...invalid }
		}),
		post: operation({
			summary: 'Add an act to the log; answered only once it is on the disk',
			parameters: [inPath('id')],
			body: jsonOf(ref('NewEvent')),
			ok: [201, 'Written (200 when the same id was written before)', anyObject],
			refusals: judged
		})
	},
	'/api/jobs/{id}/sign': {
		post: operation({
			summary: 'Sign a hold point, send it back, reject the mold or decide a deviation, with a PIN',
			parameters: [inPath('id')],
			body: jsonOf(ref('Signature')),
			ok: [201, 'Written', anyObject],
			refusals: { ...judged, 403: 'Wrong PIN, or may not sign', 429: 'Too many wrong PINs' }
		})
	},
	'/api/jobs/{id}/live': {
		get: operation({
			summary: 'Server-sent events: {"seq": n} at once and at each append',
			parameters: [inPath('id')],
			ok: [200, 'A stream', stream],
			refusals: noJob
		})
	},
	'/api/jobs/{id}/record.json': {
		get: operation({
			summary: 'The record to take away, as canonical JSON (RFC 8785)',
			parameters: [inPath('id')],
			ok: [200, 'The record', jsonOf(ref('Record'))],
			refusals: noJob
		})
	},
	'/api/live': {
		get: operation({
			summary: 'Server-sent events: {"jobId", "seq"} at each append to any job',
			ok: [200, 'A stream', stream]
		})
	},
	'/api/photos': {
		post: operation({
			summary: 'Keep a photo; its hash goes into an act',
			body: images,
			ok: [201, 'Its hash', anyObject],
			refusals: { ...invalid, 413: 'Too large' }
		})
	},
	'/api/photos/{hash}': {
		get: operation({
			summary: 'A photo',
			parameters: [inPath('hash')],
			ok: [200, 'The photo', images],
			refusals: { 404: 'No such photo' }
		})
	},
	'/api/schema/record.json': {
		get: operation({
			summary: 'JSON Schema of the record',
			ok: [200, 'The schema', anyObject],
			isOpen: true
		})
	},
	'/api/openapi.json': {
		get: operation({ summary: 'This document', ok: [200, 'OpenAPI', anyObject], isOpen: true })
	}
};
