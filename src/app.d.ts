import type { Shop } from '$lib/core/plan/shop';
import type { Db } from '$lib/server/database';
import type { Role } from '$lib/server/people.repository';

interface SignedIn {
	id: string;
	name: string;
	role: Role;
}

declare global {
	namespace App {
		interface Locals {
			db: Db;
			person: SignedIn | null;
			shop: Shop | null;
			requestId: string;
			/** Network address the request came from. */
			address: string;
			/** The schema this server brought the store to when it started. */
			schema: number;
		}
		interface PageData {
			person?: SignedIn | null;
			shop?: Shop | null;
			/** "bench" leaves out the shop's frame, for one step at a time. */
			chrome?: 'bench';
		}
		interface Error {
			message: string;
			requestId?: string;
		}
	}
}

export {};
