import type { Mesh } from './mesh';

/** A point in an upright plane: along it, and above the board. */
export interface PlanePoint {
	alongMm: number;
	upMm: number;
}

/** An upright plane across the x or the y axis. */
export interface UprightPlane {
	across: 'x' | 'y';
	atMm: number;
}

/**
 * Outlines of a mesh where an upright plane cuts it, each a closed ring when the mesh is closed. A
 * corner that lies in the plane counts as before it, so that no triangle is cut twice.
 */
export function planeCut(mesh: Mesh, { across, atMm }: UprightPlane): PlanePoint[][] {
	const { positions, triangles } = mesh;
	const axis = across === 'x' ? 0 : 1;
	const vertices = positions.length / 3;
	const links = new Map<number, number[]>();
	const isBeyond = (v: number): boolean => positions[3 * v + axis]! > atMm;
	for (let t = 0; t < triangles.length; t += 3) {
		const keys: number[] = [];
		for (let k = 0; k < 3; k += 1) {
			const a = triangles[t + k]!;
			const b = triangles[t + ((k + 1) % 3)]!;
			if (isBeyond(a) !== isBeyond(b)) keys.push(Math.min(a, b) * vertices + Math.max(a, b));
		}
		const [from, to] = keys;
		if (from === undefined || to === undefined) continue;
		link(links, from, to);
		link(links, to, from);
	}
	const pointOf = (key: number): PlanePoint => {
		const [a, b] = [3 * Math.floor(key / vertices), 3 * (key % vertices)];
		const t = (atMm - positions[a + axis]!) / (positions[b + axis]! - positions[a + axis]!);
		const along = 1 - axis;
		return {
			alongMm: positions[a + along]! + t * (positions[b + along]! - positions[a + along]!),
			upMm: positions[a + 2]! + t * (positions[b + 2]! - positions[a + 2]!)
		};
	};
	return chains(links).map((chain) => chain.map(pointOf));
}

/** Notes that one crossing follows another. */
export function link(links: Map<number, number[]>, from: number, to: number): void {
	const known = links.get(from);
	if (known) known.push(to);
	else links.set(from, [to]);
}

/** Crossings in the order in which they hang together; the links are used up. */
export function chains(links: Map<number, number[]>): number[][] {
	const found: number[][] = [];
	for (const [start, next] of links) {
		while (next.length > 0) {
			const chain = [start];
			for (let now = start; ;) {
				const to = links.get(now)?.pop();
				if (to === undefined) break;
				const back = links.get(to);
				const at = back?.indexOf(now) ?? -1;
				if (back && at >= 0) back.splice(at, 1);
				if (to === start) break;
				chain.push(to);
				now = to;
			}
			if (chain.length > 1) found.push(chain);
		}
	}
	return found;
}
