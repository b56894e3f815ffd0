import type { Figure } from '$lib/core/quantity/figure';
import type { SectionLayer, SectionModel } from '$lib/screen/section/section-model';

const layer = (
	kind: SectionLayer['kind'],
	label: string,
	thicknessMm: number,
	state: SectionLayer['state']
): SectionLayer => ({ kind, label, thicknessMm, state });

const dome = Array.from({ length: 25 }, (_, i) => {
	const angle = Math.PI - (Math.PI * i) / 24;
	return { xMm: 90 * Math.cos(angle), yMm: 40 + 70 * Math.sin(angle) };
});

/** An invented bowl with a foot, half way through its build coats. */
export const BOWL: SectionModel = {
	layers: [
		layer('board', 'Mold board', 18, 'done'),
		layer('pattern', 'Pattern, sealed plaster', 0, 'done'),
		layer('release', 'Wax and parting film', 0.05, 'done'),
		layer('frame', 'Frame', 18, 'done'),
		layer('detail', 'Detail coat 1', 0.8, 'done'),
		layer('build', 'Build coat 1', 1.2, 'done'),
		layer('build', 'Build coat 2', 2, 'current'),
		layer('build', 'Build coat 3', 2.5, 'planned'),
		layer('release', 'Shell release', 0.05, 'planned'),
		layer('shell', 'Backup shell', 12, 'planned')
	],
	pattern: { widthMm: 180, heightMm: 110, profile: dome },
	gapMm: 40,
	flangeMm: 36
};

/** An invented plaque with a groove, its mold complete and a part poured. */
export const PLAQUE: SectionModel = {
	layers: [
		layer('board', 'Mold board', 18, 'done'),
		layer('pattern', 'Pattern, carved wood', 0, 'done'),
		layer('frame', 'Frame', 18, 'done'),
		layer('build', 'Build coat 1', 1.5, 'done'),
		layer('build', 'Build coat 2', 3, 'done'),
		layer('shell', 'Backup shell', 15, 'done')
	],
	pattern: {
		widthMm: 320,
		heightMm: 70,
		profile: [
			{ xMm: 0, yMm: 0 },
			{ xMm: 12, yMm: 60 },
			{ xMm: 110, yMm: 70 },
			{ xMm: 130, yMm: 28 },
			{ xMm: 190, yMm: 28 },
			{ xMm: 210, yMm: 70 },
			{ xMm: 308, yMm: 60 },
			{ xMm: 320, yMm: 0 }
		]
	},
	gapMm: 35,
	flangeMm: 30
};

/** The same layers with none, some or all of them done. */
export function progressed(model: SectionModel, done: number): SectionModel {
	return {
		...model,
		layers: model.layers.map((each, i) => ({
			...each,
			state: i < done ? 'done' : i === done ? 'current' : 'planned'
		}))
	};
}

export const PART_A: Figure = {
	label: 'Part A for build coat 2',
	value: 160,
	unit: 'g',
	law: {
		id: 'specimen',
		name: 'Proportion by weight',
		formula: 'm_A = m_B · r_A / r_B',
		source: 'arithmetic of proportion',
		validity: 'any two parts mixed by weight'
	},
	inputs: [
		{ symbol: 'm_B', label: 'Part B', value: 200, unit: 'g', origin: 'entered' },
		{ symbol: 'r_A', label: 'Ratio, A', value: 80, unit: 'count', origin: 'data sheet' },
		{ symbol: 'r_B', label: 'Ratio, B', value: 100, unit: 'count', origin: 'data sheet' }
	],
	low: 158,
	high: 162,
	note: 'Specimen figure: the numbers are invented.'
};

export const ROWS = [
	{ name: 'Detail coat 1', plannedG: 84, actualG: 83.6, state: 'done', text: 'Done' },
	{ name: 'Build coat 1', plannedG: 240, actualG: 241.2, state: 'done', text: 'Done' },
	{ name: 'Build coat 2', plannedG: 360, actualG: null, state: 'now', text: 'Now' },
	{ name: 'Build coat 3', plannedG: 1430, actualG: null, state: 'planned', text: 'Planned' }
] as const;
