/** Why a file is not taken: what is wrong, where in the file, and what would be accepted. */
export interface Refusal {
	ok: false;
	what: string;
	where: string;
	accepted: string;
}

/** Carries a refusal out of nested readers; `readMesh` turns it back into a value. */
export class RefusedError extends Error {
	readonly refusal: Refusal;

	constructor(what: string, where: string, accepted: string) {
		super(`${what} (${where}); accepted: ${accepted}`);
		this.name = 'RefusedError';
		this.refusal = { ok: false, what, where, accepted };
	}
}

/** Ends reading of this file with a refusal. */
export function refuse(what: string, where: string, accepted: string): never {
	throw new RefusedError(what, where, accepted);
}
