import { CornersAlong } from './corners-along';
import { vertexAt } from './mesh';
import { PointWelder } from './point-welder';

/** Corner numbers of a convex polygon, counterclockwise seen from outside. */
export type Polygon = readonly number[];

/** Where sides stay without a neighbor, it is looked for this many times farther. Numerical choice. */
const WIDER = [1, 4, 16];

/**
 * Polygons that become neighbors again where one has corners along a side of another. Sides that find no neighbor
 * stay so.
 *
 * @param rest - polygons to be left as they are, which have neighbors among the others
 * @param same - corners this near to each other are one, or lie on a side
 */
export function stitched(
	positions: Float64Array,
	polygons: readonly Polygon[],
	rest: readonly Polygon[],
	same: number
): Polygon[] {
	let done = withoutFlaps(polygons.flatMap(loopsOf));
	for (const times of WIDER) {
		const loose = looseSides([done, rest], positions.length / 3);
		if (loose.size === 0) break;
		done = stitchedAlong(positions, done, loose, times * same);
	}
	return done;
}

/** One number for a side, from corner to corner. */
const sideOf = (from: number, to: number, count: number): number => from * count + to;

/** Sides without one that runs back along them, both ways round. */
function looseSides(lists: readonly (readonly Polygon[])[], count: number): Set<number> {
	const ways = new Map<number, number>();
	for (const polygon of lists.flat()) {
		for (let i = 0; i < polygon.length; i += 1) {
			const [v, next] = [polygon[i]!, polygon[(i + 1) % polygon.length]!];
			const side = v < next ? sideOf(v, next, count) : sideOf(next, v, count);
			ways.set(side, (ways.get(side) ?? 0) + (v < next ? 1 : -1));
		}
	}
	const loose = new Set<number>();
	for (const [side, sum] of ways) {
		if (sum !== 0) loose.add(side).add(sideOf(side % count, Math.floor(side / count), count));
	}
	return loose;
}

function stitchedAlong(
	positions: Float64Array,
	polygons: readonly Polygon[],
	loose: ReadonlySet<number>,
	same: number
): Polygon[] {
	const count = positions.length / 3;
	const welder = new PointWelder(same);
	const mergedTo = new Map<number, number>();
	for (const side of loose) {
		const v = side % count;
		if (!mergedTo.has(v)) mergedTo.set(v, welder.idOf(vertexAt({ positions }, v), v));
	}
	const along = new CornersAlong(positions, [...new Set(mergedTo.values())], same);
	return withoutFlaps(
		polygons.flatMap((polygon) => {
			const whole = polygon.flatMap((from, i) => {
				const to = polygon[(i + 1) % polygon.length]!;
				const start = mergedTo.get(from) ?? from;
				if (!loose.has(sideOf(from, to, count))) return [start];
				return [start, ...along.between(start, mergedTo.get(to) ?? to)];
			});
			return loopsOf(whole);
		})
	);
}

/** A line round as loops that pass each corner once: where a polygon is thin as a hair its sides lie on each other. */
function loopsOf(line: Polygon): Polygon[] {
	const loops: Polygon[] = [];
	const open: number[] = [];
	for (const v of line) {
		const before = open.indexOf(v);
		if (before >= 0) loops.push(open.splice(before));
		open.push(v);
	}
	loops.push(open);
	return loops.filter((loop) => loop.length > 2);
}

/** Leaves out pairs that lie on each other and look opposite ways: there is nothing between them. */
function withoutFlaps(polygons: readonly Polygon[]): Polygon[] {
	const keyOf = (polygon: Polygon): string => {
		const first = polygon.indexOf(Math.min(...polygon));
		return [...polygon.slice(first), ...polygon.slice(0, first)].join();
	};
	const places = new Map<string, number[]>();
	const isLeftOut = new Uint8Array(polygons.length);
	polygons.forEach((polygon, i) => {
		const opposite = places.get(keyOf(polygon.toReversed()))?.pop();
		if (opposite !== undefined) {
			isLeftOut[i] = 1;
			isLeftOut[opposite] = 1;
			return;
		}
		const key = keyOf(polygon);
		places.set(key, [...(places.get(key) ?? []), i]);
	});
	return polygons.filter((_, i) => !isLeftOut[i]);
}
