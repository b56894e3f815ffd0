import { NARROWEST_BRUSH, type Brush } from '../core/geometry/brush';
import type { MeshBridging } from '../core/geometry/mesh-body';
import { bridgingOf, type Bridging } from '../core/mesh/bridging';
import { judgedMesh, keepsVolume } from '../core/mesh/coarser';
import { sectionBands } from '../core/mesh/coat-section';
import { DEMO_PATTERNS, type DemoPattern } from '../core/mesh/demo/demo-patterns';
import { firstLook } from '../core/mesh/first-look';
import { handlingOf } from '../core/mesh/handling';
import { healthOf, type Health } from '../core/mesh/health';
import { measuresOf } from '../core/mesh/measures';
import { triangleCount, vertexAt, type Mesh, type Vec3 } from '../core/mesh/mesh';
import { shellOpening, type ShellOpening } from '../core/mesh/opening';
import { measuredPattern, patternOffsets } from '../core/mesh/pattern-numbers';
import { lyingSides, placedMesh, type Placement } from '../core/mesh/place';
import { readMesh } from '../core/mesh/read-mesh';
import { joinedParts, repairedMesh } from '../core/mesh/repair';
import { restsOf, type Rest } from '../core/mesh/rests';
import { pointOnPlane, sectionOf, uprightPlane } from '../core/mesh/section';
import { binaryStlMeasures } from '../core/mesh/stl-measures';
import { SurfaceDistance } from '../core/mesh/surface-distance';
import { dot } from '../core/mesh/vector';
import { guessUnit } from '../core/mesh/unit-guess';
import { unreachedOf } from '../core/mesh/unreached';
import { binaryStl } from '../core/mesh/write-stl';
import { modelOf } from './mesh-layers';
import type {
	CutPlace,
	FoundPlaces,
	JudgedCoats,
	MeshModel,
	MeshSaid,
	ModelLayer,
	RestChoice,
	SpaceLine,
	Spot
} from './mesh-messages';

/** Beyond this a picture in space takes longer than it is worth. A choice. */
const MOST_DRAWN = 1_000_000;

/** A face on which the pattern tips over sooner than this is none to brush on; common practice, no source. */
const LEAST_TIP_DEG = 5;

/** Triangles for the reaches that only stand in when a plan takes other coats. A choice. */
const MOST_OF_OTHERS = 150_000;

interface OnBoard {
	/** As it came, or a copy of fewer triangles. */
	mesh: Mesh;
	isCopy: boolean;
	isSolid: boolean;
	surface: SurfaceDistance | null;
	bridging: Bridging | null;
	opening: ShellOpening | null;
	holdsToDeg: number | null;
}

/** All that is done with one mesh file, step by step; what is found is said as soon as it is known. */
export class MeshWork {
	readonly #say: (said: MeshSaid) => void;
	/** Lets what was asked meanwhile be answered before the next long step. */
	readonly #pause: () => Promise<void>;
	#mesh: Mesh | null = null;
	#health: Health | null = null;
	#onBoard: OnBoard | null = null;
	/** Counts what was asked, so that a newer wish ends an older one. */
	#round = 0;
	#judged = 0;
	#placing: Promise<void> = Promise.resolve();

	constructor(say: (said: MeshSaid) => void, pause: () => Promise<void>) {
		this.#say = say;
		this.#pause = pause;
	}

	/** Opens one of the invented patterns as if it had come in a file. */
	async openDemo(id: DemoPattern['id']): Promise<void> {
		const demo = DEMO_PATTERNS.find((known) => known.id === id);
		if (!demo) throw new RangeError(`no invented pattern is called ${id}`);
		const bytes = binaryStl(demo.mesh());
		await this.open(bytes, `${id}.stl`, new Blob([bytes]));
	}

