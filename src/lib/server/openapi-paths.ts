const ref = (name: string) => ({ $ref: `#/components/schemas/${name}` });
const jsonOf = (schema: object) => ({ 'application/json': { schema } });
const problem = { content: { 'application/problem+json': { schema: ref('Problem') } } };

type Refusals = Readonly<Record<number, string>>;

interface Operation {
	summary: string;
	body?: object;
	ok: [status: number, description: string, content?: object];
	/** A second good answer, to what was done before. */
	again?: [status: number, description: string];
	refusals?: Refusals;
	parameters?: object[];
	/** Needs neither shop nor session. */
	isOpen?: boolean;
	/** Changes something, so that another site's page may not ask for it, and the disk may be full. */
	writes?: boolean;
}

const GATED: Refusals = {
	401: 'No session',
	403: 'code "given-pin": choose your own PIN first, at /api/session',
	409: 'code "no-shop": no shop is set up yet'
};
const WRITES: Refusals = {
	403: 'code "foreign-origin": sent by a page of another site',
	507: 'The disk is full; nothing was written'
};
const RATES: Refusals = { 429: 'Too many requests from this address; see waitS' };
const STORE: Refusals = {
	500: 'The server could not answer; the request id finds it in its log',
	503: 'The store cannot be used now, or the record of this job is damaged'
};

/** Every status with all its reasons, since one status may have several. */
function together(...lists: Refusals[]): Array<[string, string]> {
	const all = new Map<string, string>();
	for (const [code, why] of lists.flatMap((list) => Object.entries(list))) {
		const known = all.get(code);
		all.set(code, known ? `${known}; ${why}` : why);
	}
	return [...all];
}

