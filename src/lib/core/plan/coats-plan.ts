import { coatProfileLaw } from '../laws/coat-profile';
import { filletVolumeMl, flangeVolumeMl } from '../laws/flange';
import { combinedFraction } from '../laws/order-quantity';
import type { FramePlan } from './frame-plan';
import { DEFAULTS, defaultInput } from './defaults';
import type { GloveBuild } from './glove-build';
import { batchPlan } from './batch-plan';
import { coatTimes } from './coat-times';
import type { Coat } from './plan';
import { computed, traced, tradeLaw, type Draft } from './trace';
import { wallInputs, wallLaw, wallVolumeMl } from './wall-volume';

export interface CoatsPlan {
	coats: Coat[];
	/** Hands on each coat, from first mixing to last cup empty. */
	paceS: number[];
	gloveMl: number;
	gloveG: number;
}

const detailThicknessLaw = tradeLaw(
	'detail-thickness',
	'Thickness of a detail coat',
	't = 0.5 mm',
	'a free-flowing material that drains; what it leaves on a wall is thinner'
);

/** The coats that make the glove, detail coats first, with their volumes, cups and times. */
export function coatsPlan(draft: Draft, build: GloveBuild, frame: FramePlan): CoatsPlan {
	const { materials, shop } = draft.inputs;
	const kinds = [
		...build.detailMm.map((thicknessMm) => ({ kind: 'detail' as const, thicknessMm })),
		...build.buildMm.map((thicknessMm) => ({ kind: 'build' as const, thicknessMm }))
	];
	const volumes = gloveVolumesMl(
		draft,
		kinds.map(({ thicknessMm }) => thicknessMm),
		frame
	);
	const paceS: number[] = [];
	let gloveG = 0;
	const coats = kinds.map(({ kind, thicknessMm }, index): Coat => {
		const path = `coats.${index}`;
		const number = kind === 'detail' ? index + 1 : index + 1 - build.detailMm.length;
		const title = `${kind === 'detail' ? 'Detail' : 'Build'} coat ${number}`;
		const sheet = kind === 'detail' ? (materials.detail ?? materials.build) : materials.build;
		const volumeMl = volumes[index] ?? 0;
		traceCoat(draft, { path, title, kind, thicknessMm, volumeMl, build });
		const laidG = volumeMl * sheet.mixedDensityGPerMl;
		gloveG += laidG;
		const batch = batchPlan(draft, {
			path,
			place: `materials.${kind}`,
			title,
			sheet,
			laidG,
			rateGPerMin: shop.brushingGPerMin,
			bondWindowS: sheet.recoatCloses?.timeS ?? sheet.tackFree?.timeS ?? 2700
		});
		paceS.push(batch.paceS);
		const layS = batch.mixS + (60 * (batch.cups[0]?.massG ?? 0)) / shop.brushingGPerMin;
		const times = coatTimes(draft, {
			path,
			title,
			kind,
			sheet,
			thicknessMm,
			layS,
			paceS: batch.paceS
		});
		return {
			id: `${kind}-${number}`,
			kind,
			number,
			title,
			thicknessMm,
			volumeMl,
			...batch,
			...times
		};
	});
	return { coats, paceS, gloveMl: volumes.reduce((sum, ml) => sum + ml, 0), gloveG };
}

/**
 * Volume of each coat on pattern and flange, with the fillet that brushing leaves along the foot, as
 * round as the glove is thick: each coat lies on the ones below it.
 */
function gloveVolumesMl(
	draft: Draft,
	thicknessesMm: readonly number[],
	frame: FramePlan
): number[] {
	let totalMm = 0;
	let belowMl = 0;
	return thicknessesMm.map((thicknessMm) => {
		const belowMm = totalMm;
		totalMm += thicknessMm;
		const filletMl = filletVolumeMl({
			lengthMm: draft.surface.footLengthMm,
			radiusMm: totalMm,
			turnDeg: 90
		});
		const onFlangeMl = flangeVolumeMl({
			outerAreaCm2: frame.insideAreaCm2,
			footAreaCm2: draft.surface.footprintCm2,
			footPerimeterMm: draft.surface.footLengthMm,
			coatThicknessMm: totalMm,
			flangeThicknessMm: totalMm
		});
		const uptoMl = filletMl + onFlangeMl;
		const flangeMl = Math.max(0, uptoMl - belowMl);
		belowMl = uptoMl;
		return wallVolumeMl(draft, belowMm, totalMm) + flangeMl;
	});
}

function traceCoat(
	draft: Draft,
	given: {
		path: string;
		title: string;
		kind: 'detail' | 'build';
		thicknessMm: number;
		volumeMl: number;
		build: GloveBuild;
	}
): void {
	const { path, title, kind, thicknessMm, volumeMl, build } = given;
	const thicknessSpread = 2 * DEFAULTS.spreadFraction.value;
	const spread = 2 * combinedFraction([DEFAULTS.spreadFraction.value, DEFAULTS.areaSpread.value]);
	traced(draft, `${path}.thicknessMm`, {
		label: `${title}: thickness`,
		value: thicknessMm,
		unit: 'mm',
		law: kind === 'detail' ? detailThicknessLaw : coatProfileLaw,
		inputs: [
			computed('T', 'glove', build.thicknessMm, 'mm', 'glove.thicknessMm'),
			computed('n', 'build coats', build.buildMm.length, 'count')
		],
		low: thicknessMm * (1 - thicknessSpread),
		high: thicknessMm * (1 + thicknessSpread),
		note: 'Rounded to 0.1 mm; check with a pin gauge, a brush leaves about ± 10%.'
	});
	traced(draft, `${path}.volumeMl`, {
		label: `${title}: volume on pattern and flange`,
		value: volumeMl,
		unit: 'mL',
		law: wallLaw(draft),
		inputs: [
			computed('A', 'exposed area', draft.surface.exposedAreaCm2, 'cm2', 'surface.exposedAreaCm2'),
			computed('t', 'thickness', thicknessMm, 'mm', `${path}.thicknessMm`),
			...wallInputs(draft),
			computed(
				'A_flange',
				'flange',
				draft.figures['surface.flangeAreaCm2']?.value ?? 0,
				'cm2',
				'surface.flangeAreaCm2'
			),
			computed(
				'L',
				'foot, with a fillet as round as the glove is thick',
				draft.surface.footLengthMm,
				'mm'
			),
			defaultInput('u_t', 'spreadFraction'),
			defaultInput('u_A', 'areaSpread')
		],
		low: volumeMl * (1 - spread),
		high: volumeMl * (1 + spread)
	});
}
