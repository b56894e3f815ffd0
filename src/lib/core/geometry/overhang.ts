import type { Solid } from './pattern';

/** A face that lies flat, centered over the middle of what carries it. */
type Face = { radiusMm: number; holeMm: number } | { halfLengthMm: number; halfWidthMm: number };

/** How a solid lies on the one below it, both centered. */
export interface Lie {
	/** Of its foot, what the top below carries. */
	carriedCm2: number;
	/** Farthest that its foot reaches beyond the top below; 0 when it is carried all round. */
	overhangMm: number;
}

const disc = (diameterMm: number, holeMm = 0): Face => ({
	radiusMm: diameterMm / 2,
	holeMm: holeMm / 2
});

function footOf(solid: Solid): Face {
	switch (solid.shape) {
		case 'box':
		case 'wedge':
			return { halfLengthMm: solid.lengthMm / 2, halfWidthMm: solid.widthMm / 2 };
		case 'cylinder':
		case 'dome':
			return disc(solid.diameterMm);
		case 'frustum':
			return disc(solid.bottomDiameterMm);
		case 'ring':
			return disc(solid.outerDiameterMm, solid.innerDiameterMm);
	}
}

const topOf = (solid: Solid): Face =>
	solid.shape === 'frustum' ? disc(solid.topDiameterMm) : footOf(solid);

/** Area that a centered disc has in common with a centered rectangle: the disc less what each side cuts off. */
function discInRectangle(radius: number, halfLength: number, halfWidth: number): number {
	if (Math.hypot(halfLength, halfWidth) <= radius) return 4 * halfLength * halfWidth;
	const cutOff = (distance: number): number =>
		distance >= radius
			? 0
			: radius ** 2 * Math.acos(distance / radius) -
				distance * Math.sqrt(radius ** 2 - distance ** 2);
	return Math.PI * radius ** 2 - 2 * cutOff(halfLength) - 2 * cutOff(halfWidth);
}

const discMm2 = (radius: number): number => Math.PI * radius ** 2;

function commonMm2(a: Face, b: Face): number {
	if ('radiusMm' in a && 'radiusMm' in b) {
		const common = (one: number, other: number): number => discMm2(Math.min(one, other));
		return (
			common(a.radiusMm, b.radiusMm) -
			common(a.radiusMm, b.holeMm) -
			common(a.holeMm, b.radiusMm) +
			common(a.holeMm, b.holeMm)
		);
	}
	if ('radiusMm' in b) return commonMm2(b, a);
	if ('radiusMm' in a) {
		const { halfLengthMm, halfWidthMm } = b;
		return (
			discInRectangle(a.radiusMm, halfLengthMm, halfWidthMm) -
			discInRectangle(a.holeMm, halfLengthMm, halfWidthMm)
		);
	}
	return 4 * Math.min(a.halfLengthMm, b.halfLengthMm) * Math.min(a.halfWidthMm, b.halfWidthMm);
}

function reachMm(foot: Face, top: Face): number {
	if ('radiusMm' in top) {
		const farthest =
			'radiusMm' in foot ? foot.radiusMm : Math.hypot(foot.halfLengthMm, foot.halfWidthMm);
		return farthest - top.radiusMm;
	}
	const [length, width] =
		'radiusMm' in foot ? [foot.radiusMm, foot.radiusMm] : [foot.halfLengthMm, foot.halfWidthMm];
	return Math.max(length - top.halfLengthMm, width - top.halfWidthMm);
}

/**
 * How a solid lies on the middle of another. Source: elementary mensuration (circular segments), for
 * example CRC Standard Mathematical Tables.
 */
export function lieOn(solid: Solid, below: Solid): Lie {
	const [foot, top] = [footOf(solid), topOf(below)];
	return {
		carriedCm2: Math.max(0, commonMm2(foot, top)) / 100,
		overhangMm: Math.max(0, reachMm(foot, top))
	};
}

/** Field of a solid that says how wide its foot is, and the most it may be without overhanging, mm. */
export function widestFoot(solid: Solid, below: Solid): { field: string; mostMm: number } {
	const top = topOf(below);
	const half = (side: 'halfLengthMm' | 'halfWidthMm'): number =>
		'radiusMm' in top ? top.radiusMm : top[side];
	const narrowestMm = 2 * Math.min(half('halfLengthMm'), half('halfWidthMm'));
	switch (solid.shape) {
		case 'frustum':
			return { field: 'bottomDiameterMm', mostMm: narrowestMm };
		case 'ring':
			return { field: 'outerDiameterMm', mostMm: narrowestMm };
		case 'cylinder':
		case 'dome':
			return { field: 'diameterMm', mostMm: narrowestMm };
		case 'box':
		case 'wedge': {
			const isLong =
				solid.lengthMm / 2 - half('halfLengthMm') >= solid.widthMm / 2 - half('halfWidthMm');
			if ('radiusMm' in top) {
				// Its corners lie on the rim of the round top.
				const other = isLong ? solid.widthMm : solid.lengthMm;
				const mostMm = 2 * Math.sqrt(Math.max(0, top.radiusMm ** 2 - (other / 2) ** 2));
				return { field: isLong ? 'lengthMm' : 'widthMm', mostMm };
			}
			return isLong
				? { field: 'lengthMm', mostMm: 2 * top.halfLengthMm }
				: { field: 'widthMm', mostMm: 2 * top.halfWidthMm };
		}
	}
}