	async open(bytes: Uint8Array, name: string, file: Blob | null = null): Promise<void> {
		this.#progress(readingStage(bytes));
		await this.#pause();
		const read = readMesh(bytes, name);
		if (!read.ok) return this.#say({ kind: 'refused', refusal: read });
		// Before all that takes long: somebody who picked the wrong file sees it now.
		this.#say({ kind: 'looked', look: firstLook(read.mesh) });
		this.#progress('Repairing what is safe to repair');
		await this.#pause();
		const repaired = repairedMesh(read.mesh);
		if (triangleCount(repaired.mesh) < 4) {
			const what = 'The file holds no closed form';
			const accepted = 'four triangles or more that enclose a volume';
			return this.#say({ kind: 'refused', refusal: { ok: false, what, where: name, accepted } });
		}
		this.#progress('Joining parts that touch');
		await this.#pause();
		const { mesh, repairs } = joinedParts(repaired);
		this.#mesh = mesh;
		const { min, max } = measuresOf(mesh).bounds;
		const rests = offeredRests(restsOf(mesh)).map((rest) => restChoice(mesh, rest));
		const opened = {
			name,
			format: read.format,
			bytes: bytes.length,
			triangles: triangleCount(repaired.mesh),
			sides: [max[0] - min[0], max[1] - min[1], max[2] - min[2]] as [number, number, number],
			unitMm: read.unitMm,
			guess: guessUnit({ min, max }),
			rests,
			repairs
		};
		this.#say({ kind: 'opened', opened, file });
		this.#progress('Looking for faults');
		await this.#pause();
		const health = healthOf(mesh);
		this.#health = health;
		this.#say({ kind: 'health', health });
		this.#say({ kind: 'idle' });
	}

	/** Lays the mesh on the board and measures it; a newer call ends an older one between its steps. */
	place(placement: Placement, brush: Brush = NARROWEST_BRUSH): Promise<void> {
		this.#placing = this.#lay(placement, brush);
		return this.#placing;
	}

