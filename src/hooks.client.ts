import type { HandleClientError } from '@sveltejs/kit';

// The pages' policy forbids code from text; told so before its first schema, zod does not try, and nothing is reported.
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });

/** What broke in the browser has no request of its own; its own words are what can be passed on. */
export const handleError: HandleClientError = ({ error, status, message }) => {
	if (status === 404) return { message };
	console.error(error);
	return { message: error instanceof Error ? error.message : message };
};
