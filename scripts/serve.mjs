// Serves build/ on a plain http server of our own. `npm start` builds first and then runs this.
import { createServer } from 'node:http';
import { networkInterfaces } from 'node:os';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { SECURITY_HEADERS, trustedHeaders } from './security-headers.mjs';

const port = Number(process.env.PORT ?? 4310);
const host = process.env.HOST ?? '0.0.0.0';

// The framework's server assumes https unless a header says otherwise; a shop's network has none.
process.env.PROTOCOL_HEADER ??= 'x-forwarded-proto';
process.env.BODY_SIZE_LIMIT ??= '8M';
// What the app starts for a backup, beside itself.
process.env.GLOVEWRIGHT_TOOL ??= fileURLToPath(new URL('tool.mjs', import.meta.url));

/** One sentence for the person who started it, and out. */
function stop(sentence) {
	console.error(sentence);
	process.exit(1);
}

if (!Number.isInteger(port) || port < 0 || port > 65_535) {
	stop(`PORT is "${process.env.PORT}"; accepted: a whole number from 0 to 65535.`);
}

async function loadApp() {
	try {
		return await import('../build/handler.js');
	} catch (error) {
		if (error?.name === 'StartError') stop(error.message);
		if (error?.code === 'ERR_MODULE_NOT_FOUND') {
			stop(`The app is not built or not installed (${error.message}). Run npm start.`);
		}
		throw error;
	}
}

const { handler } = await loadApp();

const server = createServer((request, response) => {
	request.headers['x-forwarded-proto'] ??= 'http';
	const isHttps = request.headers['x-forwarded-proto'] === 'https';
	const headers = { ...SECURITY_HEADERS, ...trustedHeaders(isHttps, request.headers.host ?? '') };
	for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
	handler(request, response, () => {
		response.statusCode = 404;
		response.end('Not found');
	});
});

// A sender that dribbles is let go: headers within 20 s, everything within 2 min.
server.headersTimeout = 20_000;
server.requestTimeout = 120_000;
// Longer than a proxy keeps a line it may use again (60 s is common): a request sent as the line is shut is lost.
server.keepAliveTimeout = 75_000;

server.on('error', (error) => {
	if (error.code === 'EADDRINUSE') {
		stop(`Port ${port} is taken by another program. Stop it, or set PORT to another number.`);
	}
	if (error.code === 'EACCES')
		stop(`This user may not open port ${port}. Set PORT to another one.`);
	stop(`The server cannot listen on ${host}:${port}: ${error.message}.`);
});

function addresses(actualPort) {
	if (host !== '0.0.0.0' && host !== '::') return [`http://${host}:${actualPort}`];
	const lan = Object.values(networkInterfaces())
		.flat()
		.filter((entry) => entry && entry.family === 'IPv4' && !entry.internal)
		.map((entry) => `http://${entry.address}:${actualPort}`);
	return [`http://localhost:${actualPort}`, ...lan];
}

server.listen(port, host, () => {
	const [here, ...lan] = addresses(server.address().port);
	console.log(`Glovewright is running at ${here}`);
	for (const there of lan) console.log(`  on the shop's network at ${there}`);
});

let stoppingSinceMs = 0;
function shutDown() {
	if (stoppingSinceMs > 0) {
		// A terminal and the parent process both pass one Ctrl-C on; only a later one is a second.
		if (performance.now() - stoppingSinceMs > 1000) process.exit(1);
		return;
	}
	stoppingSinceMs = performance.now();
	// Ends the open streams; requests under way are finished.
	process.emit('sveltekit:shutdown');
	server.close(() => {
		// The app closes its database, then says so.
		process.emit('glovewright:stopped', () => process.exit(0));
	});
	server.closeIdleConnections();
	setTimeout(() => server.closeAllConnections(), 5000).unref();
}
process.on('SIGTERM', shutDown);
process.on('SIGINT', shutDown);
