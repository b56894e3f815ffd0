const TRIANGLE_BYTES = 50;
const HEADER_BYTES = 84;

export type MeshFileFormat = 'stl' | 'obj' | 'ply' | '3mf';

/**
 * What the first bytes and the size say a mesh file is, whatever its name; null for no such file. A
 * full reading is left to whoever opens it: nothing here expands or follows what the file says.
 */
export function meshFormatOf(head: Uint8Array, size: number): MeshFileFormat | null {
	const text = Buffer.from(head.subarray(0, 2000)).toString('latin1');
	if (text.startsWith('PK\x03\x04')) return '3mf';
	if (/^ply\r?\n/.test(text)) return 'ply';
	if (head.length >= HEADER_BYTES) {
		const count = new DataView(head.buffer, head.byteOffset, head.length).getUint32(80, true);
		if (count > 0 && HEADER_BYTES + TRIANGLE_BYTES * count === size) return 'stl';
	}
	if (text.includes('\0')) return null;
	if (/^\s*solid\b/i.test(text) && /\bfacet\b/i.test(text)) return 'stl';
	return /^(v|vn|vt|f|o|g|s|usemtl|mtllib)\s/m.test(text) ? 'obj' : null;
}
