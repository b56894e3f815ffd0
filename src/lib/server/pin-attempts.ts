import type { Db } from './database';

export interface PinAttempt {
	n: number;
	personId: string;
	address: string;
	at: string;
	outcome: 'wrong' | 'too soon';
}

/** The latest PINs that were not right, newest first. */
export async function listFailedPins(db: Db, limit = 50): Promise<PinAttempt[]> {
	const rows = await db
		.selectFrom('pin_attempt')
		.select(['n', 'person_id', 'address', 'at', 'outcome'])
		.where('outcome', '!=', 'right')
		.orderBy('n', 'desc')
		.limit(limit)
		.execute();
	return rows.flatMap(({ n, person_id, address, at, outcome }) =>
		outcome === 'right' ? [] : [{ n, personId: person_id, address, at, outcome }]
	);
}
