import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { canonicalJson } from '../../src/lib/core/log/canonical';
import { exportRecord } from '../../src/lib/server/record';
import { recordSchema } from '../../src/lib/server/record-schema';
import { AT, storedJob, tempFolder } from '../fixtures/server-store';
import { newPlace, openPlace, testStore } from '../fixtures/test-store';

const verifier = fileURLToPath(new URL('../../scripts/verify.mjs', import.meta.url));
const { faultOf } = (await import(verifier)) as { faultOf: (text: string) => string | null };

let text = '';
beforeAll(async () => {
	const db = await openedStore();
	text = canonicalJson(await exportRecord(db, 'job-00001', AT));
	await db.destroy();
});

async function openedStore() {
	const db = await openPlace(await newPlace());
	await storedJob(db, 'end');
	return db;
}

/** The record as an object that may be tampered with, and back to the text an exporter would write. */
function tampered(change: (record: Record<string, unknown> & { events: Event[] }) => void): string {
	const record = JSON.parse(text) as Record<string, unknown> & { events: Event[] };
	change(record);
	return canonicalJson(record);
}
type Event = Record<string, unknown> & { seq: number; event: Record<string, unknown> };

test('a whole record verifies and fits its published schema', () => {
	expect(faultOf(text)).toBeNull();
	expect(recordSchema.safeParse(JSON.parse(text)).error).toBeUndefined();
});

test('any one byte changed anywhere in a record is found', () => {
	const bytes = new TextEncoder().encode(text);
	const decoder = new TextDecoder('utf-8', { ignoreBOM: true });
	fc.assert(
		fc.property(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), (at, flip) => {
			const changed = bytes.slice();
			changed[at] = (changed[at] ?? 0) ^ flip;
			expect(faultOf(decoder.decode(changed))).not.toBeNull();
		}),
		{ numRuns: 400 }
	);
});

test('an event removed, swapped or repeated is found, even in a well-formed record', () => {
	const count = (JSON.parse(text) as { events: unknown[] }).events.length;
	fc.assert(
		fc.property(fc.nat(count - 1), fc.nat(count - 1), (i, j) => {
			const removed = tampered((r) => r.events.splice(i, 1));
			expect(faultOf(removed)).not.toBeNull();
			const repeated = tampered((r) =>
				r.events.splice(j, 0, structuredClone(r.events[i] as Event))
			);
			expect(faultOf(repeated)).not.toBeNull();
			if (i === j) return;
			const swapped = tampered((r) => {
				[r.events[i], r.events[j]] = [r.events[j] as Event, r.events[i] as Event];
			});
			expect(faultOf(swapped)).not.toBeNull();
		}),
		{ numRuns: 60 }
	);
});

test.each([
	['a person renamed', (r: Record<string, unknown>) => (r.people = { x: 'Somebody else' })],
	['another shop', (r: Record<string, unknown>) => (r.shop = { name: 'Elsewhere', isDemo: false })],
	['another day', (r: Record<string, unknown>) => (r.exportedAt = '2020-01-01T00:00:00Z')]
])('%s is found, though it stands outside the chain', (_what, change) => {
	expect(faultOf(tampered(change))).toBe('the record does not match its hash');
});

test('the verifier says so and exits with 1 when a record was altered, 0 when it is whole', () => {
	const file = join(tempFolder(), 'record.json');
	const verify = () => spawnSync(process.execPath, [verifier, file], { encoding: 'utf8' });
	writeFileSync(file, text);
	expect(verify()).toMatchObject({ status: 0, stdout: expect.stringMatching(/^VERIFIED: /) });
	writeFileSync(file, text.replace('"seq":3', '"seq":4'));
	expect(verify()).toMatchObject({ status: 1, stderr: expect.stringMatching(/^NOT VERIFIED: /) });
	writeFileSync(file, `${text}\n`);
	expect(verify().stderr).toContain('not as it was exported');
});

test('a job that is not there has no record', async () => {
	expect(await exportRecord(await testStore(), 'nowhere', AT)).toBeNull();
});
