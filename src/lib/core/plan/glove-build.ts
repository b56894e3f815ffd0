import { roundTo } from '../quantity/rounding';
import { bridgedDetail, type BridgedDetail } from './bridged-detail';
import { buildCoatSeries, COAT_STEP_MM, usualGloveMm } from './coat-series';
import { DEFAULTS, defaultInput } from './defaults';
import { detailNeed } from './detail-rule';
import { PlanError } from './plan-error';
import { sheetHoldingMm } from './sheet-reach';
import { computed, entered, traced, tradeLaw, warn, type Draft } from './trace';

export interface GloveBuild {
	thicknessMm: number;
	leastMm: number;
	detail: { needed: boolean; why: string };
	/** What a mesh shows of it; null for a pattern described by hand. */
	bridging: BridgedDetail['bridging'] | null;
	/** Thickness of each coat in the order in which they go on. */
	detailMm: number[];
	buildMm: number[];
}

/** Less is no coat; common practice, no source. */
const LEAST_BUILD_MM = 0.5;
/** Thinnest build coat on the mean that a brush lays; common practice, no source. */
const LEAST_COAT_MM = 0.2;

const thicknessLaw = tradeLaw(
	'glove-thickness',
	'Thickness of a glove by size',
	'6 mm to 200 mm, 8 mm to 400 mm, 10 mm to 800 mm, 12 mm beyond (largest side)',
	'a brushed rubber of Shore A 20 to 60 in a rigid shell'
);
const leastLaw = tradeLaw(
	'least-thickness',
	'Thinnest gauge reading that passes',
	't_least = share · t',
	'pin gauge at planned points after the last coat'
);

/** How thick the glove gets, in which coats, and why with or without detail coats. */
export function gloveBuild(draft: Draft): GloveBuild {
	const { inputs, surface } = draft;
	const largestMm = Math.max(surface.lengthMm, surface.widthMm, surface.heightMm);
	const proposedMm = usualGloveMm(largestMm);
	const thicknessMm = traced(draft, 'glove.thicknessMm', {
		label: 'Thickness of the glove',
		value: inputs.gloveThicknessMm ?? proposedMm,
		unit: 'mm',
		law: thicknessLaw,
		inputs: [
			inputs.gloveThicknessMm === undefined
				? computed('d', 'largest side of the pattern', largestMm, 'mm')
				: entered('t', 'thickness asked for', inputs.gloveThicknessMm, 'mm')
		]
	});
	const leastMm = traced(draft, 'glove.leastMm', {
		label: 'Thinnest reading that passes',
		value: roundTo(thicknessMm * DEFAULTS.leastShare.value, COAT_STEP_MM),
		unit: 'mm',
		law: leastLaw,
		inputs: [
			computed('t', 'glove', thicknessMm, 'mm', 'glove.thicknessMm'),
			defaultInput('share', 'leastShare')
		]
	});
	const bridged = bridgedDetail(draft, thicknessMm);
	const detail = bridged?.detail ?? detailNeed(inputs.pattern.detail);
	const detailMm = detailCoats(draft, detail.needed, bridged?.coats ?? DEFAULTS.detailCoats.value);
	const buildTotalMm = thicknessMm - detailMm.reduce((sum, mm) => sum + mm, 0);
	if (buildTotalMm < LEAST_BUILD_MM) {
		throw new PlanError([
			{
				path: 'gloveThicknessMm',
				message: `${thicknessMm} mm leaves nothing for build coats over the detail coats; accepted: ${thicknessMm - buildTotalMm + LEAST_BUILD_MM} mm or more.`
			}
		]);
	}
	const mostCoats = Math.floor(buildTotalMm / LEAST_COAT_MM + 1e-9);
	if (inputs.buildCoats !== undefined && inputs.buildCoats > mostCoats) {
		const meanMm = roundTo(buildTotalMm / inputs.buildCoats, 0.01);
		throw new PlanError([
			{
				path: 'buildCoats',
				message: `${inputs.buildCoats} build coats of ${roundTo(buildTotalMm, 0.1)} mm in all would be ${meanMm} mm each, and no brush lays that; accepted: at most ${mostCoats}, or a thicker glove.`
			}
		]);
	}
	return {
		thicknessMm,
		leastMm,
		detail,
		bridging: bridged?.bridging ?? null,
		detailMm,
		buildMm: buildCoats(draft, buildTotalMm)
	};
}

function detailCoats(draft: Draft, needed: boolean, count: number): number[] {
	const { detail } = draft.inputs.materials;
	if (!needed) {
		if (detail) {
			const text = `${detail.name} is chosen for detail coats, but the detail calls for none: it is left out.`;
			warn(draft, 'note', 'detail-unused', 'detail', text);
		}
		return [];
	}
	if (!detail) {
		warn(
			draft,
			'refuse',
			'detail-missing',
			'detail',
			'The detail calls for detail coats and no free-flowing material is chosen for them: it would trap air.'
		);
		return [];
	}
	if (detail.body !== 'free-flowing' && detail.body !== 'liquid') {
		const text = `${detail.name} is ${detail.body}; detail coats need a free-flowing material, or air stays in the recesses.`;
		warn(draft, 'refuse', 'detail-too-thick', 'detail', text);
	}
	return Array.from({ length: count }, () => DEFAULTS.detailCoatMm.value);
}

function buildCoats(draft: Draft, totalMm: number): number[] {
	const { inputs } = draft;
	const limitMm = holdingLimitMm(draft);
	const { coatsMm, tooThick } = buildCoatSeries(totalMm, limitMm, inputs.buildCoats);
	if (tooThick) {
		const { lastMm, neededCoats } = tooThick;
		const needed =
			neededCoats === null ? 'a material that stays up better' : `${neededCoats} coats`;
		const text = `The last of ${coatsMm.length} build coats is ${lastMm.toFixed(1)} mm; more than ${limitMm.toFixed(1)} mm runs off this wall. Take ${needed}.`;
		warn(draft, 'warn', 'sag', 'coats', text);
	}
	return coatsMm;
}

/** Thickest coat that stays on the steepest wall, mm; Infinity when the sheet can't tell. */
export function holdingLimitMm(draft: Draft): number {
	const { build } = draft.inputs.materials;
	const slopeDeg = Math.min(90, Math.max(1, draft.surface.steepestWallDeg));
	const holdingMm = sheetHoldingMm(build, slopeDeg);
	if (holdingMm !== null) return holdingMm;
	if (build.body === 'free-flowing' && slopeDeg > 30) {
		const text = `${build.name} is free-flowing: it does not stay on a wall of ${Math.round(slopeDeg)}°. Take a thixotropic material for the build coats.`;
		warn(draft, 'refuse', 'sag', 'coats', text);
	} else if (slopeDeg > 30) {
		const text = `The data sheet of ${build.name} gives no yield stress, so nobody can compute how thick a coat stays on the wall: try one first.`;
		warn(draft, 'note', 'sag-unknown', 'coats', text);
	}
	return Infinity;
}
