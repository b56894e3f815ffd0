import { canonicalJson, sha256Hex } from '$lib/core/log/canonical';
import type { Plan } from '$lib/core/plan/plan';
import type { Db } from './database';
import { readEvents } from './event-rows';
import { DamagedRecord } from './job-file';
import { listPeople } from './people.repository';
import type { JobRecord } from './record-schema';
import { getShop } from './shop.repository';

/**
 * A job's record to take away, read afresh from the store, damaged or not: whoever verifies it sees.
 * Null when there is no such job.
 */
export async function exportRecord(db: Db, id: string, at: string): Promise<JobRecord | null> {
	const row = await db.selectFrom('job').selectAll().where('id', '=', id).executeTakeFirst();
	if (!row) return null;

	const shop = await getShop(db);
	const events = await readEvents(db, id).catch((error: unknown) => {
		if (!(error instanceof SyntaxError)) throw error;
		throw new DamagedRecord('An entry of the log can no longer be read.');
	});
	const unsealed: Omit<JobRecord, 'recordHash'> = {
		format: 'glovewright.record.1',
		exportedAt: at,
		shop: { name: shop?.name ?? '', isDemo: shop?.isDemo ?? false },
		plan: planOf(row.plan),
		planHash: row.plan_hash,
		events,
		people: await namesIn(
			db,
			events.flatMap(({ event }) =>
				event.type === 'job.opened' && event.decided ? [event.by, event.decided.by] : [event.by]
			)
		),
		headHash: events.at(-1)?.hash ?? ''
	};
	return { ...unsealed, recordHash: sha256Hex(canonicalJson(unsealed)) };
}

function planOf(text: string): Plan {
	try {
		return JSON.parse(text) as Plan;
	} catch {
		throw new DamagedRecord('The plan can no longer be read.');
	}
}

async function namesIn(db: Db, ids: string[]): Promise<Record<string, string>> {
	const people = await listPeople(db);
	return Object.fromEntries(people.filter((p) => ids.includes(p.id)).map((p) => [p.id, p.name]));
}
