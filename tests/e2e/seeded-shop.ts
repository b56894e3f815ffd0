import { randomUUID } from 'node:crypto';
import type { Shop } from '../../src/lib/core/plan/shop';
import type { Db } from '../../src/lib/server/database';
import { createJob } from '../../src/lib/server/jobs.repository';
import { addPerson, type Person } from '../../src/lib/server/people.repository';
import { saveShop } from '../../src/lib/server/shop.repository';
import { openStore } from '../../src/lib/server/store';
import { testInputs } from '../fixtures/materials';
import { handPlan } from '../fixtures/plan';

export const SUPERVISOR_PIN = '2468';
export const WORKER_PIN = '1357';

export interface SeededShop {
	supervisor: Person;
	worker: Person;
	jobIds: string[];
}

/** Puts a shop with two people and a few opened jobs into a data folder, past the screens. */
export async function seedShop(
	dataDir: string,
	{ jobs = 1, at = new Date().toISOString() }: { jobs?: number; at?: string } = {}
): Promise<SeededShop> {
	const db = await openStore(dataDir);
	const seeded = await fillShop(db, { jobs, at });
	await db.destroy();
	return seeded;
}

/** Puts the same into an open store that has no shop yet. */
export async function fillShop(
	db: Db,
	{ jobs = 1, at = new Date().toISOString() }: { jobs?: number; at?: string } = {}
): Promise<SeededShop> {
	const shop: Shop = testInputs().shop;
	const pin = SUPERVISOR_PIN;
	// A shop from before its first person was its owner.
	await saveShop(db, shop, at);
	const supervisor = await addPerson(db, { name: 'Ada Quill', role: 'supervisor', pin }, at);
	const worker = await addPerson(db, { name: 'Ben Marsh', role: 'mold maker', pin: WORKER_PIN });
	const jobIds: string[] = [];
	for (let n = 0; n < jobs; n++) {
		const id = randomUUID();
		jobIds.push(await createJob(db, { id, plan: handPlan(), by: supervisor.id, at, content: {} }));
	}
	return { supervisor, worker, jobIds };
}

/** Signs in through the API. @returns the value of the "cookie" header to send */
export async function signIn(url: string, personId: string, pin: string): Promise<string> {
	const response = await fetch(`${url}/api/session`, {
		method: 'POST',
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify({ personId, pin })
	});
	if (response.status !== 201) throw new Error(`signing in: ${await response.text()}`);
	return response.headers
		.getSetCookie()
		.map((cookie) => cookie.split(';')[0])
		.join('; ');
}

/** Signs in somebody of this name. @returns cookies for a browser's context */
export async function signInByName(
	{ url }: { url: string },
	{ name, pin }: { name: string; pin: string }
): Promise<Array<{ url: string; name: string; value: string }>> {
	const { people } = (await (await fetch(`${url}/api/session`)).json()) as {
		people: Array<{ id: string; name: string }>;
	};
	const personId = people.find((person) => person.name === name)?.id;
	if (!personId) throw new Error(`nobody here is called ${name}`);
	const cookie = await signIn(url, personId, pin);
	const [key = '', value = ''] = cookie.split('=');
	return [{ url, name: key, value }];
}
