import type { RequestEvent } from '@sveltejs/kit';
import { beforeEach, expect, test, vi } from 'vitest';

beforeEach(() => {
	vi.resetModules();
	vi.restoreAllMocks();
	vi.unstubAllEnvs();
});

const SOCKET = { req: { socket: { remoteAddress: '192.0.2.7' } } };

function eventOf(getClientAddress: () => string, headers: HeadersInit = {}, platform?: object) {
	const request = new Request('http://localhost/healthz', { headers });
	return { request, getClientAddress, platform, locals: {} } as unknown as RequestEvent;
}

async function guard(event: RequestEvent) {
	const { guardAddress } = await import('../../src/lib/server/client-address');
	guardAddress(event);
	return event;
}

function absent(): string {
	throw new Error('Address header was specified but is absent from request');
}

test('a probe without the proxy’s header is answered, and has the address of its own line', async () => {
	const { log } = await import('../../src/lib/server/log');
	const warn = vi.spyOn(log, 'warn').mockImplementation(() => {});
	const event = await guard(eventOf(absent, {}, SOCKET));
	expect(event.locals.address).toBe('192.0.2.7');
	expect(event.getClientAddress()).toBe('192.0.2.7');
	expect(warn).toHaveBeenCalledOnce();
	expect((await guard(eventOf(absent))).locals.address).toBe('unknown');
});

test('the address is asked for only where it is used, and the header’s goes before the line’s', async () => {
	const ask = vi.fn(() => '198.51.100.4');
	const event = await guard(eventOf(ask, {}, SOCKET));
	expect(ask).not.toHaveBeenCalled();
	expect(event.locals.address).toBe('198.51.100.4');
});

test('a proxy that the server was not told of is said once in the log; one it was told of never', async () => {
	const { log } = await import('../../src/lib/server/log');
	const warn = vi.spyOn(log, 'warn').mockImplementation(() => {});
	const forwarded = () => eventOf(() => '192.0.2.1', { 'x-forwarded-for': '203.0.113.9' });
	await guard(eventOf(() => '192.0.2.1'));
	expect(warn).not.toHaveBeenCalled();
	vi.stubEnv('ADDRESS_HEADER', 'x-forwarded-for');
	await guard(forwarded());
	expect(warn).not.toHaveBeenCalled();
	vi.stubEnv('ADDRESS_HEADER', '');
	await guard(forwarded());
	await guard(forwarded());
	expect(warn).toHaveBeenCalledOnce();
	expect(warn.mock.calls[0]?.[0]).toMatch(/ADDRESS_HEADER=x-forwarded-for and XFF_DEPTH/);
});
