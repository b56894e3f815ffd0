import { bridgingOf, type Bridging } from '../core/mesh/bridging';
import { sectionBands } from '../core/mesh/coat-section';
import { DEMO_PATTERNS, type DemoPattern } from '../core/mesh/demo/demo-patterns';
import { healthOf } from '../core/mesh/health';
import { measuresOf } from '../core/mesh/measures';
import { triangleCount, type Mesh } from '../core/mesh/mesh';
import { measuredPattern, patternOffsets } from '../core/mesh/pattern-numbers';
import { placedMesh, type Placement } from '../core/mesh/place';
import { readMesh } from '../core/mesh/read-mesh';
import { repairedMesh } from '../core/mesh/repair';
import { restsOf } from '../core/mesh/rests';
import { sectionOf, uprightPlane } from '../core/mesh/section';
import { SurfaceDistance } from '../core/mesh/surface-distance';
import { guessUnit } from '../core/mesh/unit-guess';
import { binaryStl } from '../core/mesh/write-stl';
import type { CutPlace, FoundPlaces, MeshModel, MeshSaid, RestChoice } from './mesh-messages';

/** Beyond this a picture in space takes longer than it is worth. A choice. */
const MOST_DRAWN = 2_000_000;

/** A face on which the pattern tips over sooner than this is none to brush on; common practice, no source. */
const LEAST_TIP_DEG = 5;

interface OnBoard {
	mesh: Mesh;
	surface: SurfaceDistance | null;
	bridging: Bridging | null;
}

/** All that is done with one mesh file, step by step; what is found is said as soon as it is known. */
export class MeshWork {
	readonly #say: (said: MeshSaid) => void;
	/** Lets what was asked meanwhile be answered before the next long step. */
	readonly #pause: () => Promise<void>;
	#mesh: Mesh | null = null;
	#isSolid = false;
	#onBoard: OnBoard | null = null;
	#round = 0;

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
		this.#progress('Reading the triangles');
		await this.#pause();
		const read = readMesh(bytes, name);
		if (!read.ok) return this.#say({ kind: 'refused', refusal: read });
		this.#progress('Repairing what is safe to repair');
		await this.#pause();
		const { mesh, repairs } = repairedMesh(read.mesh);
		if (triangleCount(mesh) < 4) {
			const what = 'The file holds no closed form';
			const accepted = 'four triangles or more that enclose a volume';
			return this.#say({ kind: 'refused', refusal: { ok: false, what, where: name, accepted } });
		}
		this.#mesh = mesh;
		const { min, max } = measuresOf(mesh).bounds;
		const all = restsOf(mesh);
		const stable = all.filter(({ tipsAtDeg }) => tipsAtDeg >= LEAST_TIP_DEG);
		const rests = (stable.length > 0 ? stable : all.slice(0, 1)).map((rest): RestChoice => ({
			...rest,
			height: heightOver(mesh, rest.down)
		}));
		const opened = {
			name,
			format: read.format,
			bytes: bytes.length,
			triangles: triangleCount(mesh),
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
		this.#isSolid = health.trust.distance;
		this.#say({ kind: 'health', health });
		this.#say({ kind: 'idle' });
	}

	/** Lays the mesh on the board and measures it; a newer call ends an older one between its steps. */
	async place(placement: Placement, reachMm: number): Promise<void> {
		const round = (this.#round += 1);
		const isOver = async (stage: string): Promise<boolean> => {
			this.#progress(stage);
			await this.#pause();
			return round !== this.#round;
		};
		if (!this.#mesh || (await isOver('Measuring'))) return;
		const mesh = placedMesh(this.#mesh, placement);
		this.#onBoard = { mesh, surface: null, bridging: null };
		this.#say({ kind: 'measured', measured: measuredPattern(mesh) });
		if (!this.#isSolid) return this.#say({ kind: 'idle' });
		if (await isOver('Computing the coats')) return;
		const surface = (this.#onBoard.surface ??= new SurfaceDistance(mesh));
		this.#say({ kind: 'offsets', offsets: patternOffsets(mesh, surface) });
		if (await isOver('Looking for places that a coat bridges')) return;
		const bridging = bridgingOf(mesh, { reachMm }, surface);
		this.#onBoard.bridging = bridging;
		this.#say({ kind: 'places', found: placesOf(bridging) });
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
		const bands = this.#isSolid
			? sectionBands(mesh, plane, outersMm, (board.surface ??= new SurfaceDistance(mesh)))
			: { pattern: sectionOf(mesh, plane), offsets: [] };
		this.#say({ kind: 'section', section: { cut, ...bands } });
	}

	/** The pattern on the board for a picture in space; null when it is too fine for one. */
	model(): MeshModel | null {
		const board = this.#onBoard;
		if (!board || triangleCount(board.mesh) > MOST_DRAWN) return null;
		const { positions, triangles } = board.bridging?.mesh ?? board.mesh;
		return {
			positions: Float32Array.from(positions),
			triangles: triangles.slice(),
			depthsMm: board.bridging ? Float32Array.from(board.bridging.depthsMm) : null
		};
	}

	#progress(stage: string): void {
		this.#say({ kind: 'progress', stage, fraction: null });
	}
}

function heightOver({ positions }: Mesh, down: readonly [number, number, number]): number {
	let [low, high] = [Infinity, -Infinity];
	for (let i = 0; i < positions.length; i += 3) {
		const depth =
			down[0] * positions[i]! + down[1] * positions[i + 1]! + down[2] * positions[i + 2]!;
		low = Math.min(low, depth);
		high = Math.max(high, depth);
	}
	return high - low;
}

function placesOf(bridging: Bridging): FoundPlaces {
	const { reachMm, areaCm2, unlistedPlaces, finestMm } = bridging;
	const places = bridging.places.map(({ at, ...place }) => {
		const [xMm, yMm, zMm] = at;
		return { ...place, xMm, yMm, zMm };
	});
	return { reachMm, areaCm2, places, unlistedPlaces, finestMm };
}
