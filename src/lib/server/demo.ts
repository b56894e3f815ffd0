import type { DemoPerson } from '$lib/core/content/demo-schema';
import { contentHashes } from './content-hashes';
import type { Db } from './database';
import { exclusively } from './dialect';
import { demo } from './demo-content';
import { doneBy, rehearseMold, type RehearsedMold } from './demo-jobs';
import { DEMO_MOLDS } from './demo-molds';
import { writeJob } from './demo-write';
import { savePattern } from './patterns.repository';
import { addPerson } from './people.repository';
import { saveSheet } from './sheets.repository';
import { getShop, saveShop } from './shop.repository';
import { trainDemo } from './training/demo-training';

/** Names, roles and PINs of the invented people, for the sign-in page of the demo shop, and only there. */
export function demoPins(): Array<Pick<DemoPerson, 'name' | 'role' | 'pin'>> {
	return demo.people.map(({ name, role, pin }) => ({ name, role, pin }));
}

/**
 * Fills an empty store with the invented shop: people, sheets, patterns, and molds in different phases
 * whose windows are open at `at`. All of it or nothing; a store that has a shop is left as it is.
 */
export async function seedDemo(db: Db, at: string): Promise<void> {
	await exclusively(db, 'shop', async (trx) => {
		if (await getShop(trx)) return;
		await saveShop(trx, demo.shop, at);
		// Hashing PINs keeps other threads busy for a second; the molds are rehearsed meanwhile.
		const [personIds, molds] = await Promise.all([hirePeople(trx, at), rehearseAll(at)]);
		await trainDemo(trx, { personIds, at });
		for (const sheet of demo.sheets) await saveSheet(trx, sheet);
		for (const { id, pattern } of demo.patterns) await savePattern(trx, { id, pattern, at });
		for (const mold of molds) await writeJob(trx, doneBy(mold, personIds));
	});
}

async function rehearseAll(at: string): Promise<RehearsedMold[]> {
	const content = contentHashes();
	return DEMO_MOLDS.map((mold) => rehearseMold(demo, mold, { at, content }));
}

/** Adds the invented people. @returns ids in the store by ids in the demo */
async function hirePeople(trx: Db, at: string): Promise<Map<string, string>> {
	const hired = demo.people.map(async ({ id, name, role, pin }) => {
		const person = await addPerson(trx, { name, role, pin }, at);
		return [id, person.id] as const;
	});
	return new Map(await Promise.all(hired));
}
