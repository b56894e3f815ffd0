import type { Mesh } from './mesh';
import { parseModel, type Model, type Placed, type Transform } from './model-3mf';
import { floats, indexes } from './number-list';
import { refuseTooManyTriangles, type ReadLimits } from './read-limits';
import { refuse } from './refusal';
import { unzipModels } from './unzip-bounded';

/** A map, not an object: a file may say that its unit is "constructor". */
const UNIT_MM = new Map([
	['micron', 0.001],
	['millimeter', 1],
	['centimeter', 10],
	['inch', 25.4],
	['foot', 304.8],
	['meter', 1000]
]);
const MOST_DEPTH = 16;
const MOST_PARTS = 100_000;

/** All parts a 3MF file lays out for building, as one mesh in the file's unit. */
export function read3mf(bytes: Uint8Array, limits: ReadLimits): { mesh: Mesh; unitMm: number } {
	const model = parseModel(modelText(unzipModels(bytes, limits)), limits);
	const unitMm =
		UNIT_MM.get(model.unit) ??
		refuse(
			`The unit "${model.unit.slice(0, 40)}" is unknown`,
			'model',
			[...UNIT_MM.keys()].join(', ')
		);
	return { mesh: assembled(model, limits), unitMm };
}

function modelText(files: Map<string, Uint8Array>): string {
	const decoder = new TextDecoder('utf-8', { fatal: false });
	const links = files.get('_rels/.rels');
	const linked =
		links &&
		/<[^<>]*Target\s*=\s*["']\/?([^"']+\.model)["'][^<>]*>/i.exec(decoder.decode(links))?.[1];
	const name = linked ?? [...files.keys()].find((key) => /\.model$/i.test(key));
	const found = name === undefined ? undefined : files.get(name);
	if (!found) refuse('The archive holds no model', 'zip archive', 'a 3MF file');
	return decoder.decode(found);
}

function assembled(model: Model, limits: ReadLimits): Mesh {
	const positions = floats();
	const triangles = indexes();
	let parts = 0;
	const add = ({ objectId, transform }: Placed, outer: Transform[]): void => {
		const object = model.objects.get(objectId);
		if (!object)
			refuse(`A part names object "${objectId.slice(0, 40)}"`, 'build', 'an object of the model');
		const chain = [transform, ...outer];
		if (chain.length > MOST_DEPTH || (parts += 1) > MOST_PARTS) {
			refuse(
				'Parts are nested in each other',
				'build',
				`up to ${MOST_DEPTH} levels and ${MOST_PARTS} parts`
			);
		}
		const first = positions.length / 3;
		refuseTooManyTriangles((triangles.length + object.triangles.length) / 3, limits, 'build');
		for (let i = 0; i < object.positions.length; i += 3) {
			const point = object.positions.subarray(i, i + 3);
			positions.push3(
				...chain.reduce<[number, number, number]>(moved, [point[0]!, point[1]!, point[2]!])
			);
		}
		for (let i = 0; i < object.triangles.length; i += 3) {
			const [a, b, c] = object.triangles.subarray(i, i + 3);
			triangles.push3(first + a!, first + b!, first + c!);
		}
		for (const component of object.components) add(component, chain);
	};
	for (const item of model.items) add(item, []);
	return { positions: positions.toArray(), triangles: triangles.toArray() };
}

function moved([x, y, z]: [number, number, number], m: Transform): [number, number, number] {
	return [
		x * m[0]! + y * m[3]! + z * m[6]! + m[9]!,
		x * m[1]! + y * m[4]! + z * m[7]! + m[10]!,
		x * m[2]! + y * m[5]! + z * m[8]! + m[11]!
	];
}
