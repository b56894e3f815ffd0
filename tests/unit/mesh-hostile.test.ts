import { strToU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import { healthOf } from '../../src/lib/core/mesh/health';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import { readMesh } from '../../src/lib/core/mesh/read-mesh';
import { repairedMesh } from '../../src/lib/core/mesh/repair';
import { guessUnit } from '../../src/lib/core/mesh/unit-guess';
import { model3mf, stlBinary, stlText, zipped3mf } from '../fixtures/mesh-files';
import { box, mapped, together } from '../fixtures/mesh-solids';

const solid = box(20, 30, 10);

/** Refused with all three parts of the answer, and at once. */
function refusalOf(bytes: Uint8Array, name: string) {
	// Of the processor, which other work on the machine takes away but does not make longer.
	const from = process.cpuUsage();
	const read = readMesh(bytes, name);
	const { user, system } = process.cpuUsage(from);
	expect((user + system) / 1000).toBeLessThan(1000);
	if (read.ok) throw new Error('it was taken');
	for (const part of [read.what, read.where, read.accepted]) expect(part).not.toBe('');
	return read;
}

describe('files that lie', () => {
	test('eighty bytes with a header that counts four thousand million triangles', () => {
		expect(refusalOf(new Uint8Array(80).fill(255), 'a.stl').what).toMatch(/within the header/);
		expect(refusalOf(new Uint8Array(84).fill(255), 'a.stl').what).toMatch(/4294967295/);
	});

	test('text that is said to be binary, and binary that is said to be text', () => {
		const text = stlText(solid);
		expect(readMesh(text, 'a.stl')).toMatchObject({ ok: true });
		expect(refusalOf(stlBinary(solid), 'a.ply').what).toMatch(/bytes do not/);
		expect(refusalOf(strToU8('solid then nothing'), 'a.stl').what).not.toBe('');
		const lying = stlBinary(solid, 'solid');
		lying.set([2], 80);
		expect(refusalOf(lying, 'a.stl').what).toMatch(/counts 2/);
	});

	test('one not-a-number in any place of any corner', () => {
		for (let k = 0; k < 9; k += 1) {
			const bytes = stlBinary(solid);
			new DataView(bytes.buffer).setFloat32(84 + 50 * 5 + 12 + 4 * k, Number.NaN, true);
			expect(refusalOf(bytes, 'a.stl')).toMatchObject({
				what: expect.stringContaining('NaN'),
				where: `vertex ${16 + Math.floor(k / 3)}`
			});
		}
	});
});

describe('XML that would do more than describe a mesh', () => {
	const laughs = Array.from(
		{ length: 9 },
		(_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`
	).join('');
	const inner = model3mf(solid).replace(/^<\?xml[^>]*>\s*/, '');
	test.each([
		['entities within entities', `<!DOCTYPE m [<!ENTITY l0 "ha">${laughs}]>${inner}`],
		['a file of the server', `<!DOCTYPE m [<!ENTITY x SYSTEM "file:///etc/passwd">]>${inner}`],
		['an address', `<!DOCTYPE m SYSTEM "http://localhost:9/m.dtd">${inner}`],
		['raw text', inner.replace('<build>', '<![CDATA[<script>]]><build>')]
	])('%s is refused, not followed', (_, model) => {
		expect(refusalOf(zipped3mf(model), 'a.3mf').what).toMatch(/document type/);
	});

	test('an entity where a number should be is no number', () => {
		const model = model3mf(solid).replace(/x="[^"]*"/, 'x="&l9;"');
		expect(refusalOf(zipped3mf(model), 'a.3mf').what).toMatch(/"x" is "&l9;"/);
	});

	test('names of inherited things are plain names', () => {
		const model = model3mf(solid).replace('<build>', '<__proto__ constructor="1"/><build>');
		expect(readMesh(zipped3mf(model), 'a.3mf')).toMatchObject({ ok: true });
		const unit = model3mf(solid, { unit: 'constructor' });
		expect(refusalOf(zipped3mf(unit), 'a.3mf').what).toMatch(/unit "constructor" is unknown/);
		const ply = (format: string, type: string): Uint8Array =>
			strToU8(`ply\nformat ${format} 1.0\nelement vertex 1\nproperty ${type} x\nend_header\n0\n`);
		expect(refusalOf(ply('constructor', 'float'), 'a.ply').what).toMatch(
			/"constructor" is unknown/
		);
		expect(refusalOf(ply('ascii', 'valueOf'), 'a.ply').what).toMatch(/"valueOf" is no PLY type/);
	});
});

describe('meshes that are whole and yet no pattern', () => {
	test('a sheet without volume is taken, and nothing is trusted but its area', () => {
		const { triangles, positions } = solid;
		const sheet = { positions, triangles: triangles.subarray(0, 6) };
		const read = readMesh(stlBinary(sheet), 'a.stl');
		if (!read.ok) throw new Error(read.what);
		const { faults, trust } = healthOf(read.mesh);
		expect(faults.map(({ kind }) => kind)).toContain('no volume');
		expect(trust).toMatchObject({ volume: false, distance: false });
	});

	test('a mesh in meters is taken for one, since 0.3 mm is no pattern', () => {
		const meters = mapped(solid, (at) => [at[0] / 100, at[1] / 100, at[2] / 100]);
		expect(guessUnit(measuresOf(meters).bounds)).toMatchObject({ unit: 'm', isOnlyOne: true });
	});

	test('ten million loose shells are refused by their count', () => {
		// Zeros that nobody looks at take no memory.
		const bytes = new Uint8Array(84 + 50 * 10_000_000);
		new DataView(bytes.buffer).setUint32(80, 10_000_000, true);
		expect(refusalOf(bytes, 'a.stl')).toMatchObject({
			what: expect.stringContaining('10000000'),
			accepted: expect.stringContaining('6000000')
		});
	});

	test('thirty thousand closed shells are counted, in a bounded time', () => {
		const ten = together(
			...Array.from({ length: 10 }, (_, i) =>
				mapped(box(1, 1, 1), ([x, y, z]) => [x + 2 * i, y, z])
			)
		);
		const bytes = new Uint8Array(84 + 50 * 360_000);
		const piece = stlBinary(ten).subarray(84);
		const view = new DataView(bytes.buffer);
		view.setUint32(80, 360_000, true);
		for (let n = 0; n < 3000; n += 1) {
			bytes.set(piece, 84 + n * piece.length);
			for (let t = 0; t < 120; t += 1) {
				for (let k = 0; k < 3; k += 1) {
					const at = 84 + n * piece.length + 50 * t + 12 + 12 * k + 4;
					view.setFloat32(at, view.getFloat32(at, true) + 2 * n, true);
				}
			}
		}
		const read = readMesh(bytes, 'a.stl');
		if (!read.ok) throw new Error(read.what);
		const { mesh, repairs } = repairedMesh(read.mesh);
		expect(repairs.turnedTriangles).toBe(0);
		const loose = healthOf(mesh).faults.find(({ kind }) => kind === 'loose parts');
		expect(loose?.count).toBe(29_999);
	}, 60_000);
});
