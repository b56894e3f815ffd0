import type { MeshBody, MeshPlace } from '../core/geometry/mesh-body';
import type { DemoPattern } from '../core/mesh/demo/demo-patterns';
import type { Health } from '../core/mesh/health';
import type { MeasuredPattern } from '../core/mesh/pattern-numbers';
import type { Placement } from '../core/mesh/place';
import type { MeshFormat } from '../core/mesh/read-mesh';
import type { Refusal } from '../core/mesh/refusal';
import type { Repairs } from '../core/mesh/repair';
import type { SectionBands } from '../core/mesh/coat-section';
import type { Rest } from '../core/mesh/rests';
import type { UnitGuess } from '../core/mesh/unit-guess';

/** What the page asks of the worker. */
export type MeshAsk =
	| { kind: 'open'; file: Blob; name: string }
	| { kind: 'demo'; demo: DemoPattern['id'] }
	| { kind: 'place'; placement: Placement; reachMm: number }
	| { kind: 'section'; cut: CutPlace; outersMm: number[] }
	| { kind: 'model' };

/** A way to lie on the board, with the pattern's height when it lies so, in the file's unit. */
export interface RestChoice extends Rest {
	height: number;
}

export interface OpenedMesh {
	name: string;
	format: MeshFormat;
	bytes: number;
	triangles: number;
	/** Sides of the box in the file's axes and unit. */
	sides: [number, number, number];
	/** Null when a person must say it. */
	unitMm: number | null;
	guess: UnitGuess;
	rests: RestChoice[];
	repairs: Repairs;
}

export interface FoundPlaces {
	reachMm: number;
	areaCm2: number;
	places: MeshPlace[];
	unlistedPlaces: number;
	finestMm: number;
}

/** An upright plane across the pattern's length (x) or width (y). */
export interface CutPlace {
	across: 'length' | 'width';
	atMm: number;
}

export interface MeshSectionCut extends SectionBands {
	cut: CutPlace;
}

export interface MeshModel {
	positions: Float32Array<ArrayBuffer>;
	triangles: Uint32Array<ArrayBuffer>;
	/** Depth of air under the first coat at each corner; null when it was not computed. */
	depthsMm: Float32Array<ArrayBuffer> | null;
}

/** What the worker says. */
export type MeshSaid =
	| { kind: 'progress'; stage: string; fraction: number | null }
	| { kind: 'opened'; opened: OpenedMesh; file: Blob | null }
	| { kind: 'health'; health: Health }
	| { kind: 'refused'; refusal: Refusal }
	| { kind: 'measured'; measured: MeasuredPattern }
	| { kind: 'offsets'; offsets: MeshBody['offsets'] }
	| { kind: 'places'; found: FoundPlaces }
	| { kind: 'idle' }
	| { kind: 'section'; section: MeshSectionCut }
	| { kind: 'model'; model: MeshModel | null }
	| { kind: 'failed'; message: string };
