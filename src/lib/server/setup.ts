import type { Shop } from '$lib/core/plan/shop';
import type { Db } from './database';
import { exclusively } from './dialect';
import { addPerson, type Person } from './people.repository';
import { getShop, saveShop } from './shop.repository';

export interface NewShop {
	shop: Shop;
	owner: { name: string; pin: string };
	at: string;
}

/**
 * Sets up a shop with its first person: its owner, who signs and looks after the shop. The first to come wins.
 *
 * @returns the owner, or null when there is a shop already
 * @throws ZodError when the shop, name or PIN break their schemas; parse the form first
 */
export async function createShop(db: Db, { shop, owner, at }: NewShop): Promise<Person | null> {
	return exclusively(db, 'shop', async (trx) => {
		if (await getShop(trx)) return null;
		await saveShop(trx, shop, at);
		return addPerson(trx, { ...owner, role: 'owner' }, at);
	});
}
