import { shopSchema, type Shop } from '$lib/core/plan/shop';
import { now } from './clock';
import type { Db } from './database';
import { keptQuery } from './kept-query';

/** The shop as it was last read, by its text: every request asks for it, and it seldom changes. */
const lastRead = new WeakMap<Db, { body: string; shop: Shop }>();

const shopRow = keptQuery((db) => db.selectFrom('shop').select('body'));

/** The shop, or null before it was set up. */
export async function getShop(db: Db): Promise<Shop | null> {
	const [row] = await shopRow(db, {});
	if (!row) return null;
	const kept = lastRead.get(db);
	if (kept?.body === row.body) return kept.shop;
	const shop = shopSchema.parse(JSON.parse(row.body));
	lastRead.set(db, { body: row.body, shop });
	return shop;
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
