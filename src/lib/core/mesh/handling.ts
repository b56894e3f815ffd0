import type { MeshHandling } from '../geometry/mesh-handling';
import { exposedOf } from './exposed';
import { keyingOf } from './keying';
import { measuresOf } from './measures';
import type { Mesh, Vec3 } from './mesh';
import type { ShellOpening } from './opening';
import { peelStart } from './peel';
import { puddlesOf } from './puddles';
import { refinedMesh } from './refine';
import { stretchOf } from './stretch';
import type { SurfaceDistance } from './surface-distance';
import { undercutOf } from './undercut';

/** Triangles that puddles are looked for on; a choice. */
const MOST_TRIANGLES = 300_000;
const MOST_PUDDLES = 20;

/**
 * How glove and shell come off a placed pattern, where to begin and what keys them, to be kept with it.
 *
 * @param gloveMm - thickness of the glove, above 0
 * @param flangeMm - width of the flange, where keys can stand
 */
export function handlingOf(
	mesh: Mesh,
	surface: SurfaceDistance,
	opening: ShellOpening,
	{ gloveMm, flangeMm }: { gloveMm: number; flangeMm: number }
): MeshHandling {
	const { bounds, center } = measuresOf(mesh);
	const size = Math.max(...bounds.max.map((high, axis) => high - bounds.min[axis]!));
	const undercut = undercutOf(surface);
	const stretch = stretchOf(mesh);
	const peelAt = peelStart(surface);
	const keying = keyingOf(surface, gloveMm, flangeMm);
	const fine = refinedMesh(mesh, Math.max(1, size / 150), MOST_TRIANGLES).mesh;
	const puddles = puddlesOf(fine);
	return {
		gloveMm,
		center: spotOf(center),
		undercut: {
			depthMm: tidy(undercut.depthMm),
			areaCm2: tidy(undercut.areaCm2),
			at: undercut.at && spotOf(undercut.at)
		},
		stretch: { fraction: tidy(stretch.fraction), zMm: tidy(stretch.zMm) },
		peelAt: peelAt && spotOf(peelAt),
		opening: openingOf(opening),
		keying: {
			slideMm: finite(keying.slideMm),
			turnDeg: finite(keying.turnDeg),
			isKeyed: keying.isKeyed,
			keysAt: keying.keysAt.map(spotOf)
		},
		puddles: puddles.slice(0, MOST_PUDDLES).map(({ number, at, depthMm, areaCm2, volumeMl }) => ({
			number,
			...spotOf(at),
			depthMm: tidy(depthMm),
			areaCm2: tidy(areaCm2),
			volumeMl: tidy(volumeMl)
		})),
		unlistedPuddles: Math.max(0, puddles.length - MOST_PUDDLES),
		slopeAreasCm2: Array.from(exposedOf(mesh).slopeAreasCm2, tidy)
	};
}

function openingOf({ parted, ...opening }: ShellOpening): MeshHandling['opening'] {
	return {
		isFree: opening.isFree,
		direction: [...opening.direction],
		lockedCm2: opening.isFree ? 0 : tidy(opening.lockedCm2),
		lockedFraction: opening.isFree ? 0 : Math.min(1, tidy(opening.lockedFraction)),
		parted: parted && {
			pieces: parted.third ? 3 : 2,
			normal: [...parted.plane.normal],
			offsetMm: tidy(parted.plane.offsetMm),
			lockedCm2: tidy(parted.lockedMm2 / 100),
			...(parted.third && {
				third: {
					direction: [...parted.third.direction] as [number, number, number],
					...spotOf(parted.third.at),
					areaCm2: tidy(parted.third.areaMm2 / 100)
				}
			})
		},
		freeingGloveMm: opening.freeingGloveMm
	};
}

function spotOf([x, y, z]: Vec3): { xMm: number; yMm: number; zMm: number } {
	return { xMm: tidy(x), yMm: tidy(y), zMm: tidy(z) };
}

/** Four decimals are finer than anything that is measured here, and half as long to keep. */
function tidy(value: number): number {
	return Math.round(value * 1e4) / 1e4;
}

/** More than this far is free. */
function finite(value: number): number | null {
	return value < 1e4 ? tidy(value) : null;
}
