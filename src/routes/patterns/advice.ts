import type { MeshBridging } from '$lib/core/geometry/mesh-body';
import { detailAdvice, trapsAir } from '$lib/core/mesh/detail-advice';
import { lookedUpBridging } from '$lib/core/plan/looked-up-bridging';
import { nearestPlace } from '$lib/core/plan/nearest-place';
import type { FoundPlaces } from '$lib/device/mesh-messages';

export interface Advice {
	text: string;
	/** Numbers of the places to brush twice. */
	twice: number[];
}

/** How many detail coats the pattern asks for with these coats; null until both reaches were looked at. */
export function adviceOf(
	found: FoundPlaces | null,
	bridgings: readonly MeshBridging[] | null,
	detailReachMm: number
): Advice | null {
	if (!found || !bridgings || bridgings.length === 0) return null;
	const thin = lookedUpBridging(bridgings, detailReachMm);
	const { detailCoats, brushTwice } = detailAdvice(found, thin);
	if (detailCoats === 0) {
		return {
			text: 'No detail coats needed: no groove and no pit keeps air under the first build coat.',
			twice: []
		};
	}
	const traps = found.places.filter(trapsAir);
	const twice = [...new Set(brushTwice.map((place) => nearestPlace(place, traps)))].sort(
		(a, b) => a - b
	);
	const at = `at ${traps.length === 1 ? 'place' : 'places'} ${traps.map(({ number }) => number).join(', ')}`;
	return {
		text:
			detailCoats === 1
				? `One detail coat: it wets what the first build coat would bridge ${at}.`
				: `Two detail coats: the first build coat would bridge ${at}, and a detail coat still bridges ${twice.join(', ')}. Brush there twice.`,
		twice
	};
}
