import type { FramePlan } from './frame-plan';
import type { Plan } from './plan';
import { DEFAULTS, defaultInput } from './defaults';
import { computed, entered, inherited, traced, type Draft } from './trace';
import type { Body } from '../geometry/pattern';
import type { FigureInput, Law } from '../quantity/figure';
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

const meshLaw: Law = {
	id: 'mesh',
	name: 'From the mesh',
	formula: 'A = Σ ½·|a × b| of the triangles off the board; V = Σ ⅙·p·(a × b) of them all',
	source:
		'divergence theorem over the triangles: Zhang, Chen 2001, Efficient feature extraction for 2D/3D objects in mesh representation (from memory)',
	validity: 'a closed mesh without crossings, in the unit and on the face that were chosen'
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
	const { law, inputs } = shapeSource(draft.inputs.pattern.body);
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

/** Where a pattern's shape comes from: its solids, a measurement or a mesh. */
function shapeSource(body: Body): { law: Law; inputs: FigureInput[] } {
	if (body.kind === 'measured') {
		return {
			law: measuredLaw,
			inputs: [entered('A', 'measured', 'area, volume and size', 'text')]
		};
	}
	if (body.kind === 'solids') {
		return { law: mensurationLaw, inputs: [entered('n', 'solids', body.solids.length, 'count')] };
	}
	return {
		law: meshLaw,
		inputs: [
			entered('file', 'mesh file', body.file.name, 'text'),
			entered('n', 'triangles', body.triangles, 'count'),
			entered('u', 'one unit of the file', body.unitMm, 'mm'),
			entered('k', 'enlarged to', body.scale, 'fraction')
		]
	};
}
