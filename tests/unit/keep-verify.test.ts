import { readFileSync, writeFileSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { sealEvent } from '../../src/lib/core/log/chain';
import { exportShop } from '../../src/lib/server/keep/export-shop';
import { headListText, verifyStore } from '../../src/lib/server/keep/verify-store';
import { exportRecord } from '../../src/lib/server/record';
import { canonicalJson, sha256Hex } from '../../src/lib/core/log/canonical';
import { fillShop } from '../fixtures/filled-shop';
import { AT, tempFolder } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

const verifier = fileURLToPath(new URL('../../scripts/verify.mjs', import.meta.url));

/** What the verifier says as a program of its own, in a folder without any of our libraries. */
function verify(...files: string[]) {
	const { status, stdout, stderr } = spawnSync(process.execPath, [verifier, ...files], {
		cwd: tempFolder(),
		encoding: 'utf8'
	});
	return { status, said: stdout + stderr };
}

async function shopFiles() {
	const db = await testStore();
	const { jobId } = await fillShop(db);
	const folder = tempFolder();
	const paths = {
		record: join(folder, 'record.json'),
		heads: join(folder, 'heads.json'),
		shop: join(folder, 'shop.zip'),
		other: join(folder, 'other.json')
	};
	const record = await exportRecord(db, jobId, AT);
	if (!record) throw new Error('no record');
	writeFileSync(paths.record, canonicalJson(record));
	const { heads } = await verifyStore(db);
	writeFileSync(paths.heads, headListText(heads, 'Test shop', AT));
	await exportShop(db, { to: paths.shop, at: AT, withPins: false });
	return { record, jobId, paths, heads: paths.heads, shop: paths.shop, other: paths.other };
}

/** The same log with one entry changed and every seal after it made anew, as somebody with the database could. */
function rewritten(record: Awaited<ReturnType<typeof shopFiles>>['record']): string {
	let prevHash = record.events[0]?.prevHash ?? '';
	const events = record.events.map((stored, index) => {
		const recordedAt = index === 5 ? '2026-03-02T14:59:59.000Z' : stored.recordedAt;
		const sealed = sealEvent({ ...stored, recordedAt, prevHash });
		prevHash = sealed.hash;
		return sealed;
	});
	const rest: Record<string, unknown> = { ...record, events, headHash: prevHash };
	delete rest.recordHash;
	return canonicalJson({ ...rest, recordHash: sha256Hex(canonicalJson(rest)) });
}

test('a record, a list of heads and a whole shop are verified by one file', async () => {
	const files = await shopFiles();
	const { heads, shop } = files;
	const record = files.paths.record;
	expect(verify(record)).toEqual({ status: 0, said: expect.stringMatching(/^VERIFIED: /) });
	expect(verify(heads)).toEqual({ status: 0, said: expect.stringMatching(/heads of 1 molds/) });
	expect(verify(shop, heads)).toEqual({
		status: 0,
		said: expect.stringMatching(/1 molds[\s\S]*Nothing that the list knows was rewritten/)
	});
});

test('a log rewritten whole is whole by itself, and shows against a list kept elsewhere', async () => {
	const files = await shopFiles();
	writeFileSync(files.other, rewritten(files.record));
	expect(verify(files.other).status).toBe(0);
	expect(verify(files.other, files.heads)).toEqual({
		status: 1,
		said: expect.stringMatching(/NOT VERIFIED: mold job-00001 was rewritten since/)
	});
});

test('a shop without a mold that the list knows, and a list that was altered, are not verified', async () => {
	const { heads, shop, other, jobId } = await shopFiles();
	const known = [{ jobId, seq: 999, headHash: 'f'.repeat(64) }];
	writeFileSync(other, headListText(known, 'Test shop', AT));
	expect(verify(shop, other).said).toMatch(/was cut: on .* it had 999 events/);
	writeFileSync(other, headListText([{ jobId: 'job-gone', seq: 1, headHash: 'f' }], 'x', AT));
	expect(verify(shop, other).said).toMatch(/mold job-gone is missing/);
	writeFileSync(other, readFileSync(heads, 'utf8').replace('Test shop', 'Best shop'));
	expect(verify(shop, other)).toMatchObject({ status: 1 });
	const bytes = readFileSync(shop);
	// Longer than any part of a zip that says nothing, such as a date.
	for (let at = 2000; at < 2064; at += 1) bytes[at] = (bytes[at] ?? 0) ^ 1;
	writeFileSync(other, bytes);
	expect(verify(other)).toMatchObject({ status: 1, said: expect.stringMatching(/NOT VERIFIED/) });
});
