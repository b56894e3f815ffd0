import type { SectionLayer, SectionModel } from '$lib/screen/section/section-model';

const layer = (kind: SectionLayer['kind'], label: string, thicknessMm: number): SectionLayer => ({
	kind,
	label,
	thicknessMm,
	state: 'done'
});

/** An invented newel cap under its glove and shell: what a glove mold is, for who has not seen one. */
export const EXAMPLE_MOLD: SectionModel = {
	layers: [
		layer('board', 'Mold board', 18),
		layer('pattern', 'Pattern (an invented cap)', 0),
		layer('release', 'Wax and parting film', 0),
		layer('frame', 'Frame', 18),
		layer('detail', 'Detail coat', 0.8),
		layer('build', 'Build coat 1', 2),
		layer('build', 'Build coat 2', 3),
		layer('release', 'Wax on the glove', 0),
		layer('shell', 'Backup shell', 14)
	],
	pattern: {
		widthMm: 220,
		heightMm: 170,
		profile: [
			{ xMm: -110, yMm: 0 },
			{ xMm: -110, yMm: 45 },
			{ xMm: -80, yMm: 60 },
			{ xMm: -80, yMm: 95 },
			{ xMm: -62, yMm: 130 },
			{ xMm: -36, yMm: 158 },
			{ xMm: 0, yMm: 170 },
			{ xMm: 36, yMm: 158 },
			{ xMm: 62, yMm: 130 },
			{ xMm: 80, yMm: 95 },
			{ xMm: 80, yMm: 60 },
			{ xMm: 110, yMm: 45 },
			{ xMm: 110, yMm: 0 }
		]
	},
	gapMm: 40,
	flangeMm: 34
};
