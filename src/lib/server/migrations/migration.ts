import type { Kysely } from 'kysely';

/** One step forward of the schema. Never edited once released; there is no way back. */
export interface Migration {
	version: number;
	name: string;
	// The schema a migration meets is older than the types, so it takes a database of unknown tables.
	// eslint-disable-next-line @typescript-eslint/no-explicit-any
	up(db: Kysely<any>): Promise<void>;
}
