import { ByteScanner } from './byte-scanner';
import type { Mesh } from './mesh';
import { floats, indexes } from './number-list';
import { refuseTooManyTriangles, type ReadLimits } from './read-limits';
import { refuse } from './refusal';

const SLASH = 47;

/** Vertices and faces of a Wavefront OBJ text; faces with more corners are cut into a fan. */
export function readObj(bytes: Uint8Array, limits: ReadLimits): Mesh {
	const scan = new ByteScanner(bytes);
	const positions = floats();
	const triangles = indexes();
	let line = 0;
	while (scan.at < scan.end) {
		line += 1;
		const word = scan.word(true);
		if (word === 'v') {
			const [x, y, z] = [scan.number(true), scan.number(true), scan.number(true)];
			if (!Number.isFinite(x + y + z)) {
				refuse('A vertex has no three numbers', `line ${line}`, '"v x y z" with finite numbers');
			}
			positions.push3(x, y, z);
		} else if (word === 'f') {
			addFan(corners(scan, positions.length / 3, line), line, triangles);
			refuseTooManyTriangles(triangles.length / 3, limits, `line ${line}`);
		}
		scan.skipLine();
	}
	return { positions: positions.toArray(), triangles: triangles.toArray() };
}

/** Vertex numbers of one "f" line, from 0; texture and normal numbers after a slash are passed over. */
function corners(scan: ByteScanner, vertexCount: number, line: number): number[] {
	const found: number[] = [];
	while (scan.skipBlanks(true)) {
		const said = scan.number(true);
		const index = said < 0 ? vertexCount + said : said - 1;
		if (!(Number.isInteger(index) && index >= 0 && index < vertexCount)) {
			refuse(
				`A face names vertex ${said}`,
				`line ${line}`,
				`1 to ${vertexCount}, or counted back from −1, of vertices above it`
			);
		}
		found.push(index);
		if (scan.bytes[scan.at] === SLASH) scan.word(true);
	}
	return found;
}

function addFan(face: number[], line: number, triangles: ReturnType<typeof indexes>): void {
	if (face.length < 3) {
		refuse(`A face has ${face.length} corners`, `line ${line}`, 'three corners or more');
	}
	for (let k = 1; k + 1 < face.length; k += 1) triangles.push3(face[0]!, face[k]!, face[k + 1]!);
}
