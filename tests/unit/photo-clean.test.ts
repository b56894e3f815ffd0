import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cleanPhoto } from '../../src/lib/server/photo/clean-photo';
import { TINY_PNG } from '../fixtures/filled-shop';

const latin = (text: string) => Buffer.from(text, 'latin1');

function segment(marker: number, body: Buffer): Buffer {
	const head = Buffer.from([0xff, marker, 0, 0]);
	head.writeUInt16BE(body.length + 2, 2);
	return Buffer.concat([head, body]);
}

/** An EXIF block with an invented place, an invented camera, and the way up. TIFF 6.0, EXIF 2.32 */
function exif(orientation: number): Buffer {
	const tiff = Buffer.alloc(150);
	tiff.write('II*\0', 0, 'latin1');
	tiff.writeUInt32LE(8, 4);
	tiff.writeUInt16LE(3, 8);
	const entry = (n: number, tag: number, type: number, count: number, value: number) => {
		const at = 10 + n * 12;
		tiff.writeUInt16LE(tag, at);
		tiff.writeUInt16LE(type, at + 2);
		tiff.writeUInt32LE(count, at + 4);
		tiff.writeUInt32LE(value, at + 8);
	};
	entry(0, 0x0110, 2, 16, 60);
	entry(1, 0x0112, 3, 1, orientation);
	entry(2, 0x8825, 4, 1, 80);
	tiff.write('Invented Cam 3\0', 60, 'latin1');
	// GPS directory: latitude N 12° 34' 56", invented.
	tiff.writeUInt16LE(1, 80);
	tiff.writeUInt16LE(0x0001, 82);
	tiff.write('GPSLATITUDE-N-12-34-56', 100, 'latin1');
	return Buffer.concat([latin('Exif\0\0'), tiff]);
}

const JFIF = segment(0xe0, latin('JFIF\0\x01\x02\0\0\x01\0\x01\0\0'));
const FRAME = segment(0xc0, Buffer.from([8, 0, 30, 0, 40, 1, 1, 0x11, 0]));
/** Compressed data with a stuffed zero and a restart marker in it. */
const SCAN = Buffer.concat([
	segment(0xda, Buffer.from([1, 1, 0, 0, 63, 0])),
	Buffer.from([0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56])
]);
const EOI = Buffer.from([0xff, 0xd9]);
const SOI = Buffer.from([0xff, 0xd8]);
const TABLE = segment(0xdb, Buffer.alloc(65, 1));

function jpeg(...between: Buffer[]): Buffer {
	return Buffer.concat([SOI, JFIF, ...between, TABLE, FRAME, SCAN, EOI]);
}

test('a JPEG loses place, camera, comments, thumbnails and what hangs on behind', () => {
	const dirty = Buffer.concat([
		jpeg(
			segment(0xe1, exif(1)),
			segment(0xe1, latin('http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>GPS here</x:xmpmeta>')),
			segment(0xed, latin('Photoshop 3.0\0 caption')),
			segment(0xfe, latin('a comment')),
			segment(0xe2, latin('MPF\0 a second picture'))
		),
		latin('a film behind the end')
	]);
	const clean = cleanPhoto(dirty);
	expect(clean).toMatchObject({ type: 'image/jpeg', widthPx: 40, heightPx: 30 });
	const said = Buffer.from(clean.bytes).toString('latin1');
	for (const word of [
		'GPS',
		'Invented Cam',
		'comment',
		'caption',
		'second picture',
		'film',
		'Exif'
	]) {
		expect(said, word).not.toContain(word);
	}
	expect(Buffer.from(clean.bytes)).toEqual(jpeg());
});

test('which way up a JPEG is stays, and nothing else of its EXIF', () => {
	const clean = Buffer.from(cleanPhoto(jpeg(segment(0xe1, exif(6)))).bytes);
	const said = clean.toString('latin1');
	expect(said).toContain('Exif');
	expect(said).not.toMatch(/GPS|Invented/);
	// Big-endian, one entry: 0x0112, short, one value, 6.
	expect(
		clean.includes(Buffer.from('4d4d002a0000000800010112000300000001000600000000', 'hex'))
	).toBe(true);
	expect(Buffer.from(cleanPhoto(clean).bytes)).toEqual(clean);
});

test('what has nothing to lose comes back byte by byte, a color profile too', () => {
	const profile = segment(0xe2, latin('ICC_PROFILE\0\x01\x01 colors'));
	const adobe = segment(0xee, latin('Adobe\0d\0\0\0\0\x01'));
	for (const photo of [jpeg(), jpeg(profile), jpeg(adobe), TINY_PNG]) {
		expect(Buffer.from(cleanPhoto(photo).bytes)).toEqual(photo);
	}
});

