import { shopSchema, type Shop } from '$lib/core/plan/shop';
import { now } from './clock';
import type { Db } from './database';

/** The shop, or null before it was set up. */
export async function getShop(db: Db): Promise<Shop | null> {
	const row = await db.selectFrom('shop').select('body').executeTakeFirst();
	return row ? shopSchema.parse(JSON.parse(row.body)) : null;
}

/** @throws ZodError when the shop breaks its schema */
export async function saveShop(db: Db, shop: Shop, at = now()): Promise<void> {
	const row = { body: JSON.stringify(shopSchema.parse(shop)), updated_at: at };
	await db
		.insertInto('shop')
		.values({ id: 1, ...row })
		.onConflict((conflict) => conflict.column('id').doUpdateSet(row))
		.execute();
}
