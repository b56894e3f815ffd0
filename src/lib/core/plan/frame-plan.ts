import { roundUpTo } from '../quantity/rounding';
import { boardThicknessMm } from './board-thickness';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { traceBoards } from './frame-boards';
import {
	computed,
	constant,
	entered,
	inherited,
	traced,
	tradeLaw,
	warn,
	type Draft
} from './trace';

export interface FramePlan {
	frame: Plan['frame'];
	insideAreaCm2: number;
	flangeAreaCm2: number;
	frameG: number;
}

/** Common practice, no source: see the law below. */
const LEAST_GAP_MM = 25;
/** Common practice, no source: see the law below. */
const USUAL_MOST_GAP_MM = 40;
/** Common practice, no source: see the law below. */
const LEAST_HEIGHT_MM = 40;
/** The glove's edge is cut square this far clear of the frame, so that the shell can't pinch it; common practice, no source. */
const EDGE_CLEAR_MM = 5;
/** Shell and glove rise this far below the frame's upper edge at the flange; common practice, no source. */
const FREEBOARD_MM = 20;

const gapLaw = tradeLaw(
	'frame-gap',
	'Clear gap between pattern and frame',
	'gap = max(25 mm, glove + shell + 5 mm), up by 5 mm for each half meter of pattern',
	'25 to 40 mm for most molds; it must hold glove and shell beside each other'
);
const frameLaw = tradeLaw(
	'frame-size',
	'Frame round the pattern',
	'inside = pattern + 2 · gap; height = max(40 mm, glove + shell + 20 mm)',
	'four straight boards on the mold board'
);
const flangeLaw = tradeLaw(
	'flange-area',
	'Board that is coated as flange',
	'A_flange = inside of the frame − footprint',
	'the glove is brushed out to the frame'
);

const flangeWidthLaw = tradeLaw(
	'flange-width',
	'Width of the glove’s flange',
	'w = gap − 5 mm',
	'the edge is cut square, clear of the frame, so that the shell can’t pinch it'
);

const up5 = (mm: number): number => roundUpTo(mm, 5);

