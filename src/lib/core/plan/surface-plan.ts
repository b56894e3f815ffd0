import type { FramePlan } from './frame-plan';
import type { Plan } from './plan';
import { DEFAULTS, defaultInput } from './defaults';
import { computed, entered, inherited, traced, type Draft } from './trace';
import type { Law } from '../quantity/figure';
import { around } from '../quantity/range';

const mensurationLaw: Law = {
	id: 'mensuration',
	name: 'Areas and volumes of the pattern’s solids',
	formula:
		'sums of box, cylinder, frustum, cap, wedge and ring, less what stands on or against each other',
	source: 'elementary mensuration, for example CRC Standard Mathematical Tables',
	validity: 'upright solids on the mold board, those on one base in a row along the length'
};

const measuredLaw: Law = {
	id: 'measured',
	name: 'As measured',
	formula: 'entered',
	source: 'measured by the shop',
	validity: 'as good as the measurement'
};

/** The pattern's surface as the plan shows it, with the trace of its areas. */
export function surfacePlan(draft: Draft, { flangeAreaCm2 }: FramePlan): Plan['surface'] {
	const {
		exposedAreaCm2,
		volumeMl,
		footprintCm2,
		lengthMm,
		widthMm,
		heightMm,
		steepestWallDeg,
		profile
	} = draft.surface;
	const { body } = draft.inputs.pattern;
	const law = body.kind === 'measured' ? measuredLaw : mensurationLaw;
	const inputs =
		body.kind === 'measured'
			? [entered('A', 'measured', 'area, volume and size', 'text')]
			: [entered('n', 'solids', body.solids.length, 'count')];
	traced(draft, 'surface.exposedAreaCm2', {
		label: 'Exposed area',
		value: exposedAreaCm2,
		unit: 'cm2',
		law,
		inputs: [...inputs, defaultInput('u_A', 'areaSpread')],
		...around(exposedAreaCm2, 2 * DEFAULTS.areaSpread.value)
	});
	traced(draft, 'surface.volumeMl', {
		label: 'Volume',
		value: volumeMl,
		unit: 'mL',
		law,
		inputs: [...inputs, defaultInput('u_V', 'pourSpread')],
		...around(volumeMl, 2 * DEFAULTS.pourSpread.value)
	});
	traced(draft, 'surface.footprintCm2', {
		label: 'Footprint',
		value: footprintCm2,
		unit: 'cm2',
		law,
		inputs
	});
	traced(draft, 'surface.heightMm', { label: 'Height', value: heightMm, unit: 'mm', law, inputs });
	const areas = [
		computed('A_exposed', 'exposed area', exposedAreaCm2, 'cm2', 'surface.exposedAreaCm2'),
		computed('A_flange', 'flange', flangeAreaCm2, 'cm2', 'surface.flangeAreaCm2')
	];
	const coatedAreaCm2 = traced(draft, 'surface.coatedAreaCm2', {
		label: 'What a coat covers',
		value: exposedAreaCm2 + flangeAreaCm2,
		unit: 'cm2',
		law: {
			...law,
			id: 'coated-area',
			name: 'Pattern and flange',
			formula: 'A = A_exposed + A_flange'
		},
		inputs: areas,
		...inherited(draft, areas, (exposed = 0, flange = 0) => exposed + flange)
	});
	return {
		exposedAreaCm2,
		volumeMl,
		footprintCm2,
		lengthMm,
		widthMm,
		heightMm,
		steepestWallDeg,
		flangeAreaCm2,
		coatedAreaCm2,
		profile
	};
}
