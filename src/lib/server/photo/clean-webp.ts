const KEPT = new Set(['VP8 ', 'VP8L', 'VP8X', 'ALPH', 'ANIM', 'ANMF', 'ICCP']);
/** Flags of VP8X for EXIF and XMP, whose chunks go. */
const EXIF_AND_XMP = 0x0c;

/**
 * A WebP with the chunks that make the picture, without EXIF and XMP. Source: RFC 9649 (2024), section 2
 *
 * @throws Error when it is cut off or not built as a WebP is
 */
export function cleanWebp(bytes: Uint8Array): {
	bytes: Uint8Array;
	widthPx: number;
	heightPx: number;
} {
	const data = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
	const end = data.length >= 12 ? 8 + data.readUInt32LE(4) : 0;
	if (end < 20 || end > data.length) throw broken();
	const kept: Buffer[] = [];
	let size: { widthPx: number; heightPx: number } | null = null;
	for (let at = 12; at < end;) {
		if (at + 8 > end) throw broken();
		const length = data.readUInt32LE(at + 4);
		const next = at + 8 + length + (length % 2);
		if (next > end) throw broken();
		const type = data.toString('latin1', at, at + 4);
		const chunk = Buffer.from(data.subarray(at, next));
		if (type === 'VP8X') chunk[8] = (chunk[8] ?? 0) & ~EXIF_AND_XMP;
		size ??= sizeOf(type, chunk.subarray(8));
		if (KEPT.has(type)) kept.push(chunk);
		at = next;
	}
	if (!size) throw broken();
	const body = Buffer.concat(kept);
	const head = Buffer.from(data.subarray(0, 12));
	head.writeUInt32LE(4 + body.length, 4);
	return { bytes: new Uint8Array(Buffer.concat([head, body])), ...size };
}

const broken = () => new Error('The WebP is cut off or damaged. Take the photo anew.');

/** Size of the picture by its first chunk; VP8's and VP8L's from RFC 6386, 9.1 and RFC 9649, 3.4 */
function sizeOf(type: string, body: Buffer): { widthPx: number; heightPx: number } | null {
	if (body.length < 10) return null;
	if (type === 'VP8X') {
		return { widthPx: body.readUIntLE(4, 3) + 1, heightPx: body.readUIntLE(7, 3) + 1 };
	}
	if (type === 'VP8 ') {
		return { widthPx: body.readUInt16LE(6) & 0x3fff, heightPx: body.readUInt16LE(8) & 0x3fff };
	}
	if (type === 'VP8L') {
		const bits = body.readUInt32LE(1);
		return { widthPx: (bits & 0x3fff) + 1, heightPx: ((bits >>> 14) & 0x3fff) + 1 };
	}
	return null;
}