/** Gap, boards and flange; the gap that was asked for, or one that holds glove and shell. */
export function framePlan(draft: Draft, gloveMm: number, shellMm: number): FramePlan {
	const { inputs, surface } = draft;
	const { lengthMm, widthMm, footprintCm2 } = surface;
	const roomyMm = LEAST_GAP_MM + 5 * Math.floor(Math.max(lengthMm, widthMm) / 500);
	const proposedMm = Math.max(
		Math.min(USUAL_MOST_GAP_MM, roomyMm),
		up5(gloveMm + shellMm + EDGE_CLEAR_MM)
	);
	const gapMm = traced(draft, 'frame.gapMm', {
		label: 'Gap between pattern and frame',
		value: inputs.frameGapMm ?? proposedMm,
		unit: 'mm',
		law: gapLaw,
		inputs: [
			...(inputs.frameGapMm === undefined
				? []
				: [entered('gap', 'gap asked for', inputs.frameGapMm, 'mm')]),
			computed('t_glove', 'glove', gloveMm, 'mm', 'glove.thicknessMm'),
			computed('t_shell', 'shell', shellMm, 'mm', 'shell.thicknessMm')
		]
	});
	if (gapMm < gloveMm + shellMm) {
		const text = `A gap of ${gapMm} mm does not hold ${gloveMm} mm of glove and ${shellMm} mm of shell beside each other; accepted: ${proposedMm} mm or more.`;
		warn(draft, 'refuse', 'gap-narrow', 'frame', text);
	}
	const insideLengthMm = lengthMm + 2 * gapMm;
	const insideWidthMm = widthMm + 2 * gapMm;
	const heightMm = traced(draft, 'frame.heightMm', {
		label: 'Height of the frame',
		value: Math.max(LEAST_HEIGHT_MM, up5(gloveMm + shellMm + FREEBOARD_MM)),
		unit: 'mm',
		law: frameLaw,
		inputs: [
			computed('t_glove', 'glove', gloveMm, 'mm', 'glove.thicknessMm'),
			computed('t_shell', 'shell', shellMm, 'mm', 'shell.thicknessMm'),
			constant('above', 'rim above the shell (common practice, no source)', FREEBOARD_MM, 'mm'),
			constant('least', 'lowest frame (common practice, no source)', LEAST_HEIGHT_MM, 'mm')
		],
		note: 'Up to the next 5 mm.'
	});
	for (const [key, value, base] of [
		['insideLengthMm', insideLengthMm, lengthMm],
		['insideWidthMm', insideWidthMm, widthMm]
	] as const) {
		traced(draft, `frame.${key}`, {
			label: key === 'insideLengthMm' ? 'Inside length of the frame' : 'Inside width of the frame',
			value,
			unit: 'mm',
			law: frameLaw,
			inputs: [
				computed('pattern', 'size of the pattern', base, 'mm'),
				computed('gap', 'gap', gapMm, 'mm', 'frame.gapMm')
			]
		});
	}
	const insideAreaCm2 = (insideLengthMm * insideWidthMm) / 100;
	const flangeAreaCm2 = traced(draft, 'surface.flangeAreaCm2', {
		label: 'Flange on the board',
		value: Math.max(0, insideAreaCm2 - footprintCm2),
		unit: 'cm2',
		law: flangeLaw,
		inputs: [
			computed('A_inside', 'inside of the frame', insideAreaCm2, 'cm2'),
			computed('A_foot', 'footprint', footprintCm2, 'cm2', 'surface.footprintCm2')
		]
	});
	const flangeMm = traced(draft, 'frame.flangeMm', {
		label: 'Width of the flange',
		value: Math.max(0, gapMm - EDGE_CLEAR_MM),
		unit: 'mm',
		law: flangeWidthLaw,
		inputs: [
			computed('gap', 'gap between pattern and frame', gapMm, 'mm', 'frame.gapMm'),
			constant('clear', 'cut clear of the frame (common practice, no source)', EDGE_CLEAR_MM, 'mm')
		]
	});
	const boards = boardsFor({
		insideLengthMm,
		insideWidthMm,
		heightMm,
		thicknessMm: boardThicknessMm(draft)
	});
	traceBoards(draft, boards);
	return {
		frame: { gapMm, flangeMm, insideLengthMm, insideWidthMm, heightMm, boards },
		insideAreaCm2,
		flangeAreaCm2,
		frameG: frameMassG(draft, boards)
	};
}

function boardsFor(frame: {
	insideLengthMm: number;
	insideWidthMm: number;
	heightMm: number;
	thicknessMm: number;
}): Plan['frame']['boards'] {
	const { thicknessMm } = frame;
	const beyondMm = 2 * (thicknessMm + DEFAULTS.ledgeMm.value);
	const { insideLengthMm, insideWidthMm, heightMm } = frame;
	const side = { count: 2, widthMm: heightMm, thicknessMm };
	return [
		{ name: 'Long side', ...side, lengthMm: insideLengthMm + 2 * thicknessMm },
		{ name: 'Short side', ...side, lengthMm: insideWidthMm },
		{
			name: 'Mold board',
			count: 1,
			lengthMm: insideLengthMm + beyondMm,
			widthMm: insideWidthMm + beyondMm,
			thicknessMm
		}
	];
}

/** The four sides only: the mold board is unscrewed before the mold is lifted. */
function frameMassG(draft: Draft, boards: Plan['frame']['boards']): number {
	const sidesMl = boards
		.slice(0, 2)
		.reduce((sum, b) => sum + (b.count * b.lengthMm * b.widthMm * b.thicknessMm) / 1000, 0);
	const inputs = [
		computed('V', 'wood in the four sides', sidesMl, 'mL'),
		defaultInput('ρ', 'boardGPerMl')
	];
	return traced(draft, 'weights.frameG', {
		label: 'Frame',
		value: sidesMl * DEFAULTS.boardGPerMl.value,
		unit: 'g',
		law: tradeLaw('frame-mass', 'Mass of the frame', 'm = V · ρ', 'four sides, screws left out'),
		inputs,
		...inherited(draft, inputs, (ml = 0, gPerMl = 0) => ml * gPerMl)
	});
}
