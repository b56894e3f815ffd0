import { computed, fromSheet, traced, tradeLaw, type Draft } from './trace';

const fiberLaw = tradeLaw(
	'shell-fiber',
	'Cloth or strand in a round',
	'm_fiber = f · V · ρ, 1 / ρ = f / ρ_fiber + (1 − f) / ρ_mix',
	'30% by weight in a hand laminate, 5% in a paste, 3% in plaster'
);

const layersLaw = tradeLaw(
	'shell-layers',
	'Layers of cloth or mat in a round',
	'n = m_fiber / (w · A), to the nearest whole layer, at least one',
	'cloth or mat of stated areal weight, laid whole over the round'
);

/**
 * Layers that come nearest to the planned fiber; null for loose strand, which has no areal weight.
 * The area is what the round covers at its own thickness.
 */
export function layersOf(
	draft: Draft,
	given: { path: string; title: string; reinforcementG: number; areaCm2: number }
): number | null {
	const { path, title, reinforcementG, areaCm2 } = given;
	const arealG = draft.inputs.materials.reinforcement?.arealG;
	if (!arealG || reinforcementG <= 0 || areaCm2 <= 0) return null;
	return traced(draft, `${path}.layers`, {
		label: `${title}: layers of cloth or mat`,
		value: Math.max(1, Math.round((10_000 * reinforcementG) / (arealG * areaCm2))),
		unit: 'count',
		law: layersLaw,
		inputs: [
			computed('m_fiber', 'cloth or strand', reinforcementG, 'g', `${path}.reinforcementG`),
			fromSheet('w', 'one layer, grams for a square meter', arealG, 'g'),
			computed('A', 'area that the round covers', areaCm2, 'cm2')
		]
	});
}

/** Leaves the trace of a round's cloth or strand. */
export function traceFiber(
	draft: Draft,
	given: { path: string; title: string; volumeMl: number; fiber: number; reinforcementG: number }
): void {
	const { shell, reinforcement } = draft.inputs.materials;
	traced(draft, `${given.path}.reinforcementG`, {
		label: `${given.title}: cloth or strand`,
		value: given.reinforcementG,
		unit: 'g',
		law: fiberLaw,
		inputs: [
			computed('V', 'volume', given.volumeMl, 'mL'),
			computed('f', 'fiber by weight (common practice, no source)', given.fiber, 'fraction'),
			fromSheet('ρ_mix', 'density of the mix', shell.mixedDensityGPerMl, 'g/mL'),
			fromSheet('ρ_fiber', 'density of the fiber', reinforcement?.mixedDensityGPerMl ?? 0, 'g/mL')
		]
	});
}
