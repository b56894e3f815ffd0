import type { Mesh } from './mesh';
import { floats, indexes } from './number-list';
import { readPlyHeader, type PlyElement, type PlyHeader } from './ply-header';
import { PLY_BYTES, plyValues, type NextPlyValue } from './ply-values';
import { refuseTooManyTriangles, type ReadLimits } from './read-limits';
import { refuse } from './refusal';

/** Vertices and faces of a PLY file, as text or binary in either byte order. */
export function readPly(bytes: Uint8Array, limits: ReadLimits): Mesh {
	const header = readPlyHeader(bytes);
	refuseLyingCounts(header, bytes.length, limits);
	const next = plyValues(bytes, header);
	const positions = floats();
	const triangles = indexes();
	for (const element of header.elements) {
		if (element.name === 'vertex') readVertices(element, next, positions);
		else if (element.name === 'face') {
			readFaces(element, next, positions.length / 3, triangles, limits);
		} else skipElement(element, next);
	}
	return { positions: positions.toArray(), triangles: triangles.toArray() };
}

function refuseLyingCounts(
	{ elements, format, at }: PlyHeader,
	length: number,
	limits: ReadLimits
) {
	for (const { name, count, properties } of elements) {
		// As text each value takes a digit and a blank at least; a list takes at least its count.
		const leastBytes = properties.reduce(
			(sum, { type, countType }) => sum + (format === 'ascii' ? 2 : PLY_BYTES[countType ?? type]),
			0
		);
		if (properties.length === 0 || count * leastBytes > length - at + 1) {
			refuse(
				`The header counts ${count} of "${name}", more than the ${length - at} bytes after it can hold`,
				'header',
				'counts that match the data'
			);
		}
		if (name === 'face') refuseTooManyTriangles(count, limits, 'header');
	}
}

function readVertices(
	{ count, properties }: PlyElement,
	next: NextPlyValue,
	positions: ReturnType<typeof floats>
): void {
	const places = ['x', 'y', 'z'].map((axis) => properties.findIndex(({ name }) => name === axis));
	if (places.includes(-1) || properties.some(({ countType }) => countType !== null)) {
		refuse('The vertices have no plain x, y and z', 'header', 'properties x, y, z');
	}
	const [x, y, z] = places as [number, number, number];
	const row = new Float64Array(properties.length);
	for (let i = 0; i < count; i += 1) {
		for (let k = 0; k < row.length; k += 1) row[k] = next(properties[k]!.type);
		positions.push3(row[x]!, row[y]!, row[z]!);
	}
}

function readFaces(
	{ count, properties }: PlyElement,
	next: NextPlyValue,
	vertexCount: number,
	triangles: ReturnType<typeof indexes>,
	limits: ReadLimits
): void {
	for (let i = 0; i < count; i += 1) {
		for (const { name, type, countType } of properties) {
			const length = countType === null ? 1 : next(countType);
			const isCorners = name === 'vertex_indices' || name === 'vertex_index';
			if (isCorners && !(length >= 3)) {
				refuse(`A face has ${length} corners`, `face ${i + 1}`, 'three corners or more');
			}
			refuseTooManyTriangles(length, limits, `face ${i + 1}`);
			let first = 0;
			let previous = 0;
			for (let k = 0; k < length; k += 1) {
				const index = next(type);
				if (!isCorners) continue;
				if (!(Number.isInteger(index) && index >= 0 && index < vertexCount)) {
					refuse(`A face names vertex ${index}`, `face ${i + 1}`, `0 to ${vertexCount - 1}`);
				}
				if (k === 0) first = index;
				else if (k > 1) triangles.push3(first, previous, index);
				previous = index;
			}
		}
		refuseTooManyTriangles(triangles.length / 3, limits, `face ${i + 1}`);
	}
}

function skipElement({ count, properties }: PlyElement, next: NextPlyValue): void {
	for (let i = 0; i < count; i += 1) {
		for (const { type, countType } of properties) {
			const length = countType === null ? 1 : next(countType);
			for (let k = 0; k < length; k += 1) next(type);
		}
	}
}
