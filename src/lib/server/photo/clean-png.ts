import { crc32 } from 'node:zlib';

/** Chunks that are needed to show the picture as it is meant; texts, times and EXIF are not. */
const KEPT = new Set(
	'IHDR PLTE IDAT IEND tRNS gAMA cHRM sRGB iCCP sBIT bKGD pHYs cICP acTL fcTL fdAT'.split(' ')
);

/**
 * A PNG with the chunks that make the picture. Source: ISO/IEC 15948 (2004) and PNG third edition (2025),
 * clauses 5 and 11
 *
 * @throws Error when it is cut off, or a chunk does not match its check sum
 */
export function cleanPng(bytes: Uint8Array): {
	bytes: Uint8Array;
	widthPx: number;
	heightPx: number;
} {
	const data = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
	const kept: Buffer[] = [data.subarray(0, 8)];
	let [widthPx, heightPx, at] = [0, 0, 8];
	for (;;) {
		if (at + 12 > data.length) throw broken();
		const end = at + 12 + data.readUInt32BE(at);
		if (end > data.length) throw broken();
		const type = data.toString('latin1', at + 4, at + 8);
		if (crc32(data.subarray(at + 4, end - 4)) !== data.readUInt32BE(end - 4)) throw broken();
		if (at === 8) {
			if (type !== 'IHDR') throw broken();
			widthPx = data.readUInt32BE(16);
			heightPx = data.readUInt32BE(20);
		}
		if (KEPT.has(type)) kept.push(data.subarray(at, end));
		at = end;
		if (type === 'IEND') break;
	}
	return { bytes: new Uint8Array(Buffer.concat(kept)), widthPx, heightPx };
}

const broken = () => new Error('The PNG is cut off or damaged. Take the photo anew.');
