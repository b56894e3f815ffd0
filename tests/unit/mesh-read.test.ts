import { strToU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import { READ_LIMITS } from '../../src/lib/core/mesh/read-limits';
import { readMesh, type ReadMesh } from '../../src/lib/core/mesh/read-mesh';
import {
	model3mf,
	obj,
	plyBinary,
	plyText,
	stlBinary,
	stlText,
	zipped3mf
} from '../fixtures/mesh-files';
import { box } from '../fixtures/mesh-solids';

const solid = box(2.5, 3, 4.25);

const files: [string, Uint8Array, string][] = [
	['binary STL', stlBinary(solid), 'a.stl'],
	['binary STL whose header begins like text', stlBinary(solid, 'solid of mine'), 'a.stl'],
	['text STL', stlText(solid), 'a.STL'],
	['OBJ', obj(solid), 'a.obj'],
	['PLY as text', plyText(solid), 'a.ply'],
	['PLY, little end first', plyBinary(solid, true), 'a.ply'],
	['PLY, big end first', plyBinary(solid, false), 'a.ply'],
	['3MF', zipped3mf(model3mf(solid)), 'a.3mf']
];

function taken(bytes: Uint8Array, name: string): ReadMesh {
	const read = readMesh(bytes, name);
	if (!read.ok) throw new Error(`${read.what} (${read.where})`);
	return read;
}

const sorted = (positions: Float64Array): string[] =>
	Array.from({ length: positions.length / 3 }, (_, i) =>
		positions.subarray(3 * i, 3 * i + 3).join(' ')
	).sort();

describe('a box comes back as it was written', () => {
	test.each(files)('%s', (_, bytes, name) => {
		const { mesh } = taken(bytes, name);
		expect(mesh.triangles).toHaveLength(36);
		expect(sorted(mesh.positions)).toEqual(sorted(solid.positions));
	});

	test('from bytes that begin anywhere in their buffer', () => {
		const whole = new Uint8Array(stlBinary(solid).length + 3);
		whole.set(stlBinary(solid), 3);
		expect(taken(whole.subarray(3), 'a.stl').mesh.triangles).toHaveLength(36);
	});
});

describe('what a file says beside its triangles', () => {
	test('3MF tells its unit, moves its items and puts parts together', () => {
		const { mesh, unitMm } = taken(
			zipped3mf(model3mf(solid, { unit: 'inch', item: 'transform="0 1 0 -1 0 0 0 0 1 10 0 0"' })),
			'a.3mf'
		);
		expect(unitMm).toBe(25.4);
		expect(Math.max(...mesh.positions.filter((_, i) => i % 3 === 0))).toBe(10);
		expect(Math.min(...mesh.positions.filter((_, i) => i % 3 === 0))).toBe(7);
	});

	test('the other formats have no unit', () => {
		for (const [, bytes, name] of files.slice(0, -1)) expect(taken(bytes, name).unitMm).toBeNull();
	});

	test('OBJ may count vertices back and use faces with more corners', () => {
		const text = 'v 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1e0 0\nf -4 -3 -2 -1\n';
		expect([...taken(strToU8(text), 'a.obj').mesh.triangles]).toEqual([0, 1, 2, 0, 2, 3]);
	});

	test.each(['1.5', '1.50', '15e-1', '+0.15E+1', '1.500000000000000000000'])(
		'%s is one and a half',
		(text) => {
			const { mesh } = taken(strToU8(`v 0 0 0\nv ${text} 0 0\nv 1 1 -0.0\nf 1 2 3`), 'a.obj');
			expect(mesh.positions[3]).toBe(1.5);
		}
	);
});

const withBytes = (bytes: Uint8Array, edit: (view: DataView) => void): Uint8Array => {
	const copy = bytes.slice();
	edit(new DataView(copy.buffer));
	return copy;
};
const stl = stlBinary(solid);
const header =
	'ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\nproperty float y\nproperty float z\n';

const refused: [string, Uint8Array, string, RegExp][] = [
	['an empty file', new Uint8Array(), 'a.stl', /empty/],
	['a file cut short', stl.subarray(0, 300), 'a.stl', /cut short/],
	[
		'a header of 4 294 967 295 triangles over 80 bytes',
		new Uint8Array(84).fill(255),
		'a.stl',
		/4294967295/
	],
	[
		'a count below what is there',
		withBytes(stl, (view) => view.setUint32(80, 3, true)),
		'a.stl',
		/counts 3/
	],
	[
		'no triangle',
		stl.subarray(0, 84).map((byte, i) => (i < 80 ? byte : 0)),
		'a.stl',
		/no triangle/
	],
	['NaN', withBytes(stl, (view) => view.setFloat32(200, Number.NaN, true)), 'a.stl', /NaN/],
	['infinity', withBytes(stl, (view) => view.setFloat32(200, Infinity, true)), 'a.stl', /Infinity/],
	['text that stops', stlText(solid).subarray(0, 400), 'a.stl', /middle|three numbers/],
	[
		'text with other words',
		strToU8('solid x\n facet normal 0 0 1\n colour 3\n'),
		'a.stl',
		/colour/
	],
	[
		'a vertex without numbers',
		strToU8('solid x\nfacet\nouter loop\nvertex 1 nan 3\n'),
		'a.stl',
		/three numbers/
	],
	['an OBJ face beyond the vertices', strToU8('v 0 0 0\nf 1 2 3'), 'a.obj', /vertex 2/],
	['an OBJ of points', strToU8('v 0 0 0\n'), 'a.obj', /no triangle/],
	[
		'a PLY that counts 4 294 967 295',
		strToU8(`${header.replace('vertex 3', 'vertex 4294967295')}end_header\n0 0 0\n`),
		'a.ply',
		/more than/
	],
	['a PLY that counts −1', strToU8(header.replace('vertex 3', 'vertex -1')), 'a.ply', /-1/],
	['a PLY without end', strToU8(header), 'a.ply', /no end/],
	['a PLY of unknown type', strToU8(header.replace('float z', 'quad z')), 'a.ply', /quad/],
	['a PLY cut short', plyBinary(solid, true).subarray(0, -5), 'a.ply', /hold|early/],
	['a zip that is none', strToU8('PK\x03\x04 but no more'), 'a.3mf', /cannot be opened/],
	['a name that promises more', strToU8('hello'), 'a.3mf', /bytes do not/],
	['another ending', strToU8('hello'), 'a.docx', /docx/],
	[
		'entities',
		zipped3mf(`<!DOCTYPE m [<!ENTITY a "aaaa">]>${model3mf(solid)}`),
		'a.3mf',
		/document type/
	],
	['a unit of its own', zipped3mf(model3mf(solid, { unit: 'cubit' })), 'a.3mf', /cubit/],
	[
		'a part within itself',
		zipped3mf(
			model3mf(solid).replace(
				'</mesh>',
				'</mesh><components><component objectid="1"/></components>'
			)
		),
		'a.3mf',
		/nested/
	],
	['XML that stops', zipped3mf(model3mf(solid).slice(0, -40)), 'a.3mf', /ends within|XML/],
	['a thousand open elements', zipped3mf('<a>'.repeat(1000)), 'a.3mf', /too deep/],
	['a zip bomb', zipped3mf(`<model>${' '.repeat(40_000_000)}</model>`), 'a.3mf', /would unzip/]
];

describe('what is not taken says what, where and what would be', () => {
	test.each(refused)('%s', (_, bytes, name, what) => {
		// Of the processor, which other work on the machine takes away but does not make longer.
		const from = process.cpuUsage();
		const read = readMesh(bytes, name);
		const { user, system } = process.cpuUsage(from);
		expect((user + system) / 1000).toBeLessThan(1000);
		if (read.ok) throw new Error('it was taken');
		expect(read.what).toMatch(what);
		expect(read.where).not.toBe('');
		expect(read.accepted).not.toBe('');
	});

	test('more triangles than the limit', () => {
		const limits = { ...READ_LIMITS, maxTriangles: 11 };
		for (const [, bytes, name] of files) {
			expect(readMesh(bytes, name, limits)).toMatchObject({ ok: false });
			expect(readMesh(bytes, name, { ...limits, maxTriangles: 12 })).toMatchObject({ ok: true });
		}
	});

	test('a million corners that are no numbers end at once', () => {
		const count = 300_000;
		const bytes = new Uint8Array(84 + 50 * count).fill(255);
		new DataView(bytes.buffer).setUint32(80, count, true);
		expect(readMesh(bytes, 'a.stl')).toMatchObject({ ok: false, where: 'vertex 1' });
	});

	test('no prefix of a good file brings down a reader', () => {
		for (const [, bytes, name] of files) {
			for (let cut = 0; cut < bytes.length; cut += 7) readMesh(bytes.subarray(0, cut), name);
		}
	});
});
