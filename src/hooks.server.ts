import { redirect, type Handle, type HandleServerError, type ServerInit } from '@sveltejs/kit';
import { apiAnswer, isApi, refuseForeignOrigin } from '$lib/server/api-gate';
import { now } from '$lib/server/clock';
import type { Db } from '$lib/server/database';
import { decodedPath, gateOf } from '$lib/server/gate';
import { DamagedRecord } from '$lib/server/job-file';
import { guardForm } from '$lib/server/form-guard';
import { closeLive } from '$lib/server/live';
import { setSecurityHeaders } from '$lib/server/security-headers';
import { personOfSession, SESSION_COOKIE } from '$lib/server/sessions';
import { getShop } from '$lib/server/shop.repository';
import { storageProblem } from '$lib/server/storage-problem';
import { dataFolder, openStore } from '$lib/server/store';
import { warmJobs } from '$lib/server/warm-jobs';

let db: Db;

export const init: ServerInit = async () => {
	db = await openStore(dataFolder());
	process.once('sveltekit:shutdown', closeLive);
	const warming = new AbortController();
	// Not awaited: the server listens meanwhile. What cannot be read now is said when it is asked for.
	warmJobs(db, warming.signal).catch((error: unknown) =>
		console.error('reading jobs ahead:', error)
	);
	process.once('glovewright:stopped', () => {
		warming.abort();
		void db.destroy();
	});
};

export const handle: Handle = async ({ event, resolve }) => {
	const { locals, url } = event;
	locals.db = db;
	locals.requestId = crypto.randomUUID();
	guardForm(event.request);
	locals.shop = await getShop(db);
	const person = await personOfSession(db, event.cookies.get(SESSION_COOKIE), now());
	locals.person = person && { id: person.id, name: person.name, role: person.role };

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
	const response =
		refuseForeignOrigin(event) ?? (await apiAnswer(event, gate, () => resolve(event)));
	setSecurityHeaders(response.headers, url);
	response.headers.set('x-request-id', locals.requestId);
	if (!response.headers.has('cache-control')) response.headers.set('cache-control', 'no-store');
	return response;
};

export const handleError: HandleServerError = ({ error, event, status, message }) => {
	const { requestId } = event.locals;
	const known =
		error instanceof DamagedRecord ? error.message : (storageProblem(error)?.detail ?? message);
	if (status !== 404) console.error(`request ${requestId}:`, error);
	return { message: known, requestId };
};
