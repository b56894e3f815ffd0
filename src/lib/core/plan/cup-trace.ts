import { FILL_LIMIT_FRACTION } from '../laws/correction';
import { readableSplitLaw } from '../laws/readable-split';
import type { Sheet } from '../materials/sheet';
import type { Cup } from './plan';
import { computed, constant, entered, fromSheet, traced, tradeLaw, type Draft } from './trace';

const cupSizeLaw = tradeLaw(
	'cup-size',
	'Cup to take from the shelf',
	'V_brim ≥ m / (ρ · fill), the smallest that is on the shelf',
	'room to stir and to scrape; a mix that foams needs more'
);

/** Leaves the trace of what goes into each cup of a batch, and of the cup to take for it. */
export function traceCup(
	draft: Draft,
	given: { path: string; title: string; sheet: Sheet; cup: Cup; count: number }
): void {
	const { path, title, sheet, cup, count } = given;
	const { shop } = draft.inputs;
	const mass = computed('M', 'cup', cup.massG, 'g', `${path}.cups.0.massG`);
	traced(draft, `${path}.cups.0.massG`, {
		label: `${title}: into each cup`,
		value: cup.massG,
		unit: 'g',
		law: readableSplitLaw,
		inputs: [
			computed('n', 'cups of the same mass', count, 'count'),
			entered('d', 'smallest step of the scale', shop.scaleReadabilityG, 'g')
		],
		note: 'A target, weighed: it has the tolerance of the ratio and no other range.'
	});
	traced(draft, `${path}.cups.0.cupVolumeMl`, {
		label: `${title}: brim volume of the cup`,
		value: cup.cupVolumeMl,
		unit: 'mL',
		law: cupSizeLaw,
		inputs: [
			mass,
			fromSheet('ρ', 'density of the mix', sheet.mixedDensityGPerMl, 'g/mL'),
			constant(
				'fill',
				'filled at most (common practice, no source)',
				FILL_LIMIT_FRACTION,
				'fraction'
			),
			entered('shelf', 'cups on the shelf, mL', shop.cupVolumesMl.join(', '), 'text')
		]
	});
}
