import { placesText } from '../geometry/place-text';
import { detailAdvice, trapsAir } from '../mesh/detail-advice';
import { coatReachLaw } from '../mesh/reach';
import { buildCoatSeries } from './coat-series';
import { DEFAULTS } from './defaults';
import { FINE_LINE_MM } from './detail-rule';
import { lookedUpBridging } from './looked-up-bridging';
import { nearestPlace } from './nearest-place';
import type { Plan } from './plan';
import { sheetHoldingMm, sheetReachMm } from './sheet-reach';
import { computed, fromSheet, traced, warn, type Draft } from './trace';

type Bridging = NonNullable<Plan['bridging']>;

export interface BridgedDetail {
	coats: number;
	detail: Plan['detail'];
	bridging: Bridging;
}

/** A fine line needs as many as the rule for patterns described by hand gives it. */
const COATS_FOR_FINE_LINES = DEFAULTS.detailCoats.value;

/**
 * Detail coats by what the mesh shows the first build coat to bridge; null for a pattern without a mesh,
 * and for one measured before bridging was kept with it.
 */
export function bridgedDetail(draft: Draft, gloveMm: number): BridgedDetail | null {
	const { pattern, materials, buildCoats } = draft.inputs;
	const { body } = pattern;
	if (body.kind !== 'mesh' || !body.bridgings?.length) return null;
	const { build, detail } = materials;
	const holdingMm = sheetHoldingMm(build, draft.surface.steepestWallDeg) ?? Infinity;
	const firstMm = buildCoatSeries(gloveMm, holdingMm, buildCoats).coatsMm[0] ?? gloveMm;
	const buildReachMm = traced(draft, 'bridging.buildReachMm', {
		label: 'Reach of the first build coat',
		value: sheetReachMm(build, firstMm),
		unit: 'mm',
		law: coatReachLaw,
		inputs: [
			computed('t', 'first build coat without detail coats', firstMm, 'mm'),
			...(build.yieldStressPa === undefined
				? []
				: [fromSheet('τ_y', 'yield stress', build.yieldStressPa, 'Pa')]),
			fromSheet('ρ', 'density of the mix', build.mixedDensityGPerMl, 'g/mL')
		]
	});
	const found = lookedUpBridging(body.bridgings, buildReachMm);
	if (!found.isEnough) warnOfReach(draft, buildReachMm, found.reachMm);
	const detailReachMm = detail ? sheetReachMm(detail, DEFAULTS.detailCoatMm.value) : null;
	const thin = detailReachMm === null ? null : lookedUpBridging(body.bridgings, detailReachMm);
	const advice = detailAdvice(found, thin ?? { places: [] });
	const { finestLineMm } = pattern.detail;
	const isFine = finestLineMm !== undefined && finestLineMm < FINE_LINE_MM;
	const traps = found.places.filter(trapsAir);
	const brushTwice = [
		...new Set(advice.brushTwice.map((place) => nearestPlace(place, traps)))
	].sort((a, b) => a - b);
	const coats = Math.max(advice.detailCoats, isFine ? COATS_FOR_FINE_LINES : 0);
	const bridging: Bridging = {
		buildReachMm,
		lookedReachMm: found.reachMm,
		detailReachMm,
		areaCm2: found.areaCm2,
		places: found.places,
		unlistedPlaces: found.unlistedPlaces,
		brushTwice
	};
	const line = isFine ? ` The finest line is ${finestLineMm} mm, below ${FINE_LINE_MM} mm.` : '';
	return {
		coats,
		detail: { needed: coats > 0, why: `${whyOf(bridging, coats)}${line}` },
		bridging
	};
}

function whyOf({ places, brushTwice, buildReachMm }: Bridging, coats: number): string {
	const reach = `${Number(buildReachMm.toFixed(2))} mm`;
	const traps = places.filter(trapsAir);
	if (traps.length === 0) {
		const others = places.length > 0 ? ' but rounded-off corners and the line at the foot' : '';
		return `${coats === 0 ? 'No detail coats' : 'Detail coats'}: by the mesh a first build coat that reaches ${reach} bridges nothing${others}.`;
	}
	const why = `${coats} detail ${coats === 1 ? 'coat' : 'coats'}: by the mesh a first build coat that reaches ${reach} would trap air at ${placesText(traps)}.`;
	return brushTwice.length === 0
		? `${why} One detail coat wets them.`
		: `${why} A detail coat spans ${brushTwice.length === traps.length ? 'them' : `number ${brushTwice.join(', ')}`} as well: brush there twice.`;
}

function warnOfReach(draft: Draft, buildReachMm: number, lookedMm: number): void {
	const text = `The mesh was looked at for coats that reach ${lookedMm} mm; the first build coat of this plan reaches ${Number(buildReachMm.toFixed(2))} mm and may bridge more. Measure the pattern again with these materials.`;
	warn(draft, 'warn', 'bridging-reach', 'pattern', text);
}
