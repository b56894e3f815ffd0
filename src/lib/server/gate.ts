/** Open to anybody, before a shop is set up and before signing in. */
const OPEN = ['/start', '/setup', '/sign-in', '/read', '/gallery', '/healthz', '/readyz'];
/** Open to visitors; of whoever signed in something is written there, so the PIN must be theirs. */
const OPEN_TO_VISITORS = ['/refresh'];
/** Open to whoever still has the PIN that somebody else gave them. */
const OPEN_WITH_GIVEN_PIN = ['/new-pin', '/sign-out'];
const OPEN_API = ['/api/openapi.json', '/api/schema', '/api/session'];

/**
 * The path as the router reads it, so that an encoded letter does not walk past the gate.
 *
 * @throws URIError when it cannot be decoded; `isDecodable` asks beforehand
 */
export function decodedPath(url: URL): string {
	return url.pathname.split('%25').map(decodeURI).join('%25');
}

/** Whether a path can be decoded at all. What cannot is no address, and the framework has no net below it. */
export function isDecodable(url: URL): boolean {
	try {
		decodedPath(url);
		return true;
	} catch {
		return false;
	}
}

export type Gate = 'pass' | 'start' | 'sign in' | 'no shop' | 'no person' | 'new pin';

/**
 * What stands before a path: pages lead to the start or to signing in, the API answers with a problem.
 */
export function gateOf(
	path: string,
	has: { shop: boolean; person: boolean; ownPin: boolean }
): Gate {
	const isApi = isUnder(path, '/api');
	if ((isApi ? OPEN_API : OPEN).some((open) => isUnder(path, open))) return 'pass';
	if (!has.person && OPEN_TO_VISITORS.some((open) => isUnder(path, open))) return 'pass';
	if (!has.shop) return isApi ? 'no shop' : 'start';
	if (!has.person) return isApi ? 'no person' : 'sign in';
	if (!has.ownPin && !OPEN_WITH_GIVEN_PIN.some((open) => isUnder(path, open))) return 'new pin';
	return 'pass';
}

function isUnder(path: string, root: string): boolean {
	return path === root || path.startsWith(`${root}/`);
}
