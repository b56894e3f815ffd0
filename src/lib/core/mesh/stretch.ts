import { measuresOf } from './measures';
import type { Mesh } from './mesh';
import { sectionOf, type Outline } from './section';

export interface Stretch {
	/** Greatest elongation of a ring of the glove on its way over what stands above it, 1 = twice as long. */
	fraction: number;
	/** Height of that ring, mm. */
	zMm: number;
}

/** Part of the elongation at break that a glove should use when it is peeled; common practice, no source. */
const USABLE_FRACTION = 1 / 3;
const LEVELS = 60;

/**
 * How far a glove must stretch to come off upward in one pull: each ring has to pass the longest ring
 * above it. Rings are taken around the hull of each level; a peel that starts at an open side needs less.
 */
export function stretchOf(mesh: Mesh): Stretch {
	const { min, max } = measuresOf(mesh).bounds;
	const height = max[2] - min[2];
	let [longest, fraction, zMm] = [0, 0, 0];
	for (let level = LEVELS - 1; level >= 0; level -= 1) {
		const z = min[2] + ((level + 0.5) / LEVELS) * height;
		const ring = hullLengthMm(sectionOf(mesh, { normal: [0, 0, 1], offsetMm: z }).flat());
		if (ring === 0) continue;
		if (longest / ring - 1 > fraction) [fraction, zMm] = [longest / ring - 1, z];
		longest = Math.max(longest, ring);
	}
	return { fraction, zMm };
}

/** Whether a glove of this elongation at break (a fraction, 4 for 400 %) stands the stretch with something in hand. */
export function standsStretch({ fraction }: Stretch, elongationAtBreakFraction: number): boolean {
	return fraction <= elongationAtBreakFraction * USABLE_FRACTION;
}

/** Length around the convex hull of points. Source: Andrew 1979, monotone chain (from memory). */
function hullLengthMm(points: Outline): number {
	const sorted = points.toSorted((a, b) => a.xMm - b.xMm || a.yMm - b.yMm);
	const half = (from: Outline): Outline => {
		const chain: Outline = [];
		for (const p of from) {
			while (chain.length > 1 && !turnsLeft(chain.at(-2)!, chain.at(-1)!, p)) chain.pop();
			chain.push(p);
		}
		return chain.slice(0, -1);
	};
	const hull = [...half(sorted), ...half(sorted.toReversed())];
	return hull.reduce((sum, p, i) => {
		const q = hull[(i + 1) % hull.length]!;
		return sum + Math.hypot(q.xMm - p.xMm, q.yMm - p.yMm);
	}, 0);
}

function turnsLeft(a: Outline[0], b: Outline[0], c: Outline[0]): boolean {
	return (b.xMm - a.xMm) * (c.yMm - a.yMm) - (b.yMm - a.yMm) * (c.xMm - a.xMm) > 0;
}
