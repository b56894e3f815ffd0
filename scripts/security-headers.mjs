/**
 * Headers of every answer, files and refusals included. Pages and the API replace the policy with their
 * own. The server sets them before anything else may answer.
 *
 * @type {Record<string, string>}
 */
export const SECURITY_HEADERS = {
	// For files: a worker is held by the policy of its own file.
	'content-security-policy':
		"default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'",
	'x-content-type-options': 'nosniff',
	'x-frame-options': 'DENY',
	'referrer-policy': 'same-origin',
	'permissions-policy':
		'camera=(self), screen-wake-lock=(self), geolocation=(), microphone=(), payment=(), usb=()',
	'cross-origin-resource-policy': 'same-origin',
	'x-permitted-cross-domain-policies': 'none'
};

/**
 * Those that only a trusted address takes; browsers ignore them, and complain, on plain http elsewhere.
 *
 * @param {boolean} isHttps
 * @param {string} host - name and port as the browser has them
 * @returns {Record<string, string>}
 */
export function trustedHeaders(isHttps, host) {
	const isTrusted = isHttps || /^localhost(:|$)/.test(host);
	return {
		...(isTrusted ? { 'cross-origin-opener-policy': 'same-origin' } : {}),
		...(isHttps ? { 'strict-transport-security': 'max-age=31536000' } : {})
	};
}
