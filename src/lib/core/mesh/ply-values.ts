import { ByteScanner } from './byte-scanner';
import type { PlyHeader, PlyType } from './ply-header';
import { refuse } from './refusal';

/** Gives the next value of a PLY file's data, whatever its format. */
export type NextPlyValue = (type: PlyType) => number;

export const PLY_BYTES: Record<PlyType, number> = {
	int8: 1,
	uint8: 1,
	int16: 2,
	uint16: 2,
	int32: 4,
	uint32: 4,
	float32: 4,
	float64: 8
};

/** A reader of values from where the header ends; it refuses when the data end too early. */
export function plyValues(bytes: Uint8Array, header: PlyHeader): NextPlyValue {
	return header.format === 'ascii'
		? textValues(new ByteScanner(bytes, header.at))
		: binaryValues(bytes, header.at, header.format === 'little');
}

function textValues(scan: ByteScanner): NextPlyValue {
	return () => {
		const value = scan.number();
		if (Number.isNaN(value)) {
			const where = `line ${scan.lineAt(scan.at)}`;
			if (scan.at >= scan.end)
				refuse('The data end too early', where, 'as many lines as the header counts');
			refuse(`"${scan.word().slice(0, 40)}" is no number`, where, 'finite numbers');
		}
		return value;
	};
}

function binaryValues(bytes: Uint8Array, from: number, isLittle: boolean): NextPlyValue {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
	let at = from;
	return (type) => {
		const start = at;
		at += PLY_BYTES[type];
		if (at > bytes.length) {
			refuse(
				'The data end too early',
				`byte ${bytes.length}`,
				'as many bytes as the header counts'
			);
		}
		switch (type) {
			case 'int8':
				return view.getInt8(start);
			case 'uint8':
				return view.getUint8(start);
			case 'int16':
				return view.getInt16(start, isLittle);
			case 'uint16':
				return view.getUint16(start, isLittle);
			case 'int32':
				return view.getInt32(start, isLittle);
			case 'uint32':
				return view.getUint32(start, isLittle);
			case 'float32':
				return view.getFloat32(start, isLittle);
			case 'float64':
				return view.getFloat64(start, isLittle);
		}
	};
}
