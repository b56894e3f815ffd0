/** A picture as it is kept. */
interface Cleaned {
	bytes: Uint8Array;
	widthPx: number;
	heightPx: number;
}

const APP0 = 0xe0;
const APP1 = 0xe1;
const APP2 = 0xe2;
const APP14 = 0xee;
const APP15 = 0xef;
const COMMENT = 0xfe;
const SCAN = 0xda;
const END = 0xd9;
/** Start of frame; C4, C8 and CC of this row mean something else. */
const isFrame = (marker: number) =>
	marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** Markers that stand alone, without a length. */
const isBare = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);

/**
 * A JPEG with JFIF, color profile and Adobe's color transform, without any other application segment and
 * without comments. Which way up it is stays, in an EXIF of that one entry. Source: ITU-T T.81 (1992),
 * annex B; the segments by their names in JFIF 1.02, ICC.1 and EXIF 2.32.
 *
 * @throws Error when it is cut off or not built as a JPEG is
 */
export function cleanJpeg(bytes: Uint8Array): Cleaned {
	const data = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
	const kept: Uint8Array[] = [data.subarray(0, 2)];
	let [widthPx, heightPx, at] = [0, 0, 2];
	while (at + 4 <= data.length) {
		if (data[at] !== 0xff) throw broken();
		const marker = data[at + 1] ?? 0;
		if (marker === 0xff) {
			at += 1;
			continue;
		}
		if (marker === END) {
			break;
		}
		if (isBare(marker)) {
			kept.push(data.subarray(at, at + 2));
			at += 2;
			continue;
		}
		const length = data.readUInt16BE(at + 2);
		const end = at + 2 + length;
		if (length < 2 || end > data.length) throw broken();
		const segment = data.subarray(at, end);
		if (isFrame(marker) && length >= 8) {
			heightPx = data.readUInt16BE(at + 5);
			widthPx = data.readUInt16BE(at + 7);
		}
		const keptSegment = isKept(marker, segment) ? segment : uprightOnly(marker, segment);
		if (keptSegment) kept.push(keptSegment);
		at = end;
		if (marker === SCAN) {
			const scanEnd = endOfScan(data, at);
			kept.push(data.subarray(at, scanEnd));
			at = scanEnd;
		}
	}
	if (data[at] !== 0xff || data[at + 1] !== END) throw broken();
	// What hangs on behind the end, such as a film or a second picture, is left behind.
	kept.push(data.subarray(at, at + 2));
	return { bytes: new Uint8Array(Buffer.concat(kept)), widthPx, heightPx };
}

const broken = () => new Error('The JPEG is cut off or damaged. Take the photo anew.');

function isKept(marker: number, segment: Buffer): boolean {
	if (marker === COMMENT) return false;
	if (marker < APP0 || marker > APP15) return true;
	const name = segment.toString('latin1', 4, 16);
	return (
		(marker === APP0 && name.startsWith('JFIF\0')) ||
		(marker === APP2 && name.startsWith('ICC_PROFILE\0')) ||
		(marker === APP14 && name.startsWith('Adobe'))
	);
}

/** The compressed data ends at the next marker that is neither a restart nor a stuffed zero. */
function endOfScan(data: Buffer, from: number): number {
	let at = from;
	for (;;) {
		at = data.indexOf(0xff, at);
		if (at === -1 || at + 1 >= data.length) throw broken();
		const next = data[at + 1] ?? 0;
		if (next !== 0 && next !== 0xff && !isBare(next)) return at;
		at += next === 0xff ? 1 : 2;
	}
}

/** An EXIF segment of nothing but the orientation, when the one here has another than upright; else null. */
function uprightOnly(marker: number, segment: Buffer): Buffer | null {
	if (marker !== APP1 || segment.toString('latin1', 4, 10) !== 'Exif\0\0') return null;
	const orientation = orientationOf(segment.subarray(10));
	if (orientation < 2 || orientation > 8) return null;
	const small = Buffer.alloc(36);
	small.writeUInt16BE(0xffe1, 0);
	small.writeUInt16BE(34, 2);
	small.write('Exif\0\0MM\0*', 4, 'latin1');
	small.writeUInt32BE(8, 14);
	small.writeUInt16BE(1, 18);
	small.writeUInt16BE(0x0112, 20);
	small.writeUInt16BE(3, 22);
	small.writeUInt32BE(1, 24);
	small.writeUInt16BE(orientation, 28);
	return small;
}

/** Tag 0x0112 of the first directory; 0 when it is not there or cannot be read. */
function orientationOf(tiff: Buffer): number {
	const isLittle = tiff.toString('latin1', 0, 2) === 'II';
	const u16 = (at: number) => (isLittle ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at));
	const u32 = (at: number) => (isLittle ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at));
	try {
		const directory = u32(4);
		for (let n = 0; n < u16(directory); n += 1) {
			const entry = directory + 2 + n * 12;
			if (u16(entry) === 0x0112) return u16(entry + 8);
		}
	} catch {
		// A directory that points out of the segment says nothing.
	}
	return 0;
}
