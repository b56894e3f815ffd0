import { join } from 'node:path';
import { expect, test } from 'vitest';
import { canonicalJson } from '../../src/lib/core/log/canonical';
import { sealEvent } from '../../src/lib/core/log/chain';
import { exportShop } from '../../src/lib/server/keep/export-shop';
import { importShop, isEmpty } from '../../src/lib/server/keep/import-shop';
import { manifestHashOf, recordName, type Manifest } from '../../src/lib/server/keep/manifest';
import { ShopExport } from '../../src/lib/server/keep/read-export';
import { recordSchema } from '../../src/lib/server/record-schema';
import { ZipWriter } from '../../src/lib/server/keep/zip-writer';
import { fillShop } from '../fixtures/filled-shop';
import { AT, tempFolder } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

interface Edit {
	/** New text of files, by their names. */
	files?: Record<string, (text: string) => string>;
	manifest?: (manifest: Manifest) => void;
}

/** An export whose every hash is right, and yet not one that was ever made here. */
async function edited({ files = {}, manifest: change }: Edit): Promise<string> {
	const db = await testStore();
	await fillShop(db);
	const folder = tempFolder();
	const [from, to] = [join(folder, 'shop.zip'), join(folder, 'edited.zip')];
	await exportShop(db, { to: from, at: AT, withPins: true });
	const read = new ShopExport(from);
	const manifest = structuredClone(read.manifest);
	const zip = new ZipWriter(to);
	for (const name of Object.keys(manifest.files)) {
		const bytes = read.read(name);
		const edit = files[name];
		manifest.files[name] = await zip.add(name, [edit ? edit(bytes.toString('utf8')) : bytes]);
	}
	change?.(manifest);
	manifest.manifestHash = manifestHashOf(manifest);
	await zip.add('manifest.json', [JSON.stringify(manifest)]);
	zip.finish();
	zip.close();
	read.close();
	return to;
}

const table = (name: string, from: string | RegExp, to: string): Edit => ({
	files: {
		[`tables/${name}.jsonl`]: (text) => {
			const other = text.replace(from, to);
			if (other === text) throw new Error(`nothing in ${name} was changed`);
			return other;
		}
	}
});

test('an export that is only packed anew is read: what follows is refused for its own fault', async () => {
	expect(await importShop(await testStore(), await edited({}))).toMatchObject({
		status: 'imported'
	});
});

test.each([
	[
		'a person of no known role',
		table('person', '"mold maker"', '"king"'),
		/person.*expected.*apprentice/
	],
	['a shop of no known zone', table('shop', /"zone":"[^"]*"/, '"zone":7'), /shop.*zone/],
	['a broken sheet', table('sheet', /"name":"[^"]*"/, '"name":7'), /sheet.*name/],
	['a broken pattern', table('pattern', /"name":"[^"]*"/, '"name":7'), /pattern.*name/]
])('%s is not read, and the store stays empty', async (_what, edit, words) => {
	const store = await testStore();
	const path = await edited(edit);
	const answer = await importShop(store, path);
	expect(answer).toEqual({ status: 'unfit', reason: expect.stringMatching(words) });
	expect(await isEmpty(store)).toBe(true);
});

test('a log whose chain is whole but which no mold can have gone through is not read', async () => {
	const name = recordName('job-00001');
	let headHash = '';
	const files = {
		[name]: (text: string) => {
			const record = recordSchema.parse(JSON.parse(text));
			const [first, last] = [record.events[0], record.events.at(-1)];
			if (!first || !last) throw new Error('no events');
			const { jobId, id, recordedAt, event } = last;
			const sealed = sealEvent({ jobId, id, recordedAt, event, seq: 2, prevHash: first.hash });
			headHash = sealed.hash;
			return canonicalJson({ ...record, events: [first, sealed], headHash });
		}
	};
	const manifest = ({ jobs: [job] }: Manifest) => Object.assign(job ?? {}, { headHash, seq: 2 });
	const store = await testStore();
	const answer = await importShop(store, await edited({ files, manifest }));
	expect(answer).toEqual({
		status: 'unfit',
		reason: expect.stringMatching(/job-00001: Event 2 is not taken/)
	});
	expect(await isEmpty(store)).toBe(true);
});

test('an export of a newer version is refused in a sentence that says so', async () => {
	const path = await edited({ manifest: (manifest) => (manifest.schema += 1) });
	expect(await importShop(await testStore(), path)).toEqual({
		status: 'unfit',
		reason: expect.stringMatching(/newer Glovewright \(schema \d+; this one reads up to \d+\)/)
	});
});
