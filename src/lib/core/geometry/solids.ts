import type { Body, Solid, Surface } from './pattern';
import { measuredSurface } from './measured-surface';
import { lieOn } from './overhang';
import { meshSurface } from './mesh-body';
import { BOARD, extentAbove, measuresIn, sectionAbove, stackOf, type Stack } from './solid-stack';

export { bodyProblems } from './body-problems';

/** What hangs free over its support looks straight down. */
const OVERHANG_DEG = 180;

/**
 * Area, volume and size of a pattern as it stands on the board.
 *
 * Areas pressed together (a solid on another, or `against` another) are left out on both. Solids on
 * one base stand in a row along the length. Edges where a solid stands on another are left out of
 * the turns: the brush fills them with a fillet.
 *
 * @throws RangeError for an unknown support or a circle of supports; ask `bodyProblems` first
 */
export function surfaceOf(body: Body): Surface {
	if (body.kind === 'mesh') return meshSurface(body);
	return body.kind === 'measured' ? measuredSurface(body) : solidsSurface(body.solids);
}

function solidsSurface(solids: readonly Solid[]): Surface {
	const stack = stackOf(solids);
	const extent = extentAbove(stack, BOARD);
	const pressed = pressedTogether(solids, stack);
	const standing = solids.filter((solid) => solid.on === BOARD);
	const sum = (of: (id: string) => number, among: readonly Solid[] = solids): number =>
		// Sorted for the same reason as a stack is: no last digit depends on the order of the list.
		among
			.map(({ id }) => of(id))
			.sort((a, b) => a - b)
			.reduce((total, value) => total + value, 0);
	const of = (id: string) => measuresIn(stack, id);
	const contacts = solids.map((solid) => contactOn(solid.id, stack));
	const overhangs = contacts.some(({ overhangCm2 }) => overhangCm2 > 1e-9);
	const openCm2 = sum((id) => of(id).sideCm2 + of(id).topCm2 + contactOn(id, stack).changeCm2);
	return {
		exposedAreaCm2: Math.max(0, openCm2 - 2 * pressed.areaCm2),
		volumeMl: sum((id) => of(id).volumeMl),
		footprintCm2: sum((id) => of(id).bottomCm2, standing),
		...extent,
		steepestWallDeg: Math.max(
			overhangs ? OVERHANG_DEG : 0,
			...solids.map(({ id }) => of(id).steepestWallDeg)
		),
		edgeTurnMm: sum((id) => of(id).edgeTurnMm),
		cornerTurnSr: sum((id) => of(id).cornerTurnSr),
		footLengthMm: Math.max(0, sum((id) => of(id).footLengthMm, standing) - 2 * pressed.footMm),
		enclosedBoardCm2: sum((id) => of(id).enclosedBoardCm2, standing),
		profile: sectionAbove(stack, BOARD)
	};
}

/** What the solids standing on `id` do to the exposed area: they hide its top and may overhang it. */
function contactOn(id: string, stack: Stack): { changeCm2: number; overhangCm2: number } {
	const standing = stack.children.get(id) ?? [];
	const sum = (areasCm2: readonly number[]): number =>
		areasCm2.toSorted((a, b) => a - b).reduce((total, value) => total + value, 0);
	const bottomsCm2 = sum(standing.map((above) => measuresIn(stack, above.id).bottomCm2));
	const below = stack.solids.get(id);
	const carriedCm2 = below ? sum(standing.map((above) => lieOn(above, below).carriedCm2)) : 0;
	const hiddenCm2 = Math.min(carriedCm2, measuresIn(stack, id).standingCm2);
	const overhangCm2 = bottomsCm2 - hiddenCm2;
	return { changeCm2: overhangCm2 - hiddenCm2, overhangCm2 };
}

/** Each pair of walls counts once, named from one side or from both. */
function pressedTogether(
	solids: readonly Solid[],
	stack: Stack
): { areaCm2: number; footMm: number } {
	const pairs = new Map<string, { areaCm2: number; footMm: number }>();
	for (const solid of solids) {
		for (const { id, areaCm2 } of solid.against) {
			const key = [solid.id, id].sort().join(' ');
			const lower = Math.min(measuresIn(stack, solid.id).heightMm, measuresIn(stack, id).heightMm);
			const other = solids.find((candidate) => candidate.id === id);
			const isAtFoot = solid.on === BOARD && other?.on === BOARD;
			const known = pairs.get(key);
			if (known && known.areaCm2 >= areaCm2) continue;
			pairs.set(key, { areaCm2, footMm: isAtFoot ? (areaCm2 * 100) / lower : 0 });
		}
	}
	const all = [...pairs.values()].sort((a, b) => a.areaCm2 - b.areaCm2);
	return {
		areaCm2: all.reduce((total, pair) => total + pair.areaCm2, 0),
		footMm: all.reduce((total, pair) => total + pair.footMm, 0)
	};
}
