import type { Solid } from './pattern';
import { measuresOf, type Point, type SolidMeasures } from './solid-measures';

/** Where a pattern's lowest solids stand. */
export const BOARD = 'board';

export interface Stack {
	children: Map<string, Solid[]>;
	measures: Map<string, SolidMeasures>;
	solids: Map<string, Solid>;
}

export function stackOf(solids: readonly Solid[]): Stack {
	const children = new Map<string, Solid[]>();
	const measures = new Map<string, SolidMeasures>();
	// By id, so that the order in which solids are listed changes no last digit.
	for (const solid of solids.toSorted((a, b) => (a.id < b.id ? -1 : 1))) {
		children.set(solid.on, [...(children.get(solid.on) ?? []), solid]);
		measures.set(solid.id, measuresOf(solid));
	}
	const byId = new Map(solids.map((solid) => [solid.id, solid]));
	return { children, measures, solids: byId };
}

export function measuresIn(stack: Stack, id: string): SolidMeasures {
	const measures = stack.measures.get(id);
	if (!measures) throw new RangeError(`no solid is called "${id}"`);
	return measures;
}

interface Extent {
	lengthMm: number;
	widthMm: number;
	heightMm: number;
}

/**
 * Size of all that stands on `base`. Solids on one base are taken to stand in a row along the
 * length, touching, centered across the width: positions are not asked for.
 */
export function extentAbove(stack: Stack, base: string): Extent {
	const total = { lengthMm: 0, widthMm: 0, heightMm: 0 };
	for (const solid of stack.children.get(base) ?? []) {
		const own = measuresIn(stack, solid.id);
		const above = extentAbove(stack, solid.id);
		total.lengthMm += Math.max(own.lengthMm, above.lengthMm);
		total.widthMm = Math.max(total.widthMm, own.widthMm, above.widthMm);
		total.heightMm = Math.max(total.heightMm, own.heightMm + above.heightMm);
	}
	return total;
}

/** Section through the row that stands on `base`, centered on x = 0, its foot at y = 0. */
export function sectionAbove(stack: Stack, base: string): Point[] {
	const row = stack.children.get(base) ?? [];
	let xMm = -extentAbove(stack, base).lengthMm / 2;
	return row.flatMap((solid) => {
		const own = measuresIn(stack, solid.id);
		const lengthMm = Math.max(own.lengthMm, extentAbove(stack, solid.id).lengthMm);
		const centerMm = xMm + lengthMm / 2;
		xMm += lengthMm;
		const raised = sectionAbove(stack, solid.id).map((p) => ({
			xMm: p.xMm,
			yMm: p.yMm + own.heightMm
		}));
		return onTop(own.section, raised).map((p) => ({ xMm: p.xMm + centerMm, yMm: p.yMm }));
	});
}

function onTop(below: readonly Point[], above: readonly Point[]): Point[] {
	const [first, last] = [above[0], above.at(-1)];
	if (!first || !last) return [...below];
	const isHidden = ({ xMm }: Point) => xMm > first.xMm && xMm < last.xMm;
	const half = below.length / 2;
	// The foot and the first point of the wall stay, even below something that overhangs.
	const left = below.slice(0, Math.ceil(half)).filter((p, i) => i < 2 || !isHidden(p));
	const right = below
		.slice(Math.floor(half))
		.filter((p, i, all) => i > all.length - 3 || !isHidden(p));
	return [...left, ...above, ...right];
}
