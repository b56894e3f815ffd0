import type { Problem } from './problem';

const NOTHING = 'Nothing was written; what you sent can be sent again.';

/**
 * Read-only, disk or memory out of order, no rights, damaged. Source of the codes: PostgreSQL
 * documentation, Appendix A, Error Codes.
 */
const BROKEN = /^(25006|53200|58\w{3}|XX\w{3}|42501|28\w{3}|3D000)$/;
/** The server went away or was never there; a commit may have been under way. */
const LOST =
	/^(08\w{3}|57P0[1-5]|25P03|ECONN\w+|EPIPE|ETIMEDOUT|EHOSTUNREACH|ENOTFOUND|no connection)$/;
/** Too many connections, a lock or an answer that took too long, two that waited for each other. */
const BUSY = /^(53300|55P03|57014|40001|40P01)$/;

/** What to tell a person when the store itself refused, or null when the error is not of that kind. */
export function storageProblem(error: unknown): Problem | null {
	const code = codeOf(error);
	if (code === 'SQLITE_FULL' || code === '53100') {
		return {
			status: 507,
			code: 'disk-full',
			detail: `The disk with the shop's data is full. ${NOTHING} Free some space first.`
		};
	}
	if (/^SQLITE_(READONLY|CANTOPEN|IOERR|PERM|NOTADB|CORRUPT)/.test(code) || BROKEN.test(code)) {
		return {
			status: 503,
			code: 'store-unavailable',
			detail: `The shop's data cannot be read or written (${code}). ${NOTHING}`
		};
	}
	if (LOST.test(code)) {
		return {
			status: 503,
			code: 'store-unavailable',
			detail:
				"The line to the shop's database broke. Send it again as it is: what was written already is not written twice.",
			waitS: 2
		};
	}
	if (/^SQLITE_(BUSY|LOCKED)/.test(code) || BUSY.test(code)) {
		return {
			status: 503,
			code: 'store-busy',
			detail: `The shop's data is in use by another program. ${NOTHING}`,
			waitS: 2
		};
	}
	return null;
}

function codeOf(error: unknown): string {
	if (!(error instanceof Error)) return '';
	if ('code' in error && typeof error.code === 'string') return error.code;
	// The driver says some losses in words alone.
	const isLoss =
		/^(Connection terminated|timeout exceeded when trying to connect|Client has encountered)/;
	return isLoss.test(error.message) ? 'no connection' : '';
}
