import type { Mesh } from './mesh';
import { read3mf } from './read-3mf';
import { READ_LIMITS, type ReadLimits } from './read-limits';
import { readObj } from './read-obj';
import { readPly } from './read-ply';
import { readStl } from './read-stl';
import { refuse, RefusedError, type Refusal } from './refusal';
import { weldMesh, weldSoup } from './weld';

export type MeshFormat = 'stl' | 'obj' | 'ply' | '3mf';

export interface ReadMesh {
	ok: true;
	format: MeshFormat;
	mesh: Mesh;
	/** Millimeters in the file's unit; null when the format has no unit and a person must say it. */
	unitMm: number | null;
}

/** Ten kilometers in millimeters: beyond it no pattern lies and a float has no tenth of a millimeter left. */
const MOST_COORDINATE = 1e7;
const FILES = 'an STL, OBJ, PLY or 3MF file';

/**
 * The mesh in a file, its equal vertices joined. The bytes decide the format; the name only tells
 * OBJ apart, which has no mark of its own. Nothing in the file is run, fetched or expanded.
 *
 * @returns the mesh, or why the file is not taken
 */
export function readMesh(
	bytes: Uint8Array,
	name: string,
	limits: ReadLimits = READ_LIMITS
): ReadMesh | Refusal {
	try {
		if (bytes.length === 0) refuse('The file is empty', 'byte 0', FILES);
		const format = formatOf(bytes, name);
		const { mesh, unitMm } = read(format, bytes, limits);
		if (mesh.triangles.length === 0) {
			refuse('The file holds no triangle', 'whole file', 'one triangle or more');
		}
		return { ok: true, format, mesh, unitMm };
	} catch (error) {
		if (error instanceof RefusedError) return error.refusal;
		// A typed array that does not fit in memory; anything else is a fault of ours.
		if (error instanceof RangeError && /array (buffer|length)|allocation/i.test(error.message)) {
			return {
				ok: false,
				what: 'The mesh does not fit in memory',
				where: 'whole file',
				accepted: 'a coarser mesh'
			};
		}
		throw error;
	}
}

function formatOf(bytes: Uint8Array, name: string): MeshFormat {
	const start = String.fromCharCode(...bytes.subarray(0, 4));
	if (start === 'PK\x03\x04') return '3mf';
	if (/^ply[\r\n]/.test(start)) return 'ply';
	const ending = /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase();
	if (ending === 'obj') return 'obj';
	if (ending === '3mf' || ending === 'ply') {
		refuse(`The name says .${ending}, the bytes do not`, 'byte 0', FILES);
	}
	if (ending === undefined || ending === 'stl') return 'stl';
	refuse(`Files that end in .${ending} are not read`, 'file name', FILES);
}

function read(
	format: MeshFormat,
	bytes: Uint8Array,
	limits: ReadLimits
): { mesh: Mesh; unitMm: number | null } {
	if (format === 'stl') {
		const soup = readStl(bytes, limits);
		// Before joining: equal bits that are not equal numbers would all fall into one slot.
		refuseUnusable(soup);
		return { mesh: weldSoup(soup), unitMm: null };
	}
	const { mesh, unitMm } =
		format === '3mf'
			? read3mf(bytes, limits)
			: { mesh: (format === 'obj' ? readObj : readPly)(bytes, limits), unitMm: null };
	refuseUnusable(mesh.positions);
	return { mesh: weldMesh(mesh), unitMm };
}

function refuseUnusable(coordinates: Float32Array | Float64Array): void {
	for (let i = 0; i < coordinates.length; i += 1) {
		if (Math.abs(coordinates[i]!) <= MOST_COORDINATE) continue; // false for NaN too
		refuse(
			`A coordinate is ${coordinates[i]}`,
			`vertex ${Math.floor(i / 3) + 1}`,
			`finite numbers from −${MOST_COORDINATE} to ${MOST_COORDINATE}`
		);
	}
}
