import type { Bvh } from './bvh';
import { forMeetingPairs } from './meeting-pairs';
import { nearnessOf } from './nearness';
import { trianglesCross } from './triangles-cross';

export interface SelfCrossings {
	/** Triangles that pass through another one, each once. */
	triangles: number[];
	/** False when the search stopped at its limit of pairs: there may be more. */
	isComplete: boolean;
}

/** Pairs of triangles looked at before the search stops; a clean mesh of a million needs about a fifth. A choice. */
const MOST_PAIRS = 40_000_000;
const MOST_FOUND = 10_000;

/** Triangles of a mesh that cross others of it by more than parts that touch may. */
export function selfCrossings(bvh: Bvh): SelfCrossings {
	const [x, y, z] = [0, 1, 2].map((axis) => bvh.boxes[3 + axis]! - bvh.boxes[axis]!);
	const { shallow } = nearnessOf(Math.hypot(x!, y!, z!));
	const found = new Set<number>();
	const isComplete = forMeetingPairs(bvh, { mostPairs: MOST_PAIRS }, (s, t) => {
		if (trianglesCross(bvh.mesh, s, t, shallow)) found.add(s).add(t);
		return found.size <= MOST_FOUND;
	});
	return { triangles: [...found].sort((a, b) => a - b), isComplete };
}
