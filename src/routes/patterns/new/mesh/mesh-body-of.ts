import type { Unreached } from '$lib/core/geometry/brush';
import type { MeshBody, MeshBridging } from '$lib/core/geometry/mesh-body';
import type { MeshHandling } from '$lib/core/geometry/mesh-handling';
import type { SimplifiedCopy } from '$lib/core/mesh/coarser';
import type { Health } from '$lib/core/mesh/health';
import type { MeasuredPattern } from '$lib/core/mesh/pattern-numbers';
import type { Placement } from '$lib/core/mesh/place';
import type { FoundPlaces, OpenedMesh } from '$lib/device/mesh-messages';
import { healthWords } from '$lib/screen/mesh/health-words';
import { simplifiedWords } from '$lib/screen/mesh/simplified-words';

interface Known {
	opened: OpenedMesh | null;
	health: Health | null;
	measured: MeasuredPattern | null;
	simplified: SimplifiedCopy | null;
	unreached: Unreached | null;
	offsets: MeshBody['offsets'] | null;
	found: FoundPlaces | null;
	bridgings: MeshBridging[] | null;
	handling: MeshHandling | null;
}

/** Stands for a file that is not in the store yet. */
const NOT_KEPT = '0'.repeat(64);
const MOST_LINES = 30;

/** The pattern's body as far as it is known; null until all of it is measured. */
export function meshBodyOf(known: Known, placement: Placement | null): MeshBody | null {
	const { opened, health, measured, unreached, offsets, found, bridgings, handling } = known;
	if (!opened || !health || !measured || !unreached || !offsets || !placement) return null;
	if (!found || !bridgings || !handling) return null;
	const words = healthWords(health, opened.repairs);
	const onCopy = known.simplified ? [simplifiedWords(known.simplified)] : [];
	return {
		kind: 'mesh',
		file: {
			sha256: NOT_KEPT,
			name: opened.name.slice(0, 200),
			format: opened.format,
			bytes: opened.bytes
		},
		triangles: opened.triangles,
		unitMm: placement.unitMm,
		scale: placement.scale,
		down: [...placement.down],
		turnDeg: placement.turnDeg,
		health: [words.verdict, ...onCopy, ...words.repaired, ...words.left].slice(0, MOST_LINES),
		...measured.numbers,
		exposedAreaCm2: measured.numbers.exposedAreaCm2 - unreached.areaCm2,
		unreached,
		offsets,
		bridgeReachMm: found.reachMm,
		places: found.places,
		bridgings,
		handling
	};
}
