const ALWAYS: Record<string, string> = {
	'x-content-type-options': 'nosniff',
	'x-frame-options': 'DENY',
	'referrer-policy': 'same-origin',
	'permissions-policy':
		'camera=(self), screen-wake-lock=(self), geolocation=(), microphone=(), payment=(), usb=()',
	'cross-origin-resource-policy': 'same-origin',
	'x-permitted-cross-domain-policies': 'none'
};

/** Headers every answer carries beside the content security policy, which the framework sets. */
export function setSecurityHeaders(headers: Headers, url: URL): void {
	for (const [name, value] of Object.entries(ALWAYS)) headers.set(name, value);
	const isTrusted = url.protocol === 'https:' || url.hostname === 'localhost';
	// Browsers ignore it, and complain, on plain http elsewhere.
	if (isTrusted) headers.set('cross-origin-opener-policy', 'same-origin');
	if (url.protocol === 'https:') headers.set('strict-transport-security', 'max-age=31536000');
}
