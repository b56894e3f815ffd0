import type { Problem } from './problem';

const NOTHING = 'Nothing was written; what you sent can be sent again.';

/** What to tell a person when the store itself refused, or null when the error is not of that kind. */
export function storageProblem(error: unknown): Problem | null {
	const code = error instanceof Error && 'code' in error ? String(error.code) : '';
	if (code === 'SQLITE_FULL') {
		return {
			status: 507,
			code: 'disk-full',
			detail: `The disk with the shop's data is full. ${NOTHING} Free some space first.`
		};
	}
	if (/^SQLITE_(READONLY|CANTOPEN|IOERR|PERM|NOTADB|CORRUPT)/.test(code)) {
		return {
			status: 503,
			code: 'store-unavailable',
			detail: `The shop's data cannot be read or written (${code}). ${NOTHING}`
		};
	}
	if (/^SQLITE_(BUSY|LOCKED)/.test(code)) {
		return {
			status: 503,
			code: 'store-busy',
			detail: `The shop's data is in use by another program. ${NOTHING}`,
			waitS: 2
		};
	}
	return null;
}
