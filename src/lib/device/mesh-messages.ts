import type { Brush, Unreached } from '../core/geometry/brush';
import type { MeshBody, MeshBridging, MeshPlace } from '../core/geometry/mesh-body';
import type { MeshHandling } from '../core/geometry/mesh-handling';
import type { SimplifiedCopy } from '../core/mesh/coarser';
import type { DemoPattern } from '../core/mesh/demo/demo-patterns';
import type { FirstLook } from '../core/mesh/first-look';
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
	| { kind: 'place'; placement: Placement; brush: Brush }
	| { kind: 'judge'; coats: JudgedCoats }
	| { kind: 'section'; cut: CutPlace; outersMm: number[] }
	| { kind: 'model'; layer: ModelLayer };

/** The coats by which a pattern on the board is judged. */
export interface JudgedCoats {
	/** Reach of the first build coat. */
	reachMm: number;
	/** Of a detail coat, and of thicker coats than planned: looked at as well. */
	otherReachesMm: number[];
	/** All coats together, and how far they lie on the board. */
	gloveMm: number;
	flangeMm: number;
	/** Greatest slope, degrees, on which a build coat stays; 90 and more: on every wall. */
	holdsToDeg: number;
}

/** What the picture in space shows on the pattern. */
export type ModelLayer = 'air' | 'locked' | 'runs' | 'faults';

/** A way to lie on the board. */
export interface RestChoice extends Rest {
	/** Of the pattern when it lies so, in the file's unit. */
	height: number;
	/** By which its longer side runs from left to right. */
	turnDeg: 0 | 90;
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
	layer: ModelLayer;
	positions: Float32Array<ArrayBuffer>;
	triangles: Uint32Array<ArrayBuffer>;
	/** At each corner: depth of air under the first coat, mm, or 1 where the layer says something and 0 elsewhere; null when it was not computed. */
	values: Float32Array<ArrayBuffer> | null;
}

/** A point of the pattern on the board. */
export type Spot = Pick<MeshPlace, 'xMm' | 'yMm' | 'zMm'>;

/** A line in space, x, y, z after each other. */
export type SpaceLine = number[];

/** What the worker says. */
export type MeshSaid =
	| { kind: 'progress'; stage: string; fraction: number | null }
	| { kind: 'looked'; look: FirstLook }
	| { kind: 'opened'; opened: OpenedMesh; file: Blob | null }
	| { kind: 'health'; health: Health }
	| { kind: 'refused'; refusal: Refusal }
	| {
			kind: 'measured';
			measured: MeasuredPattern;
			faultsAt: Spot[];
			simplified: SimplifiedCopy | null;
	  }
	| { kind: 'unreached'; unreached: Unreached }
	| { kind: 'offsets'; offsets: MeshBody['offsets'] }
	| { kind: 'places'; found: FoundPlaces }
	| { kind: 'bridgings'; bridgings: MeshBridging[] }
	| { kind: 'handling'; handling: MeshHandling; parting: SpaceLine[] }
	| { kind: 'idle' }
	| { kind: 'section'; section: MeshSectionCut }
	| { kind: 'model'; model: MeshModel | null }
	| { kind: 'failed'; message: string };