	async #lay(placement: Placement, brush: Brush): Promise<void> {
		const round = (this.#round += 1);
		const isOver = async (stage: string): Promise<boolean> => {
			this.#progress(stage);
			await this.#pause();
			return round !== this.#round;
		};
		if (!this.#mesh || (await isOver('Measuring'))) return;
		const whole = placedMesh(this.#mesh, placement);
		const { mesh, simplified } = judgedMesh(whole);
		const board = {
			mesh,
			isCopy: mesh !== whole,
			isSolid: this.#isSolid && keepsVolume(simplified),
			surface: null,
			bridging: null,
			opening: null,
			holdsToDeg: null
		};
		this.#onBoard = board;
		const faultsAt = this.#health?.faults.map(({ triangles: [t] }) =>
			spotOf(vertexAt(whole, whole.triangles[3 * (t ?? 0)]!))
		);
		const measured = measuredPattern(whole);
		this.#say({ kind: 'measured', measured, faultsAt: faultsAt ?? [], simplified });
		if (board.isSolid && !(await isOver('Looking what no brush reaches'))) {
			const unreached = unreachedOf(board.mesh, brush, this.#surfaceOf(board));
			this.#say({ kind: 'unreached', unreached });
		}
		if (board.isSolid && !(await isOver('Computing the coats'))) {
			const offsets = patternOffsets(board.mesh, this.#surfaceOf(board));
			if (round === this.#round) this.#say({ kind: 'offsets', offsets });
		}
		if (round === this.#round) this.#say({ kind: 'idle' });
	}

	/** What coats bridge on what lies on the board, and how glove and shell come off it. */
	async judge(coats: JudgedCoats): Promise<void> {
		const judged = (this.#judged += 1);
		await this.#placing;
		const board = this.#onBoard;
		if (!board?.isSolid) return;
		board.holdsToDeg = coats.holdsToDeg;
		const isOver = async (stage: string): Promise<boolean> => {
			if (judged !== this.#judged || board !== this.#onBoard) return true;
			this.#progress(stage);
			await this.#pause();
			return judged !== this.#judged || board !== this.#onBoard;
		};
		const { mesh } = board;
		const surface = this.#surfaceOf(board);
		if (await isOver('Looking for places that a coat bridges')) return;
		const { reachMm, otherReachesMm, gloveMm, flangeMm } = coats;
		const bridging = bridgingOf(mesh, { reachMm }, surface);
		board.bridging = bridging;
		this.#say({ kind: 'places', found: placesOf(bridging) });
		if (await isOver('Looking whether the shell comes off')) return;
		board.opening = shellOpening(mesh, gloveMm, surface);
		if (await isOver('Looking for keys, puddles and where to peel')) return;
		const handling = handlingOf(mesh, surface, board.opening, { gloveMm, flangeMm });
		this.#say({ kind: 'handling', handling, parting: partingLines(mesh, board.opening) });
		const bridgings = [keptOf(bridging)];
		for (const other of otherReachesMm) {
			if (await isOver('Looking what thinner and thicker coats bridge')) return;
			const options = { reachMm: other, maxTriangles: MOST_OF_OTHERS };
			bridgings.push(keptOf(bridgingOf(mesh, options, surface)));
		}
		bridgings.sort((a, b) => a.reachMm - b.reachMm);
		this.#say({ kind: 'bridgings', bridgings });
		this.#say({ kind: 'idle' });
	}

	/** Cuts what lies on the board; bands of coats only where inside and outside can be told. */
	section(cut: CutPlace, outersMm: number[]): void {
		const board = this.#onBoard;
		if (!board) return;
		const plane = uprightPlane(
			cut.across === 'length'
				? { xMm: cut.atMm, yMm: 0, turnDeg: 90 }
				: { xMm: 0, yMm: cut.atMm, turnDeg: 0 }
		);
		const { mesh } = board;
		const bands = board.isSolid
			? sectionBands(mesh, plane, outersMm, this.#surfaceOf(board))
			: { pattern: sectionOf(mesh, plane), offsets: [] };
		this.#say({ kind: 'section', section: { cut, ...bands } });
	}

	/** The pattern on the board for a picture in space; null when it is too fine for one. */
	model(layer: ModelLayer): MeshModel | null {
		const board = this.#onBoard;
		if (!board || triangleCount(board.mesh) > MOST_DRAWN) return null;
		// The faults are those of triangles that a copy does not have.
		return modelOf(layer, { ...board, health: board.isCopy ? null : this.#health });
	}

	get #isSolid(): boolean {
		return this.#health?.trust.distance ?? false;
	}

	#surfaceOf(board: OnBoard): SurfaceDistance {
		return (board.surface ??= new SurfaceDistance(board.mesh));
	}

	#progress(stage: string): void {
		this.#say({ kind: 'progress', stage, fraction: null });
	}
}

/** The size of a binary STL comes straight from its bytes, before its triangles are joined. */
function readingStage(bytes: Uint8Array): string {
	const first = binaryStlMeasures(bytes);
	if (!first || !(first.area > 0 && first.area < Infinity)) return 'Reading the triangles';
	const { min, max } = first.bounds;
	const sides = max.map((high, axis) => Number((high - min[axis]!).toPrecision(3)));
	return `Reading the triangles: ${sides.join(' × ')} in the file’s unit`;
}

/** Faces that lean less than this from a side of the file lie as that side does: 3°. A choice. */
const ALIKE_COS = Math.cos((3 * Math.PI) / 180);
const SIDES: readonly Vec3[] = [
	[0, 0, -1],
	[0, 0, 1],
	[-1, 0, 0],
	[1, 0, 0],
	[0, -1, 0],
	[0, 1, 0]
];

/** The faces it stays on, then each side of the file that is none of them: a figure on a narrow foot, a pipe that rolls. */
function offeredRests(all: readonly Rest[]): Rest[] {
	const stable = all.filter(({ tipsAtDeg }) => tipsAtDeg >= LEAST_TIP_DEG);
	const offered = stable.length > 0 ? stable : all.slice(0, 1);
	for (const side of SIDES) {
		const isLike = ({ down }: Rest): boolean => dot(down, side) > ALIKE_COS;
		if (offered.some(isLike)) continue;
		offered.push(all.find(isLike) ?? { down: side, area: 0, tipsAtDeg: 0 });
	}
	return offered;
}

/** A side this much longer is seen to be the longer one. A choice. */
const LONGER = 1.02;

function restChoice(mesh: Mesh, rest: Rest): RestChoice {
	const { x, y, height } = lyingSides(mesh, rest.down);
	return { ...rest, height, turnDeg: y > LONGER * x ? 90 : 0 };
}

function spotOf([xMm, yMm, zMm]: Vec3): Spot {
	return { xMm, yMm, zMm };
}

function placesOf(bridging: Bridging): FoundPlaces {
	const { reachMm, areaCm2, unlistedPlaces, finestMm } = bridging;
	const places = bridging.places.map(({ at, ...place }) => ({ ...place, ...spotOf(at) }));
	return { reachMm, areaCm2, places, unlistedPlaces, finestMm };
}

/** Where the parting plane meets the pattern, and around a third piece. */
function partingLines(mesh: Mesh, { parted, thirdOutlines }: ShellOpening): SpaceLine[] {
	if (!parted) return [];
	const { plane } = parted;
	const halves = sectionOf(mesh, plane).map((outline) =>
		outline.flatMap((point) => pointOnPlane(plane, point))
	);
	return [...halves, ...thirdOutlines];
}

/** What a pattern keeps of it. */
function keptOf(bridging: Bridging): MeshBridging {
	const { reachMm, areaCm2, places, unlistedPlaces } = placesOf(bridging);
	return { reachMm, areaCm2, places, unlistedPlaces };
}
