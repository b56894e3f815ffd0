import { ByteScanner } from './byte-scanner';
import { floats } from './number-list';
import { refuseTooManyTriangles, type ReadLimits } from './read-limits';
import { refuse } from './refusal';

const HEADER_BYTES = 84;
const RECORD_BYTES = 50;
const STL =
	'an STL file: 84 bytes of header and 50 bytes for each triangle, or text with "facet" lines';

/** Three corners for each triangle, nine numbers in a row. */
export type Soup = Float32Array | Float64Array;

/** Corners of an STL file's triangles, binary or text, whichever the bytes are. */
export function readStl(bytes: Uint8Array, limits: ReadLimits): Soup {
	const said = saidTriangles(bytes);
	if (said !== null && HEADER_BYTES + RECORD_BYTES * said === bytes.length) {
		refuseTooManyTriangles(said, limits, 'header, bytes 81 to 84');
		return binaryCorners(bytes, said);
	}
	if (startsAsText(bytes)) return textCorners(bytes, limits);
	if (said === null) {
		refuse(`The file ends after ${bytes.length} bytes, within the header`, 'header', STL);
	}
	const held = Math.floor((bytes.length - HEADER_BYTES) / RECORD_BYTES);
	refuse(
		`The header counts ${said} triangles, and there are bytes for ${held}: the file is cut short or its header is wrong`,
		'header, bytes 81 to 84',
		STL
	);
}

function saidTriangles(bytes: Uint8Array): number | null {
	if (bytes.length < HEADER_BYTES) return null;
	return new DataView(bytes.buffer, bytes.byteOffset, bytes.length).getUint32(80, true);
}

function startsAsText(bytes: Uint8Array): boolean {
	const start = new ByteScanner(bytes, 0, Math.min(bytes.length, 1000));
	if (start.word().toLowerCase() !== 'solid') return false;
	// A binary header may begin with "solid" as well; text has no zero bytes.
	return !bytes.subarray(0, 1000).includes(0);
}

/** The floats of each record without its normal: the corners decide, and exporters get normals wrong. */
function binaryCorners(bytes: Uint8Array, count: number): Float32Array {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
	const corners = new Float32Array(count * 9);
	for (let t = 0, from = HEADER_BYTES + 12; t < count; t += 1, from += RECORD_BYTES) {
		for (let k = 0; k < 9; k += 1) corners[9 * t + k] = view.getFloat32(from + 4 * k, true);
	}
	return corners;
}

function textCorners(bytes: Uint8Array, limits: ReadLimits): Float64Array {
	const scan = new ByteScanner(bytes);
	const corners = floats();
	let inLoop = 0;
	let isClosed = false;
	scan.skipLine();
	while (scan.skipBlanks()) {
		const from = scan.at;
		const word = scan.word().toLowerCase();
		if (word === 'vertex') {
			const [x, y, z] = [scan.number(true), scan.number(true), scan.number(true)];
			if (!Number.isFinite(x + y + z)) {
				refuse(
					'A vertex has no three numbers',
					`line ${scan.lineAt(from)}`,
					'"vertex x y z" with finite numbers'
				);
			}
			corners.push3(x, y, z);
			inLoop += 1;
		} else if (word === 'endloop') {
			if (inLoop !== 3) {
				refuse(
					`A facet has ${inLoop} corners`,
					`line ${scan.lineAt(from)}`,
					'three "vertex" lines in each loop'
				);
			}
			inLoop = 0;
			refuseTooManyTriangles(corners.length / 9, limits, `line ${scan.lineAt(from)}`);
		} else if (word === 'endsolid' || word === 'solid') {
			isClosed = word === 'endsolid';
			scan.skipLine();
		} else if (word === 'facet') {
			isClosed = false;
			scan.skipLine();
		} else if (word !== 'outer' && word !== 'loop' && word !== 'endfacet') {
			refuse(
				`"${word.slice(0, 40)}" is no word of an STL text`,
				`line ${scan.lineAt(from)}`,
				'facet, outer loop, vertex, endloop, endfacet, endsolid'
			);
		}
	}
	if (inLoop !== 0 || !isClosed) {
		refuse('The text ends in the middle', `line ${scan.lineAt(scan.end)}`, 'text up to "endsolid"');
	}
	return corners.toArray();
}
