import {
	redirect,
	type Handle,
	type HandleServerError,
	type RequestEvent,
	type ServerInit
} from '@sveltejs/kit';
import { localeFor } from '$lib/core/language/locale';
import { unnamedLine } from '$lib/screen/board/board-line';
import { apiAnswer, isApi } from '$lib/server/api-gate';
import { guardAddress } from '$lib/server/client-address';
import { now } from '$lib/server/clock';
import type { Db } from '$lib/server/database';
import { decodedPath, gateOf } from '$lib/server/gate';
import { DamagedRecord } from '$lib/server/job-file';
import { guardForm } from '$lib/server/form-guard';
import { scheduleBackups } from '$lib/server/keep/schedule';
import { closeLive } from '$lib/server/live';
import { followServers } from '$lib/server/live-servers';
import { log } from '$lib/server/log';
import { packed } from '$lib/server/packed';
import { beginStopping, schemaOf } from '$lib/server/ready';
import { turnAway } from '$lib/server/request-guard';
import { logged } from '$lib/server/request-log';
import { setSecurityHeaders } from '$lib/server/security-headers';
import { personOfSession, SESSION_COOKIE } from '$lib/server/sessions';
import { getShop } from '$lib/server/shop.repository';
import { storageProblem } from '$lib/server/storage-problem';
import { openConfiguredStore } from '$lib/server/store';
import { warmJobs } from '$lib/server/warm-jobs';

let db: Db;
let schema: number;

/** Answered before the store is asked for anything. */
const WATCHES = ['/healthz', '/readyz'];

export const init: ServerInit = async () => {
	db = await openConfiguredStore();
	const url = process.env.DATABASE_URL;
	const unfollow = url ? followServers(url) : async () => {};
	schema = (await schemaOf(db)) ?? 0;
	process.once('sveltekit:shutdown', () => {
		beginStopping();
		closeLive();
	});
	const warming = new AbortController();
	// Not awaited: the server listens meanwhile. What cannot be read now is said when it is asked for.
	warmJobs(db, unnamedLine, warming.signal).catch((error: unknown) =>
		log.error({ err: error }, 'reading jobs ahead')
	);
	const endBackups = scheduleBackups(db);
	process.once('glovewright:stopped', (ended: () => void) => {
		warming.abort();
		endBackups();
		Promise.all([unfollow(), db.destroy()])
			.catch((error: unknown) => log.error({ err: error }, 'closing the store'))
			.finally(ended);
	});
};

export const handle: Handle = ({ event, resolve }) => {
	const { locals } = event;
	locals.db = db;
	locals.schema = schema;
	locals.person = null;
	locals.shop = null;
	locals.locale = localeFor(event.request.headers.get('accept-language'));
	locals.isTranslated = false;
	locals.requestId = crypto.randomUUID();
	guardAddress(event);
	return logged(event, async () => {
		const isWatch = WATCHES.includes(event.url.pathname);
		const lead: typeof resolve = (led, options) => resolve(led, { ...options, preload });
		const response = isWatch
			? await resolve(event)
			: (turnAway(event) ?? (await throughGate(event, lead)));
		setSecurityHeaders(response.headers, event.url);
		response.headers.set('x-request-id', locals.requestId);
		if (!response.headers.has('cache-control')) response.headers.set('cache-control', 'no-store');
		return packed(response, event.request.headers.get('accept-encoding'));
	});
};

/** The page's scripts and styles, and of the letters the subset that every page is set in. */
function preload({ type, path }: { type: string; path: string }): boolean {
	return type === 'font' ? path.includes('next-latin-wght-normal') : type !== 'asset';
}

/** Finds out who asks, and leads on what may pass. */
async function throughGate(
	event: RequestEvent,
	resolve: Parameters<Handle>[0]['resolve']
): Promise<Response> {
	const { locals, url } = event;
	guardForm(event.request);
	locals.shop = await getShop(db);
	const person = await personOfSession(db, event.cookies.get(SESSION_COOKIE), now());
	locals.person = person && { id: person.id, name: person.name, role: person.role };
	locals.locale = person?.locale ?? locals.locale;

	const gate = gateOf(decodedPath(url), {
		shop: !!locals.shop,
		person: !!person,
		ownPin: !person?.pinGivenBy
	});
	if (gate === 'start') redirect(303, '/start');
	if (gate === 'sign in' || (gate === 'new pin' && !isApi(url))) {
		const next = event.request.method === 'GET' ? url.pathname + url.search : '/board';
		const page = gate === 'sign in' ? '/sign-in' : '/new-pin';
		redirect(303, `${page}?next=${encodeURIComponent(next)}`);
	}
	return apiAnswer(event, gate, () =>
		resolve(event, {
			transformPageChunk: ({ html }) =>
				locals.isTranslated
					? html.replace('<html lang="en"', `<html lang="${locals.locale}"`)
					: html
		})
	);
}

export const handleError: HandleServerError = ({ error, event, status, message }) => {
	const { requestId } = event.locals;
	const known =
		error instanceof DamagedRecord ? error.message : (storageProblem(error)?.detail ?? message);
	if (status !== 404) log.error({ requestId, err: error }, 'a request failed');
	return { message: known, requestId };
};
