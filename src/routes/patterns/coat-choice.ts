import type { Sheet } from '$lib/core/materials/sheet';
import { buildCoatSeries, usualGloveMm } from '$lib/core/plan/coat-series';
import { DEFAULTS } from '$lib/core/plan/defaults';
import type { Plan } from '$lib/core/plan/plan';
import { holdsToDeg, sheetHoldingMm, sheetReachMm } from '$lib/core/plan/sheet-reach';
import type { JudgedCoats } from '$lib/device/mesh-messages';
import type { DrawnLayer } from '$lib/screen/mesh/section-picture';

/** What is needed of a glove material's sheet to judge a mesh by it. */
export type CoatSheet = Pick<
	Sheet,
	'id' | 'name' | 'body' | 'yieldStressPa' | 'mixedDensityGPerMl' | 'elongationPct'
>;

export function coatSheetOf(sheet: Sheet): CoatSheet {
	const { id, name, body, yieldStressPa, mixedDensityGPerMl, elongationPct } = sheet;
	return {
		id,
		name,
		body,
		mixedDensityGPerMl,
		...(yieldStressPa !== undefined && { yieldStressPa }),
		...(elongationPct !== undefined && { elongationPct })
	};
}

/** Whether a material is one for detail coats. */
export function isThin({ body }: CoatSheet): boolean {
	return body === 'free-flowing' || body === 'liquid';
}

export interface ChosenCoats {
	judged: JudgedCoats;
	detailReachMm: number;
	firstBuildMm: number;
	gloveMm: number;
	/** Build coats as they would be without detail coats, then the shell. */
	layers: DrawnLayer[];
}

/** A coat that is thicker than any first coat, so that a plan with other coats finds its reach. A choice. */
const THICK_REACH_MM = 3;
/** The flange ends this far before the frame, and the frame's gap is no less than this; common practice, no source. */
const EDGE_MM = 5;
const LEAST_GAP_MM = 25;

interface Sizes {
	lengthMm: number;
	widthMm: number;
	heightMm: number;
	steepestWallDeg: number;
}

/** The coats that a plan would propose for a pattern of this size with these materials. */
export function chooseCoats(
	sizes: Sizes,
	{ build, detail }: { build: CoatSheet | null; detail: CoatSheet | null },
	{ gloveMm: asked, shellMm }: { gloveMm: number | null; shellMm: number }
): ChosenCoats {
	const { lengthMm, widthMm, heightMm, steepestWallDeg } = sizes;
	const gloveMm = asked ?? usualGloveMm(Math.max(lengthMm, widthMm, heightMm));
	const holdingMm = (build && sheetHoldingMm(build, steepestWallDeg)) ?? Infinity;
	const { coatsMm } = buildCoatSeries(gloveMm, holdingMm);
	const firstBuildMm = coatsMm[0] ?? gloveMm;
	// Without a material a coat is taken to be as stiff as it is thick.
	const reachMm = build ? sheetReachMm(build, firstBuildMm) : firstBuildMm;
	const thinMm = DEFAULTS.detailCoatMm.value;
	const detailReachMm = detail ? sheetReachMm(detail, thinMm) : thinMm;
	return {
		judged: {
			reachMm,
			otherReachesMm: [detailReachMm, THICK_REACH_MM].filter(
				(other) => Math.abs(other - reachMm) > 1e-3
			),
			gloveMm,
			flangeMm: Math.max(LEAST_GAP_MM, gloveMm + shellMm + EDGE_MM) - EDGE_MM,
			holdsToDeg: (build && holdsToDeg(build, Math.max(...coatsMm))) ?? 90
		},
		detailReachMm,
		firstBuildMm,
		gloveMm,
		layers: layersOf(
			coatsMm.map((thicknessMm, i) => ({
				kind: 'build',
				title: `Build coat ${i + 1}`,
				thicknessMm
			})),
			shellMm
		)
	};
}

/** The coats of a plan, to judge its pattern's mesh by. */
export function coatsOfPlan(plan: Plan): ChosenCoats {
	const { materials } = plan.inputs;
	const builds = plan.coats.filter(({ kind }) => kind === 'build');
	const shellMm = plan.shell.thicknessMm;
	const chosen = chooseCoats(
		plan.surface,
		{ build: materials.build, detail: materials.detail ?? null },
		{ gloveMm: plan.glove.thicknessMm, shellMm }
	);
	return {
		...chosen,
		judged: {
			...chosen.judged,
			reachMm: plan.bridging?.buildReachMm ?? chosen.judged.reachMm,
			flangeMm: plan.frame.flangeMm,
			holdsToDeg:
				holdsToDeg(materials.build, Math.max(...builds.map(({ thicknessMm }) => thicknessMm))) ?? 90
		},
		layers: layersOf(plan.coats, shellMm)
	};
}

function layersOf(
	coats: readonly { kind: 'detail' | 'build'; title: string; thicknessMm: number }[],
	shellMm: number
): DrawnLayer[] {
	return [
		...coats.map(({ kind, title, thicknessMm }) => ({ kind, label: title, thicknessMm })),
		{ kind: 'shell', label: 'Shell', thicknessMm: shellMm }
	];
}
