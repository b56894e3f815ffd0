import { floats, indexes } from './number-list';
import { refuseTooManyTriangles, type ReadLimits } from './read-limits';
import { refuse } from './refusal';
import { scanXml, type Attributes } from './xml-scan';

/** Twelve numbers of a 3MF transform, row by row: a point times the first nine plus the last three. */
export type Transform = readonly number[];

export interface Placed {
	objectId: string;
	transform: Transform;
}

interface ModelObject {
	positions: Float64Array;
	triangles: Uint32Array;
	components: Placed[];
}

export interface Model {
	unit: string;
	objects: Map<string, ModelObject>;
	items: Placed[];
}

const IDENTITY: Transform = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];

/** Objects and build items of one 3MF model. Source: 3MF Core Specification 1.3, chapters 3 and 4 (from memory). */
export function parseModel(text: string, limits: ReadLimits): Model {
	const model: Model = { unit: 'millimeter', objects: new Map(), items: [] };
	let positions = floats();
	let triangles = indexes();
	let components: Placed[] = [];
	let objectId = '';
	scanXml(text, {
		open(name, attributes, at) {
			const where = `character ${at + 1} of the model`;
			if (name === 'vertex') {
				const [x, y, z] = ['x', 'y', 'z'].map((key) => numberOf(attributes, key, where));
				positions.push3(x!, y!, z!);
			} else if (name === 'triangle') {
				const corners = ['v1', 'v2', 'v3'].map((key) => numberOf(attributes, key, where));
				refuseStray(corners, positions.length / 3, where);
				triangles.push3(corners[0]!, corners[1]!, corners[2]!);
				refuseTooManyTriangles(triangles.length / 3, limits, where);
			} else if (name === 'object') {
				objectId = attributes.id ?? refuse('An object has no id', where, 'an id for each object');
				positions = floats();
				triangles = indexes();
				components = [];
			} else if (name === 'component') components.push(placedOf(attributes, where));
			else if (name === 'item') model.items.push(placedOf(attributes, where));
			else if (name === 'model') model.unit = attributes.unit ?? model.unit;
		},
		close(name) {
			if (name !== 'object') return;
			model.objects.set(objectId, {
				positions: positions.toArray(),
				triangles: triangles.toArray(),
				components
			});
		}
	});
	return model;
}

function numberOf(attributes: Attributes, key: string, where: string): number {
	const text = attributes[key];
	const value = text === undefined || text.trim() === '' ? Number.NaN : Number(text);
	if (!Number.isFinite(value)) {
		refuse(`"${key}" is "${(text ?? '').slice(0, 40)}"`, where, 'a finite number');
	}
	return value;
}

function refuseStray(corners: number[], vertexCount: number, where: string): void {
	const stray = corners.find(
		(index) => !(Number.isInteger(index) && index >= 0 && index < vertexCount)
	);
	if (stray !== undefined) {
		refuse(`A triangle names vertex ${stray}`, where, `0 to ${vertexCount - 1}`);
	}
}

function placedOf(attributes: Attributes, where: string): Placed {
	if (attributes.path !== undefined) {
		refuse('A part lies in another file of the archive', where, 'all parts in one model');
	}
	const objectId = attributes.objectid ?? refuse('A part names no object', where, 'an objectid');
	const said = attributes.transform;
	if (said === undefined) return { objectId, transform: IDENTITY };
	const transform = said.trim().split(/\s+/).map(Number);
	if (transform.length !== 12 || !transform.every(Number.isFinite)) {
		refuse('A transform is not twelve numbers', where, 'twelve finite numbers');
	}
	return { objectId, transform };
}
