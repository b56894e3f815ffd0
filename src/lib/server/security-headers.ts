import { SECURITY_HEADERS, trustedHeaders } from '../../../scripts/security-headers.mjs';

/** An answer that is no page runs nothing, wherever it is opened. */
const NO_PAGE_POLICY =
	"default-src 'none'; img-src 'self'; frame-ancestors 'none'; base-uri 'none'";

/** Headers every answer carries. A page brings the policy the framework made for it, with its nonce. */
export function setSecurityHeaders(headers: Headers, url: URL): void {
	const policy = headers.get('content-security-policy') ?? NO_PAGE_POLICY;
	const trusted = trustedHeaders(url.protocol === 'https:', url.host);
	for (const [name, value] of Object.entries({ ...SECURITY_HEADERS, ...trusted })) {
		headers.set(name, value);
	}
	headers.set('content-security-policy', policy);
}
