/// <reference types="@sveltejs/kit" />
/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
import { build, files, version } from '$service-worker';
import { openKept } from './lib/device/keep/kept-database';
import { titleIn } from './lib/device/keep/kept-job';
import { pagesCache } from './lib/device/keep/pages-cache';

const worker = self as unknown as ServiceWorkerGlobalScope;
const APP = `app ${version}`;
/** Benches as they were last seen on this device; gone when somebody signs in or out. */
const PAGES = pagesCache(version);
const READING = `reading ${version}`;
const APART = '/apart.html';
const ROOM = '/read';
const PHOTOS = '/api/photos/';
const assets = new Set([...build, ...files]);

worker.addEventListener('install', (event) => {
	event.waitUntil(caches.open(APP).then((cache) => cache.addAll([...assets])));
});

worker.addEventListener('activate', (event) => {
	event.waitUntil(
		(async () => {
			const names = await caches.keys();
			const old = names.filter((name) => ![APP, PAGES, READING].includes(name));
			// A page names the files it was built with, so those kept by an earlier app are fetched anew.
			await refetch(old.filter((name) => name.startsWith('pages ')));
			await Promise.all(old.map((name) => caches.delete(name)));
			await worker.clients.claim();
			await keepReadingRoom();
		})()
	);
});

worker.addEventListener('fetch', (event) => {
	const { request } = event;
	const url = new URL(request.url);
	if (url.origin !== worker.location.origin) return;
	if (request.method !== 'GET') {
		// The next person at a shared bench finds nobody else's page.
		const isChange = ['/sign-in', '/sign-out', '/unlock'].includes(url.pathname);
		if (isChange) event.respondWith(fetch(request).finally(() => void forgetPages()));
		return;
	}
	const isAsset = assets.has(url.pathname) || url.pathname.startsWith('/_app/immutable/');
	if (isAsset) return event.respondWith(asset(url.pathname, request));
	if (url.pathname.startsWith(PHOTOS)) return event.respondWith(photo(request, url));
	if (request.mode === 'navigate') event.respondWith(page(request, url));
});

/** From whichever app this device has, since a page may come from a newer one than this worker. */
async function asset(path: string, request: Request): Promise<Response> {
	return (await caches.match(path)) ?? fetch(request);
}

/** A photo from the server, or as it waits on this device to be sent. */
async function photo(request: Request, { pathname }: URL): Promise<Response> {
	const kept = await openKept().catch(() => null);
	const waiting = await kept?.get('photos', pathname.slice(PHOTOS.length)).catch(() => undefined);
	kept?.close();
	return waiting ? new Response(waiting) : fetch(request);
}

function cacheFor(path: string): string | null {
	if (/^\/jobs\/[^/]+\/bench$/.test(path)) return PAGES;
	return path === ROOM || path.startsWith(`${ROOM}/`) ? READING : null;
}

/** The page from the server, or as it was last seen when no answer comes. */
async function page(request: Request, { pathname }: URL): Promise<Response> {
	const name = cacheFor(pathname);
	try {
		const answer = await fetch(request);
		if (name && answer.ok && !answer.redirected) {
			await (await caches.open(name)).put(pathname, answer.clone());
		}
		return answer;
	} catch (error) {
		const seen = name && (await (await caches.open(name)).match(pathname));
		// Marked, since the instants in it are old.
		if (seen) return rewritten(seen, '<html ', '<html data-kept ');
		const apart = await (await caches.open(APP)).match(APART);
		if (apart) return rewritten(apart, '<!-- kept -->', await benchList());
		throw error;
	}
}

/** The molds that can be worked on without the server, as links to their benches. */
async function benchList(): Promise<string> {
	const seen = new Set(
		(await (await caches.open(PAGES)).keys()).map(({ url }) => new URL(url).pathname)
	);
	const jobs = await openKept()
		.then((kept) => kept.getAll('jobs'))
		.catch(() => []);
	const links = jobs
		.map(({ jobId, log }) => ({ path: `/jobs/${jobId}/bench`, title: titleIn(log) }))
		.filter(({ path }) => seen.has(path))
		.map(({ path, title }) => `<li><a href="${path}">${inHtml(title)}</a></li>`);
	return links.length === 0
		? '<p>No mold was opened on this device before the line dropped.</p>'
		: `<p>These molds were opened on this device. Work on them goes on:</p><ul>${links.join('')}</ul>`;
}

function inHtml(text: string): string {
	return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** What waits to be sent stays; it is not for the next person to lose. */
async function forgetPages(): Promise<void> {
	await caches.delete(PAGES);
	const kept = await openKept().catch(() => null);
	await kept?.clear('jobs');
	kept?.close();
}

/** The stored page with one place in it changed. */
async function rewritten(stored: Response, from: string, to: string): Promise<Response> {
	const html = (await stored.text()).replace(from, () => to);
	const headers = new Headers(stored.headers);
	headers.delete('content-length');
	headers.delete('content-encoding');
	return new Response(html, { status: stored.status, headers });
}

async function refetch(olds: readonly string[]): Promise<void> {
	for (const name of olds) {
		for (const { url } of await (await caches.open(name)).keys()) {
			await keep(PAGES, new URL(url).pathname);
		}
	}
}

async function keep(name: string, path: string): Promise<Response | null> {
	const answer = await fetch(path, { headers: { accept: 'text/html' } }).catch(() => null);
	if (!answer?.ok || answer.redirected) return null;
	await (await caches.open(name)).put(path, answer.clone());
	return answer;
}

/** The reading room is for the moment something went wrong, with the line down too. */
async function keepReadingRoom(): Promise<void> {
	const room = await keep(READING, ROOM);
	if (!room) return;
	const found = (await room.text()).matchAll(/href="(\/read\/[^"#?]+)"/g);
	// One after another: people are working over the same line.
	for (const path of new Set([...found].map(([, href]) => href))) {
		if (path !== undefined) await keep(READING, path);
	}
}
