import type { DemoPerson } from '$lib/core/content/demo-schema';
import { contentHashes } from './content-hashes';
import type { Db } from './database';
import { demo } from './demo-content';
import { rehearseMold } from './demo-jobs';
import { DEMO_MOLDS } from './demo-molds';
import { writeJob } from './demo-write';
import { savePattern } from './patterns.repository';
import { addPerson } from './people.repository';
import { saveSheet } from './sheets.repository';
import { getShop, saveShop } from './shop.repository';

/** Names, roles and PINs of the invented people, for the sign-in page of the demo shop, and only there. */
export function demoPins(): Array<Pick<DemoPerson, 'name' | 'role' | 'pin'>> {
	return demo.people.map(({ name, role, pin }) => ({ name, role, pin }));
}

/**
 * Fills an empty store with the invented shop: people, sheets, patterns, and molds in different phases
 * whose windows are open at `at`. All of it or nothing; a store that has a shop is left as it is.
 */
export async function seedDemo(db: Db, at: string): Promise<void> {
	await db.transaction().execute(async (trx) => {
		if (await getShop(trx)) return;
		await saveShop(trx, demo.shop, at);
		const personIds = new Map(
			await Promise.all(
				demo.people.map(async ({ id, name, role, pin }) => {
					const person = await addPerson(trx, { name, role, pin }, at);
					return [id, person.id] as const;
				})
			)
		);
		for (const sheet of demo.sheets) await saveSheet(trx, sheet);
		for (const { id, pattern } of demo.patterns) await savePattern(trx, { id, pattern, at });
		const content = contentHashes();
		for (const mold of DEMO_MOLDS) {
			await writeJob(trx, rehearseMold(demo, mold, { at, personIds, content }));
		}
	});
}
