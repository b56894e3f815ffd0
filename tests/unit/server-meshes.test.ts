import { createHash, randomUUID } from 'node:crypto';
import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { LARGEST_PART_BYTES, keepPart, openMesh, saveMesh } from '../../src/lib/server/mesh-files';
import { meshFormatOf } from '../../src/lib/server/mesh-format';
import { binaryStl } from '../../src/lib/core/mesh/write-stl';
import { box } from '../fixtures/mesh-solids';
import { testStore } from '../fixtures/test-store';

const stl = binaryStl(box(20, 10, 5));
const latin = (text: string) => new Uint8Array(Buffer.from(text, 'latin1'));

test('a file sent in parts is kept under the hash of its bytes, once, and comes back whole', async () => {
	const db = await testStore();
	const send = async () => {
		const upload = randomUUID();
		for (const [part, bytes] of [stl.subarray(0, 300), stl.subarray(300)].entries()) {
			expect(await keepPart(db, { upload, part, bytes })).toEqual({ status: 'kept' });
		}
		return saveMesh(db, { upload, parts: 2 });
	};
	const hash = createHash('sha256').update(stl).digest('hex');
	expect(await send()).toEqual({ status: 'saved', hash, format: 'stl', size: stl.length });
	expect(await send()).toMatchObject({ status: 'saved', hash });
	const parts = await db.selectFrom('mesh_part').select('upload').execute();
	expect(new Set(parts.map(({ upload }) => upload)).size).toBe(1);
	const opened = await openMesh(db, hash);
	expect(new Uint8Array(await new Response(opened?.stream).arrayBuffer())).toEqual(stl);
	await expect(sql`delete from mesh_part`.execute(db)).rejects.toThrow(/written once/);
	await expect(sql`update mesh_file set size = 1`.execute(db)).rejects.toThrow(/written once/);
});

test('what is too large, missing or no mesh is refused with the reason', async () => {
	const db = await testStore();
	const upload = randomUUID();
	const tooLarge = new Uint8Array(LARGEST_PART_BYTES + 1);
	expect(await keepPart(db, { upload, part: 0, bytes: tooLarge })).toMatchObject({
		status: 'refused',
		reason: expect.stringContaining('accepted: 1 to 4000000')
	});
	expect(await keepPart(db, { upload, part: 75, bytes: stl })).toMatchObject({
		reason: expect.stringContaining('up to 300 MB')
	});
	await keepPart(db, { upload, part: 0, bytes: latin('MZ\x90\0 an executable') });
	expect(await saveMesh(db, { upload, parts: 1 })).toMatchObject({
		reason: expect.stringContaining('STL, OBJ, PLY or 3MF')
	});
	expect(await saveMesh(db, { upload, parts: 2 })).toMatchObject({
		reason: 'Part 1 of 2 was not sent.'
	});
	expect(await openMesh(db, '0'.repeat(64))).toBeNull();
});

test('the bytes say what a file is', () => {
	const of = (text: string) => meshFormatOf(latin(text), text.length);
	expect(meshFormatOf(stl, stl.length)).toBe('stl');
	expect(meshFormatOf(stl, stl.length - 1)).toBeNull();
	expect(of('solid box\n facet normal 0 0 1\n')).toBe('stl');
	expect(of('ply\nformat ascii 1.0\n')).toBe('ply');
	expect(of('PK\x03\x04')).toBe('3mf');
	expect(of('# a box\nv 0 0 0\nf 1 2 3\n')).toBe('obj');
	expect(of('<svg xmlns="http://www.w3.org/2000/svg"/>')).toBeNull();
	expect(of('')).toBeNull();
});
