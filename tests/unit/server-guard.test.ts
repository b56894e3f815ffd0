import { chmodSync } from 'node:fs';
import { expect, test } from 'vitest';
import { makeLog } from '../../src/lib/server/log';
import { RateLimiter, rateKindOf, RATES, ratesOf } from '../../src/lib/server/rate-limit';
import { readiness, schemaOf } from '../../src/lib/server/ready';
import { setSecurityHeaders } from '../../src/lib/server/security-headers';
import { tempFolder } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

const RATE = { burst: 3, perMin: 60 };

test('an address may send a burst, then goes on at its rate; others are not held up', () => {
	const limiter = new RateLimiter();
	const takes = [1, 2, 3, 4].map(() => limiter.take('a', RATE, 0));
	expect(takes).toEqual([0, 0, 0, 1]);
	expect(limiter.take('b', RATE, 0)).toBe(0);
	expect(limiter.take('a', RATE, 1000)).toBe(0);
	expect(limiter.take('a', RATE, 1000)).toBe(1);
	// A clock that went back gives nothing and takes nothing.
	expect(limiter.take('a', RATE, 0)).toBe(1);
});

test('what carries several acts counts as many, all or none', () => {
	const limiter = new RateLimiter();
	expect(limiter.take('a', RATE, 0, 2)).toBe(0);
	expect(limiter.take('a', RATE, 0, 2)).toBe(1);
	expect(limiter.take('a', RATE, 0)).toBe(0);
	// More than may ever come at once waits for a full bucket, not for ever.
	expect(limiter.take('a', RATE, 2000, 50)).toBe(1);
	expect(limiter.take('a', RATE, 3000, 50)).toBe(0);
	expect(limiter.take('a', RATE, 3000)).toBe(1);
});

test('over ten minutes no address gets more than its burst and its rate', () => {
	const limiter = new RateLimiter();
	let passed = 0;
	for (let ms = 0; ms < 600_000; ms += 100) {
		if (limiter.take('a', RATES.secret, ms) === 0) passed += 1;
	}
	expect(passed).toBeLessThanOrEqual(RATES.secret.burst + 10 * RATES.secret.perMin);
	expect(passed).toBeGreaterThan(10 * RATES.secret.perMin - 5);
});

test('whatever checks a PIN has the narrowest limit; the watches have none', () => {
	for (const path of [
		'/sign-in',
		'/new-pin',
		'/unlock',
		'/people',
		'/api/session',
		'/jobs/x/sign'
	]) {
		expect([path, rateKindOf('POST', path)]).toEqual([path, 'secret']);
	}
	expect(rateKindOf('POST', '/api/jobs/x/sign')).toBe('secret');
	expect(rateKindOf('POST', '/api/jobs/x/events')).toBe('write');
	expect(rateKindOf('GET', '/sign-in')).toBe('read');
	expect(rateKindOf('GET', '/healthz')).toBeNull();
	expect(rateKindOf('GET', '/readyz')).toBeNull();
});

test('a factor widens every limit; one that is no number changes none', () => {
	expect(ratesOf('10').write).toEqual({ burst: 3000, perMin: 9000 });
	for (const factor of ['', 'many', '0', '-1', 'Infinity']) expect(ratesOf(factor)).toEqual(RATES);
});

test('secrets and what a driver hangs on an error never reach the log', () => {
	const lines: string[] = [];
	const log = makeLog({ write: (line: string) => void lines.push(line) }, 'info');
	const error = Object.assign(new Error('duplicate key'), {
		code: '23505',
		detail: 'Key (pin_hash)=(scrypt$secret) exists',
		parameters: ['hunter2-hunter2']
	});
	log.error({ err: error, pin: '2468', body: { password: 'hunter2-hunter2' } }, 'a request failed');
	log.info({ requestId: 'r-1', path: '/x\n{"level":"fatal"}' }, 'request');
	expect(lines).toHaveLength(2);
	expect(lines.join('')).not.toMatch(/2468|hunter2|scrypt\$secret/);
	expect(JSON.parse(lines[0] ?? '')).toMatchObject({
		level: 'error',
		err: { code: '23505', message: 'duplicate key' },
		time: expect.stringMatching(/Z$/)
	});
	// A line break in what was asked for does not begin a line of its own.
	expect(JSON.parse(lines[1] ?? '')).toMatchObject({ requestId: 'r-1', level: 'info' });
});

test('an answer that brings no policy gets one that runs nothing; a page keeps its own', () => {
	const plain = new Headers();
	setSecurityHeaders(plain, new URL('http://shop.example/api/jobs'));
	expect(plain.get('content-security-policy')).toMatch(/^default-src 'none'/);
	expect(plain.get('strict-transport-security')).toBeNull();
	expect(plain.get('cross-origin-opener-policy')).toBeNull();
	const page = new Headers({ 'content-security-policy': "script-src 'nonce-x'" });
	setSecurityHeaders(page, new URL('https://shop.example/board'));
	expect(page.get('content-security-policy')).toBe("script-src 'nonce-x'");
	expect(page.get('strict-transport-security')).toMatch(/max-age=\d{8}/);
});

test('ready only with a store, its own schema and a folder to write to', async () => {
	const db = await testStore();
	const folder = tempFolder();
	const schema = (await schemaOf(db)) ?? 0;
	expect(schema).toBeGreaterThan(0);
	expect(await readiness(db, { folder, schema })).toMatchObject({ ready: true });

	const newer = await readiness(db, { folder, schema: schema - 1 });
	expect(newer).toMatchObject({ ready: false, checks: { schema: 'failed', store: 'ok' } });
	const gone = await readiness(db, { folder: `${folder}/gone`, schema });
	expect(gone).toMatchObject({ ready: false, checks: { folder: 'failed', space: 'failed' } });
	if (process.getuid?.() !== 0) {
		chmodSync(folder, 0o555);
		expect(await readiness(db, { folder, schema })).toMatchObject({ checks: { folder: 'failed' } });
		chmodSync(folder, 0o755);
	}
	await db.destroy();
	expect(await readiness(db, { folder, schema })).toMatchObject({
		ready: false,
		checks: { store: 'failed' }
	});
});
