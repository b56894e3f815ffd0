import { ByteScanner } from './byte-scanner';
import { refuse } from './refusal';

/** A map, not an object: a file may name a type "constructor". */
const SIZES = new Map<string, PlyType>([
	['char', 'int8'],
	['uchar', 'uint8'],
	['short', 'int16'],
	['ushort', 'uint16'],
	['int', 'int32'],
	['uint', 'uint32'],
	['float', 'float32'],
	['double', 'float64'],
	['int8', 'int8'],
	['uint8', 'uint8'],
	['int16', 'int16'],
	['uint16', 'uint16'],
	['int32', 'int32'],
	['uint32', 'uint32'],
	['float32', 'float32'],
	['float64', 'float64']
]);

export type PlyType =
	'int8' | 'uint8' | 'int16' | 'uint16' | 'int32' | 'uint32' | 'float32' | 'float64';

interface PlyProperty {
	name: string;
	type: PlyType;
	/** Type of the count before a list; null when the property is one number. */
	countType: PlyType | null;
}

export interface PlyElement {
	name: string;
	count: number;
	properties: PlyProperty[];
}

export interface PlyHeader {
	format: 'ascii' | 'little' | 'big';
	elements: PlyElement[];
	/** Where the data begin. */
	at: number;
}

const FORMATS = new Map<string, PlyHeader['format']>([
	['ascii', 'ascii'],
	['binary_little_endian', 'little'],
	['binary_big_endian', 'big']
]);

/** The header of a PLY file; at most 1000 lines are looked at. */
export function readPlyHeader(bytes: Uint8Array): PlyHeader {
	const scan = new ByteScanner(bytes, 0, Math.min(bytes.length, 100_000));
	const elements: PlyElement[] = [];
	let format: PlyHeader['format'] | null = null;
	for (let line = 1; line < 1000 && scan.at < scan.end; line += 1) {
		const words = scan.restOfLine().split(/\s+/);
		const where = `header, line ${line}`;
		if (words[0] === 'end_header') {
			if (format === null) refuse('The header names no format', where, 'a "format" line');
			return { format, elements, at: scan.at };
		}
		if (words[0] === 'format') {
			format = FORMATS.get(words[1] ?? '') ?? null;
			if (format === null) {
				refuse(`The format "${words[1]}" is unknown`, where, [...FORMATS.keys()].join(', '));
			}
		} else if (words[0] === 'element') {
			elements.push({ name: words[1] ?? '', count: countOf(words[2], where), properties: [] });
		} else if (words[0] === 'property') {
			const element =
				elements.at(-1) ??
				refuse('A property stands before its element', where, 'an "element" line first');
			element.properties.push(propertyOf(words, where));
		}
	}
	refuse('The header has no end', 'header', 'a line "end_header" within the first 1000 lines');
}

function countOf(text: string | undefined, where: string): number {
	const count = Number(text);
	if (!(Number.isInteger(count) && count >= 0 && count <= 0xffff_ffff)) {
		refuse(`An element counts "${text}"`, where, 'a whole number, 0 to 4294967295');
	}
	return count;
}

function propertyOf(words: string[], where: string): PlyProperty {
	const typeOf = (word = ''): PlyType =>
		SIZES.get(word) ?? refuse(`"${word}" is no PLY type`, where, [...SIZES.keys()].join(', '));
	return words[1] === 'list'
		? { name: words[4] ?? '', countType: typeOf(words[2]), type: typeOf(words[3]) }
		: { name: words[2] ?? '', countType: null, type: typeOf(words[1]) };
}
