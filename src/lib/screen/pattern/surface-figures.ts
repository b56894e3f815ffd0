import type { Unreached } from '$lib/core/geometry/brush';
import type { MeshBody } from '$lib/core/geometry/mesh-body';
import type { Body, Surface } from '$lib/core/geometry/pattern';
import { measuresOf, type SolidMeasures } from '$lib/core/geometry/solid-measures';
import type { Figure, FigureInput, Law } from '$lib/core/quantity/figure';
import type { Unit } from '$lib/core/quantity/unit';

type SurfaceKey = 'exposedAreaCm2' | 'volumeMl' | 'footprintCm2' | 'heightMm' | 'steepestWallDeg';

interface Asked {
	key: SurfaceKey;
	label: string;
	unit: Unit;
	symbol: string;
	formula: string;
	part: string;
	of: (measures: SolidMeasures) => number;
	/** Only what stands on the board counts. */
	onBoard?: boolean;
}

const ASKED: readonly Asked[] = [
	{
		key: 'exposedAreaCm2',
		label: 'Exposed area',
		unit: 'cm2',
		symbol: 'A',
		formula: 'A = Σ A_i − H',
		part: 'sides and top',
		of: ({ sideCm2, topCm2 }) => sideCm2 + topCm2
	},
	{
		key: 'volumeMl',
		label: 'Volume',
		unit: 'mL',
		symbol: 'V',
		formula: 'V = Σ V_i',
		part: 'volume',
		of: ({ volumeMl }) => volumeMl
	},
	{
		key: 'footprintCm2',
		label: 'Footprint',
		unit: 'cm2',
		symbol: 'F',
		formula: 'F = Σ F_i of the solids on the board',
		part: 'bottom',
		of: ({ bottomCm2 }) => bottomCm2,
		onBoard: true
	},
	{
		key: 'heightMm',
		label: 'Height',
		unit: 'mm',
		symbol: 'h',
		formula: 'h = the tallest of the stacks, each Σ h_i',
		part: 'height',
		of: ({ heightMm }) => heightMm
	},
	{
		key: 'steepestWallDeg',
		label: 'Steepest wall',
		unit: 'deg',
		symbol: 'α',
		formula:
			'α = max α_i; 90° is vertical, more leans out; 180° where a solid overhangs the one below',
		part: 'steepest wall',
		of: ({ steepestWallDeg }) => steepestWallDeg
	}
];

const MENSURATION = {
	source: 'elementary mensuration, for example CRC Standard Mathematical Tables',
	validity: 'upright solids on the mold board, those on one base in a row along the length'
};

const measured = (label: string): Law => ({
	id: 'measured',
	name: 'As measured',
	formula:
		label === 'Footprint' ? 'between the ellipse and the rectangle of length × width' : 'entered',
	source: 'measured by the shop',
	validity: 'as good as the measurement'
});

const MESH_FORMULAS: Record<SurfaceKey, string> = {
	exposedAreaCm2:
		'A = Σ ½·|a × b| of the triangles that do not lie on the board, less what the narrowest brush does not reach',
	volumeMl: 'V = Σ ⅙·p·(a × b) of all triangles',
	footprintCm2: 'F = Σ ½·|a × b| of the triangles that lie on the board',
	heightMm: 'h = highest corner above the lowest',
	steepestWallDeg: 'α = steepest slope that a thousandth of the area has; 90° is vertical'
};

function fromMesh({ key, label }: Asked, body: MeshBody): Pick<Figure, 'law' | 'inputs'> {
	const input = (symbol: string, label: string, value: number | string, unit: Unit) => ({
		symbol,
		label,
		value,
		unit,
		origin: 'entered' as const
	});
	return {
		law: {
			id: `mesh-${key}`,
			name: `${label}, from the mesh`,
			formula: MESH_FORMULAS[key],
			source: 'divergence theorem over the triangles (Zhang, Chen 2001, from memory)',
			validity: 'a closed mesh without crossings, in the unit and on the face that were chosen'
		},
		inputs: [
			input('file', 'mesh file', body.file.name, 'text'),
			input('n', 'triangles', body.triangles, 'count'),
			input('u', 'one unit of the file', body.unitMm, 'mm'),
			input('k', 'enlarged to', body.scale, 'fraction'),
			...(key === 'exposedAreaCm2' && body.unreached ? leftOut(body.unreached, input) : [])
		]
	};
}

type Input = (symbol: string, label: string, value: number, unit: Unit) => FigureInput;

/** By which brush is decided what counts as reached. */
function leftOut({ brush, areaCm2 }: Unreached, input: Input): FigureInput[] {
	return [
		input('w', 'narrowest brush', brush.widthMm, 'mm'),
		input('b', 'reach of its tips beyond that (common practice, no source)', brush.reachMm, 'mm'),
		input('U', 'left out: no brush reaches it', areaCm2, 'cm2')
	];
}

/** The numbers of a pattern's shape, each with the solids it was summed from. */
export function surfaceFigures(
	body: Body,
	surface: Surface
): { key: SurfaceKey; figure: Figure }[] {
	return ASKED.map((asked) => {
		const { key, label, unit } = asked;
		const base = { label, unit, value: surface[key] };
		if (body.kind === 'measured')
			return { key, figure: { ...base, law: measured(label), inputs: [] } };
		if (body.kind === 'mesh') return { key, figure: { ...base, ...fromMesh(asked, body) } };
		const inputs = inputsOf(asked, body.solids);
		if (key === 'exposedAreaCm2') inputs.push(hidden(inputs, surface.exposedAreaCm2));
		const law = { id: `pattern-${key}`, name: label, formula: asked.formula, ...MENSURATION };
		return { key, figure: { ...base, law, inputs } };
	});
}

type Solids = Extract<Body, { kind: 'solids' }>['solids'];

function inputsOf({ symbol, part, unit, of, onBoard }: Asked, solids: Solids): FigureInput[] {
	return solids.flatMap((solid, i) =>
		onBoard && solid.on !== 'board'
			? []
			: [
					{
						symbol: `${symbol}_${i + 1}`,
						label: `${solid.name}, ${part}`,
						value: of(measuresOf(solid)),
						unit,
						origin: 'computed' as const
					}
				]
	);
}

function hidden(inputs: readonly FigureInput[], exposedCm2: number): FigureInput {
	const sumCm2 = inputs.reduce((sum, { value }) => sum + Number(value), 0);
	return {
		symbol: 'H',
		label: 'hidden where solids stand on or touch each other',
		value: Math.max(0, sumCm2 - exposedCm2),
		unit: 'cm2',
		origin: 'computed'
	};
}