function chunk(type: string, body: Buffer): Buffer {
	const named = Buffer.concat([latin(type), body]);
	const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
	length.writeUInt32BE(body.length);
	sum.writeUInt32BE(crc32(named));
	return Buffer.concat([length, named, sum]);
}

test('a PNG loses texts, times and EXIF', () => {
	const dirty = Buffer.concat([
		TINY_PNG.subarray(0, 33),
		chunk('tEXt', latin('Author\0somebody')),
		chunk('eXIf', exif(1).subarray(6)),
		chunk('tIME', Buffer.alloc(7, 1)),
		chunk('prVt', latin('what a camera keeps')),
		TINY_PNG.subarray(33),
		latin('behind the end')
	]);
	expect(Buffer.from(cleanPhoto(dirty).bytes)).toEqual(TINY_PNG);
	const altered = Buffer.from(TINY_PNG);
	altered[45] = (altered[45] ?? 0) ^ 1;
	expect(() => cleanPhoto(altered)).toThrow(/PNG is cut off or damaged/);
});

test('a WebP loses EXIF and XMP, and no longer says that it has them', () => {
	const part = (type: string, body: Buffer) => {
		const head = Buffer.alloc(8);
		head.write(type, 0, 'latin1');
		head.writeUInt32LE(body.length, 4);
		return Buffer.concat([head, body, Buffer.alloc(body.length % 2)]);
	};
	const file = (...parts: Buffer[]) => {
		const body = Buffer.concat([latin('WEBP'), ...parts]);
		const head = Buffer.alloc(8);
		head.write('RIFF', 0, 'latin1');
		head.writeUInt32LE(body.length, 4);
		return Buffer.concat([head, body]);
	};
	const extended = (flags: number) =>
		part('VP8X', Buffer.from([flags, 0, 0, 0, 39, 0, 0, 29, 0, 0]));
	const picture = part('VP8 ', Buffer.alloc(31, 7));
	const dirty = file(
		extended(0x2c),
		part('ICCP', latin('colors')),
		picture,
		part('EXIF', exif(1)),
		part('XMP ', latin('GPS here'))
	);
	const clean = cleanPhoto(dirty);
	expect(clean).toMatchObject({ type: 'image/webp', widthPx: 40, heightPx: 30 });
	expect(Buffer.from(clean.bytes)).toEqual(
		file(extended(0x20), part('ICCP', latin('colors')), picture)
	);
});

test('a picture that would exhaust who opens it, a cut one, and what is no photo are refused in words', () => {
	const frame = (w: number, h: number) => {
		const body = Buffer.from([8, 0, 0, 0, 0, 1, 1, 0x11, 0]);
		body.writeUInt16BE(h, 1);
		body.writeUInt16BE(w, 3);
		return Buffer.concat([SOI, JFIF, segment(0xc0, body), SCAN, EOI]);
	};
	expect(() => cleanPhoto(frame(65_000, 65_000))).toThrow(/65000 × 65000 px; accepted/);
	expect(() => cleanPhoto(frame(0, 10))).toThrow(/0 × 10 px/);
	const whole = jpeg();
	for (let length = 3; length < whole.length; length++) {
		expect(() => cleanPhoto(whole.subarray(0, length)), String(length)).toThrow(
			/cut off or damaged/
		);
	}
	expect(() => cleanPhoto(latin('<svg onload="alert(1)">'))).toThrow(/accepted: JPEG, PNG or WebP/);
});

test('whatever the bytes are: a photo or a sentence, never a slip of the reader', () => {
	const heads = [jpeg(segment(0xe1, exif(6))), TINY_PNG, latin('RIFF\x40\0\0\0WEBPVP8X')];
	fc.assert(
		fc.property(
			fc.constantFrom(...heads),
			fc.array(fc.tuple(fc.nat(200), fc.nat(255)), { maxLength: 6 }),
			fc.uint8Array({ maxLength: 80 }),
			(head, changes, tail) => {
				const bytes = Buffer.concat([head, tail]);
				for (const [at, value] of changes) if (at > 2 && at < bytes.length) bytes[at] = value;
				try {
					cleanPhoto(bytes);
				} catch (error) {
					expect(String(error)).toMatch(/damaged|accepted/);
				}
			}
		),
		{ numRuns: 3000 }
	);
});