/** One operation with every status it can answer; a test asks for each of them. */
function operation(given: Operation): object {
	const { summary, body, ok, again, refusals = {}, parameters, isOpen, writes } = given;
	const [status, description, content] = ok;
	const all = together(refusals, isOpen ? {} : GATED, writes ? WRITES : {}, RATES, STORE);
	return {
		summary,
		...(parameters ? { parameters } : {}),
		...(isOpen ? { security: [] } : {}),
		...(body ? { requestBody: { required: true, content: body } } : {}),
		responses: {
			[status]: { description, ...(content ? { content } : {}) },
			...(again ? { [again[0]]: { description: again[1], ...(content ? { content } : {}) } } : {}),
			...Object.fromEntries(all.map(([code, why]) => [code, { description: why, ...problem }]))
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
const file = { 'application/octet-stream': image };
const mayNotEdit =
	'code "may-not-edit": patterns are added by a mold maker, a supervisor or the owner';
const invalid: Refusals = { 422: 'Something is not acceptable; "errors" names each field' };
const body: Refusals = {
	...invalid,
	400: 'The body is not JSON',
	413: 'The body is larger than 8 MB',
	415: 'The content type is not application/json'
};
const streams: Refusals = {
	429: 'code "too-many-streams": close some of those open in this session, or from this address'
};
const noJob = { 404: 'No such job' };
const judged = {
	...noJob,
	...body,
	409: 'code "conflict": another act came first, see headSeq, since (the first 100 events from the number wanted on) and allowed; code "refused": the process does not take it now, see allowed'
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
			summary:
				'Sign in; the answer sets the session cookie. With "newPin" the PIN is replaced first',
			body: jsonOf(ref('NewSession')),
			ok: [201, 'Signed in', anyObject],
			refusals: {
				...body,
				403: 'code "wrong-pin"; code "device-not-registered": the shop lets only registered devices sign in',
				429: 'Too many wrong PINs; see waitS'
			},
			isOpen: true,
			writes: true
		}),
		delete: operation({ summary: 'Sign out', ok: [204, 'Signed out'], isOpen: true, writes: true })
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
			refusals: { ...body, 403: WRITES[403] ?? '' }
		})
	},
	'/api/jobs': {
		get: operation({ summary: 'Every job with its summary', ok: [200, 'Jobs', anyObject] }),
		post: operation({
			summary: 'Accept a plan: freeze it and open its job',
			body: jsonOf(ref('NewJob')),
			ok: [201, 'The id of the job', anyObject],
			refusals: {
				...body,
				403: 'code "may-not-accept": plans are accepted by a mold maker, a supervisor or the owner; code "wrong-pin" or "may-not-sign": of the decision',
				429: 'Too many wrong PINs; see waitS',
				409: 'code "other-plan": the inputs give another plan than the one that was shown; code "id-taken": the id belongs to another plan; code "title-taken": a running mold has the title'
			},
			writes: true
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
			ok: [201, 'Written', anyObject],
			again: [200, 'The same act was written before under this id'],
			refusals: {
				...judged,
				403: 'code "not-the-doer": "by" is somebody else than who is signed in'
			},
			writes: true
		})
	},
	'/api/acts': {
		post: operation({
			summary:
				'Add up to 100 acts, of any jobs, in order: "answers" has one for each, with "stored" or with "problem"; one that is not taken holds back (code "held") what follows it on its job',
			body: jsonOf(ref('NewActs')),
			ok: [200, 'What became of each', anyObject],
			refusals: body,
			writes: true
		})
	},
	'/api/jobs/{id}/sign': {
		post: operation({
			summary:
				'With a PIN: sign a hold point, send it back, decide a deviation, reject or abandon the mold',
			parameters: [inPath('id')],
			body: jsonOf(ref('Signature')),
			ok: [201, 'Written', anyObject],
			again: [200, 'The same word was written before under this id'],
			refusals: {
				...judged,
				403: 'code "wrong-pin", or code "may-not-sign": also with a PIN that somebody else gave',
				429: 'Too many wrong PINs; see waitS'
			},
			writes: true
		})
	},
	'/api/jobs/{id}/live': {
		get: operation({
			summary:
				'Server-sent events: {"seq": n} at once and after appends, the last one of each tenth of a second, and an event "beat" every 10 s',
			parameters: [inPath('id')],
			ok: [200, 'A stream', stream],
			refusals: { ...noJob, ...streams }
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
			summary:
				'Server-sent events: {"jobId", "seq"} after appends to any job, the last one of each job in each tenth of a second; {"jobId": null, "seq": 0} at once and when appends may have been missed',
			ok: [200, 'A stream', stream],
			refusals: streams
		})
	},
	'/api/meshes/parts': {
		post: operation({
			summary: 'Send one part of a mesh file, up to 4 MB, in order from part 0',
			parameters: [
				{ name: 'upload', in: 'query', required: true, schema: { type: 'string' } },
				{ name: 'part', in: 'query', required: true, schema: { type: 'integer', minimum: 0 } }
			],
			body: file,
			ok: [201, 'The part is kept', anyObject],
			refusals: { ...invalid, 403: mayNotEdit, 413: 'The body is larger than 8 MB' },
			writes: true
		})
	},
	'/api/meshes': {
		post: operation({
			summary: 'Make a mesh file of its parts, under the SHA-256 of its bytes',
			body: jsonOf(ref('NewMesh')),
			ok: [201, 'Its hash, format and size', anyObject],
			refusals: { ...body, 403: mayNotEdit },
			writes: true
		})
	},
	'/api/meshes/{hash}': {
		get: operation({
			summary: 'A mesh file',
			parameters: [inPath('hash')],
			ok: [200, 'The file', file],
			refusals: { 404: 'No such mesh file' }
		})
	},
	'/api/photos': {
		post: operation({
			summary: 'Keep a photo; its hash goes into an act',
			body: images,
			ok: [201, 'Its hash', anyObject],
			refusals: { ...invalid, 413: 'The body is larger than 8 MB' },
			writes: true
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
		get: operation({
			summary: 'This document',
			ok: [200, 'OpenAPI', anyObject],
			isOpen: true
		})
	}
};
