/// <reference types="@sveltejs/kit" />
/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
import { build, files, version } from '$service-worker';
import { openKept } from './lib/device/keep/kept-database';
import { titleIn } from './lib/device/keep/kept-job';

const worker = self as unknown as ServiceWorkerGlobalScope;
const APP = `app ${version}`;
/** Pages as they were last seen: the benches opened on this device, and the reading room. */
const PAGES = 'pages';
const APART = '/apart.html';
const READING_ROOM = '/read';
const assets = new Set([...build, ...files]);

worker.addEventListener('install', (event) => {
	event.waitUntil(caches.open(APP).then((cache) => cache.addAll([...assets])));
});

worker.addEventListener('activate', (event) => {
	event.waitUntil(
		(async () => {
			const old = (await caches.keys()).filter((name) => name !== APP && name !== PAGES);
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
	// Whoever signs out leaves no page behind for the next one at a shared bench.
	if (url.pathname === '/sign-out') return void event.waitUntil(forgetPages());
	if (request.method !== 'GET') return;
	if (assets.has(url.pathname)) return event.respondWith(asset(url.pathname, request));
	if (request.mode === 'navigate') event.respondWith(page(request, url));
});

async function asset(path: string, request: Request): Promise<Response> {
	return (await (await caches.open(APP)).match(path)) ?? fetch(request);
}

function isKept(path: string): boolean {
	return /^\/jobs\/[^/]+\/bench$/.test(path) || path === READING_ROOM || path.startsWith('/read/');
}

/** The page from the server, or as it was last seen when no answer comes. */
async function page(request: Request, url: URL): Promise<Response> {
	try {
		const answer = await fetch(request);
		if (answer.ok && !answer.redirected && isKept(url.pathname)) {
			await (await caches.open(PAGES)).put(url.pathname, answer.clone());
		}
		return answer;
	} catch (error) {
		const seen = await (await caches.open(PAGES)).match(url.pathname);
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

async function forgetPages(): Promise<void> {
	await caches.delete(PAGES);
	const kept = await openKept().catch(() => null);
	await kept?.clear('jobs');
}

/** The stored page with one place in it changed. */
async function rewritten(stored: Response, from: string, to: string): Promise<Response> {
	const html = (await stored.text()).replace(from, () => to);
	const headers = new Headers(stored.headers);
	headers.delete('content-length');
	headers.delete('content-encoding');
	return new Response(html, { status: stored.status, headers });
}

/** The reading room is for the moment something went wrong, with the line down too. */
async function keepReadingRoom(): Promise<void> {
	const cache = await caches.open(PAGES);
	const room = await fetch(READING_ROOM).catch(() => null);
	if (!room?.ok) return;
	await cache.put(READING_ROOM, room.clone());
	const paths = new Set(
		[...(await room.text()).matchAll(/href="(\/read\/[^"#?]+)"/g)].map((m) => m[1])
	);
	for (const path of paths) {
		if (path === undefined) continue;
		// One after another: people are working over the same line.
		const text = await fetch(path).catch(() => null);
		if (text?.ok && !text.redirected) await cache.put(path, text);
	}
}
