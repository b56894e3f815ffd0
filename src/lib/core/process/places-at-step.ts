import type { MeshPlace } from '../geometry/mesh-body';
import { trapsAir } from '../mesh/detail-advice';
import type { ProcessContext } from './context';

/** A point of the pattern on the board. */
type Spot = Pick<MeshPlace, 'xMm' | 'yMm' | 'zMm'>;

/** What the pattern's mesh has to say at one step of the work. */
export interface StepPlaces {
	/** Where air would stay, deepest first: grooves and pits. */
	air: {
		places: MeshPlace[];
		brushTwice: number[];
		/** Those that only the plan lists. */
		morePlaces: number;
		/** Shallower ones that nobody lists. */
		unlistedPlaces: number;
	} | null;
	/** Lines where wall and board meet: to be filled before any coat goes on. */
	foot: MeshPlace[];
	/** Where to start peeling. */
	peelAt: Spot | null;
	/** Pieces that the shell has to be made in; null for one. */
	shellPieces: number | null;
	/** Where keys go into the flange. */
	keysAt: Spot[];
}

/** More of them are in the plan; those to brush twice are never left out. */
const MOST_AT_BENCH = 12;

/** Numbered places and spots for the step at work; null where the mesh has nothing to say to it. */
export function placesAtStep(c: ProcessContext): StepPlaces | null {
	const { plan, phase } = c;
	const { body } = plan.inputs.pattern;
	const handling = body.kind === 'mesh' ? body.handling : undefined;
	const said: StepPlaces = {
		air: isForAir(c) ? airOf(c) : null,
		foot: phase === 'brief' || phase === 'pattern' ? footOf(c) : [],
		peelAt: phase === 'peel' ? (handling?.peelAt ?? null) : null,
		shellPieces:
			phase === 'shell' || phase === 'shellRelease' ? (plan.handling?.pieces ?? null) : null,
		keysAt: phase === 'frame' && handling ? handling.keying.keysAt : []
	};
	const isSilent =
		!said.air &&
		!said.peelAt &&
		said.shellPieces === null &&
		said.foot.length + said.keysAt.length === 0;
	return isSilent ? null : said;
}

/** While people are briefed, and until the first build coat is on. */
function isForAir({ phase, coats, coatIndex }: ProcessContext): boolean {
	if (phase === 'brief' || phase === 'detail') return true;
	return phase === 'build' && coats.findIndex(({ kind }) => kind === 'build') === coatIndex;
}

function footOf({ plan: { bridging } }: ProcessContext): MeshPlace[] {
	return (bridging?.places ?? []).filter(({ kind }) => kind === 'foot').slice(0, MOST_AT_BENCH);
}

function airOf({ plan: { bridging } }: ProcessContext): StepPlaces['air'] {
	if (!bridging) return null;
	const { brushTwice, unlistedPlaces } = bridging;
	const kept = bridging.places.filter(trapsAir);
	const places = kept.filter(({ number }, i) => i < MOST_AT_BENCH || brushTwice.includes(number));
	return kept.length === 0
		? null
		: { places, brushTwice, morePlaces: kept.length - places.length, unlistedPlaces };
}
