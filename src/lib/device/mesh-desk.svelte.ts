import { NARROWEST_BRUSH, type Brush, type Unreached } from '../core/geometry/brush';
import type { MeshBody, MeshBridging } from '../core/geometry/mesh-body';
import type { MeshHandling } from '../core/geometry/mesh-handling';
import { keepsVolume, type SimplifiedCopy } from '../core/mesh/coarser';
import type { DemoPattern } from '../core/mesh/demo/demo-patterns';
import type { FirstLook } from '../core/mesh/first-look';
import type { Health } from '../core/mesh/health';
import type { MeasuredPattern } from '../core/mesh/pattern-numbers';
import type { Placement } from '../core/mesh/place';
import type { Refusal } from '../core/mesh/refusal';
import type {
	CutPlace,
	FoundPlaces,
	JudgedCoats,
	MeshAsk,
	MeshModel,
	MeshSaid,
	MeshSectionCut,
	ModelLayer,
	OpenedMesh,
	SpaceLine,
	Spot
} from './mesh-messages';
import { startMeshWorker } from './start-mesh-worker';

/** The page's side of the worker that reads, measures and cuts one mesh file. */
export class MeshDesk {
	/** Null while nothing is under way. */
	progress = $state.raw<{ stage: string; fraction: number | null } | null>(null);
	refusal = $state.raw<Refusal | null>(null);
	/** Known before anything else of the mesh. */
	look = $state.raw<FirstLook | null>(null);
	opened = $state.raw<OpenedMesh | null>(null);
	health = $state.raw<Health | null>(null);
	measured = $state.raw<MeasuredPattern | null>(null);
	/** One place of each kind of fault, in the order of `health.faults`, on the board. */
	faultsAt = $state.raw<Spot[]>([]);
	/** Null when all triangles are judged. */
	simplified = $state.raw<SimplifiedCopy | null>(null);
	unreached = $state.raw<Unreached | null>(null);
	offsets = $state.raw<MeshBody['offsets'] | null>(null);
	found = $state.raw<FoundPlaces | null>(null);
	/** For other coats than the first build coat. */
	bridgings = $state.raw<MeshBridging[] | null>(null);
	handling = $state.raw<MeshHandling | null>(null);
	/** The parting plane's way over the pattern. */
	parting = $state.raw<SpaceLine[]>([]);
	section = $state.raw<MeshSectionCut | null>(null);
	model = $state.raw<MeshModel | null>(null);
	/** The mesh has more triangles than a picture in space can turn. */
	isTooFine = $state(false);
	/** The file as it is sent to the store. */
	file: Blob | null = null;
	/** Whether inside and outside of what is judged can be told, so that coats can be computed. */
	readonly isSolid = $derived(
		(this.health?.trust.distance ?? false) && keepsVolume(this.simplified)
	);
	#worker: Worker | null = null;
	#isCutting = false;
	#nextCut: MeshAsk | null = null;

	/** Reads a file; whatever was open before is put away. */
	open(file: File): void {
		this.#start(file);
		this.#ask({ kind: 'open', file, name: file.name });
	}

	openDemo(demo: DemoPattern['id']): void {
		this.#start(null);
		this.#ask({ kind: 'demo', demo });
	}

	/** Lays the mesh down and measures it, as far as this brush reaches. */
	place(placement: Placement, brush: Brush = NARROWEST_BRUSH): void {
		this.#forgetBoard();
		this.#ask({ kind: 'place', placement, brush });
	}

	/** Looks what these coats bridge, and how glove and shell come off. */
	judge(coats: JudgedCoats): void {
		this.#forgetJudged();
		this.#ask({ kind: 'judge', coats });
	}

	/** Asks for a section; while one is under way only the latest wish is kept. */
	cut(cut: CutPlace, outersMm: number[]): void {
		const ask: MeshAsk = { kind: 'section', cut, outersMm };
		if (this.#isCutting) this.#nextCut = ask;
		else {
			this.#isCutting = true;
			this.#ask(ask);
		}
	}

	/** Asks for the picture in space: `model` holds it, or `isTooFine` says why there is none. */
	draw(layer: ModelLayer): void {
		this.#ask({ kind: 'model', layer });
	}

	/** Stops at once, whatever is under way. */
	close(): void {
		this.#worker?.terminate();
		this.#worker = null;
		this.#clear();
	}

	#start(file: File | null): void {
		this.close();
		this.file = file;
		this.progress = { stage: 'Starting', fraction: null };
		this.#worker = startMeshWorker();
		this.#worker.onmessage = ({ data }: MessageEvent<MeshSaid>) => this.#hear(data);
		this.#worker.onerror = () => this.#fail('the part that reads files could not start');
	}

	#ask(ask: MeshAsk): void {
		this.#worker?.postMessage(ask);
	}

	#clear(): void {
		this.refusal = null;
		this.progress = null;
		this.look = null;
		this.opened = null;
		this.health = null;
		this.#forgetBoard();
		this.file = null;
		this.#isCutting = false;
		this.#nextCut = null;
	}

	#forgetBoard(): void {
		this.measured = null;
		this.simplified = null;
		this.faultsAt = [];
		this.unreached = null;
		this.offsets = null;
		this.section = null;
		this.model = null;
		this.#forgetJudged();
	}

	#forgetJudged(): void {
		this.found = null;
		this.bridgings = null;
		this.handling = null;
		this.parting = [];
	}

	#fail(message: string): void {
		this.close();
		this.refusal = {
			ok: false,
			what: `This file was too much for this device (${message})`,
			where: 'whole file',
			accepted: 'a coarser mesh, or another device'
		};
	}

	#haveCut(section: MeshSectionCut): void {
		this.section = section;
		const next = this.#nextCut;
		this.#nextCut = null;
		this.#isCutting = next !== null;
		if (next) this.#ask(next);
	}

	#hear(said: MeshSaid): void {
		if (said.kind === 'progress') this.progress = { stage: said.stage, fraction: said.fraction };
		else if (said.kind === 'idle') this.progress = null;
		else if (said.kind === 'looked') this.look = said.look;
		else if (said.kind === 'opened') {
			this.opened = said.opened;
			this.file = said.file ?? this.file;
		} else if (said.kind === 'health') this.health = said.health;
		else if (said.kind === 'measured') {
			this.measured = said.measured;
			this.faultsAt = said.faultsAt;
			this.simplified = said.simplified;
		} else if (said.kind === 'unreached') this.unreached = said.unreached;
		else if (said.kind === 'offsets') this.offsets = said.offsets;
		else if (said.kind === 'places') this.found = said.found;
		else if (said.kind === 'bridgings') this.bridgings = said.bridgings;
		else if (said.kind === 'handling') {
			this.handling = said.handling;
			this.parting = said.parting;
		} else if (said.kind === 'section') this.#haveCut(said.section);
		else if (said.kind === 'model') {
			this.model = said.model;
			this.isTooFine = said.model === null;
		} else if (said.kind === 'failed') this.#fail(said.message);
		else {
			this.close();
			this.refusal = said.refusal;
		}
	}
}
