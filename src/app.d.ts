import type { IncomingMessage } from 'node:http';
import type { Locale } from '$lib/core/language/locale';
import type { ScreenWords } from '$lib/core/language/screen-words';
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
			/** The reader's language, and how they write numbers: as chosen, or as the browser asks. */
			locale: Locale;
			/** Whether the page at hand is in the reader's language; English otherwise. */
			isTranslated: boolean;
			/** Network address the request came from. */
			readonly address: string;
			/** The schema this server brought the store to when it started. */
			schema: number;
		}
		interface Platform {
			/** What came in, as the server itself has it; not in development. */
			req?: IncomingMessage;
		}
		interface PageData {
			person?: SignedIn | null;
			shop?: Shop | null;
			/** "bench" leaves out the shop's frame, for one step at a time; "wall" every control, for a screen that hangs. */
			chrome?: 'bench' | 'wall';
			locale?: Locale;
			/** The page is in the reader's language, frame and all; English otherwise. */
			isTranslated?: boolean;
			words?: ScreenWords;
		}
		interface Error {
			message: string;
			requestId?: string;
		}
	}
}

export {};
