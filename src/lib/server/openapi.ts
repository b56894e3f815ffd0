import { z } from 'zod';
import { planInputsSchema } from '$lib/core/plan/inputs';
import { planSchema } from '$lib/core/plan/plan';
import { eventSchema } from '$lib/core/process/events';
import {
	newActsSchema,
	newEventSchema,
	newJobSchema,
	newMeshSchema,
	newSessionSchema
} from './api-schemas';
import { openApiPaths } from './openapi-paths';
import { recordSchema } from './record-schema';
import { signatureSchema } from './sign';

const BODIES = {
	PlanInputs: planInputsSchema,
	Plan: planSchema,
	Event: eventSchema,
	NewSession: newSessionSchema,
	NewJob: newJobSchema,
	NewMesh: newMeshSchema,
	NewEvent: newEventSchema,
	NewActs: newActsSchema,
	Signature: signatureSchema,
	Record: recordSchema
};

const problem = {
	type: 'object',
	description: 'RFC 9457 problem details. "code" is for programs, "detail" for people.',
	required: ['type', 'title', 'status', 'code', 'detail'],
	properties: {
		type: { type: 'string' },
		title: { type: 'string' },
		status: { type: 'integer' },
		code: { type: 'string' },
		detail: { type: 'string' },
		errors: {
			type: 'array',
			items: {
				type: 'object',
				properties: { path: { type: 'string' }, message: { type: 'string' } }
			}
		},
		allowed: { type: 'array', items: { type: 'string' } },
		headSeq: { type: 'integer' },
		since: { type: 'array', items: { type: 'object' } },
		waitS: { type: 'number' },
		requestId: { type: 'string' }
	}
};

let document: object | null = null;

/** What others can ask of this server; the same for as long as it runs. Source of the form: OpenAPI Specification 3.1 */
export function openApiDocument(): object {
	return (document ??= madeDocument());
}

function madeDocument(): object {
	const schemas = Object.fromEntries(
		Object.entries(BODIES).map(([name, schema]) => [name, bodySchema(schema)])
	);
	return {
		openapi: '3.1.0',
		info: {
			title: 'Glovewright',
			version: '1',
			description:
				'Plans, jobs and their records. A planning aid: data sheet, SDS, local codes and licensed practice come first.'
		},
		servers: [{ url: '/' }],
		security: [{ session: [] }],
		paths: openApiPaths,
		components: {
			securitySchemes: { session: { type: 'apiKey', in: 'cookie', name: 'gw_session' } },
			schemas: { ...schemas, Problem: problem }
		}
	};
}

function bodySchema(schema: z.ZodType): object {
	const body: Record<string, unknown> = z.toJSONSchema(schema, { io: 'input' });
	// The document names its dialect once, by its own version.
	delete body.$schema;
	return body;
}
