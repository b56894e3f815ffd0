import { flangeVolumeMl } from '../laws/flange';
import { around } from '../quantity/range';
import { batchPlan } from './batch-plan';
import { DEFAULTS } from './defaults';
import type { FramePlan } from './frame-plan';
import type { ShellRound } from './plan';
import { layersOf, traceFiber } from './reinforcement-plan';
import { roomTime } from './room-time';
import { shellWay, type ShellWay } from './shell-thickness-plan';
import { computed, highEnd, traced, type Draft } from './trace';
import { wallLaw, wallVolumeMl } from './wall-volume';

export interface ShellPlan {
	rounds: ShellRound[];
	paceS: number[];
	/** After the last cup of each round is laid, until it has stiffened at the latest that is likely. */
	stiffS: number[];
	shellG: number;
}

/** What one round adds at most, and the fiber in it by weight; common practice, no source. */
const ROUNDS: Readonly<Record<ShellWay, { roundMm: number; fiberFraction: number }>> = {
	laminate: { roundMm: 2.5, fiberFraction: 0.3 },
	plaster: { roundMm: 12, fiberFraction: 0.03 },
	paste: { roundMm: 6, fiberFraction: 0.05 }
};
const LEAST_ROUNDS = 2;

/** Rounds of the shell, each with its cups and its cloth. */
export function shellPlan(
	draft: Draft,
	gloveMm: number,
	shellMm: number,
	frame: FramePlan
): ShellPlan {
	const { materials, shop } = draft.inputs;
	const { shell, reinforcement } = materials;
	const way = ROUNDS[shellWay(shell)];
	const count = Math.max(LEAST_ROUNDS, Math.ceil(shellMm / way.roundMm - 1e-9));
	const fiber = reinforcement ? way.fiberFraction : 0;
	const densityGPerMl =
		1 / (fiber / (reinforcement?.mixedDensityGPerMl ?? 1) + (1 - fiber) / shell.mixedDensityGPerMl);
	const windowS = roundWindow(draft);
	const paceS: number[] = [];
	const stiffS: number[] = [];
	let shellG = 0;
	let belowMl = 0;
	const rounds = Array.from({ length: count }, (_, index): ShellRound => {
		const path = `shell.rounds.${index}`;
		const title = `Shell round ${index + 1}`;
		const uptoMl = shellMl(draft, gloveMm, (shellMm * (index + 1)) / count, frame);
		const volumeMl = Math.max(0, uptoMl - belowMl);
		belowMl = uptoMl;
		const laidG = volumeMl * densityGPerMl;
		shellG += laidG;
		const reinforcementG = fiber * laidG;
		const layers = layersOf(draft, {
			path,
			title,
			reinforcementG,
			areaCm2: (10 * volumeMl) / (shellMm / count)
		});
		if (reinforcement) traceFiber(draft, { path, title, volumeMl, fiber, reinforcementG });
		const batch = batchPlan(draft, {
			path,
			place: 'materials.shell',
			title,
			sheet: shell,
			laidG: laidG - reinforcementG,
			rateGPerMin: shop.pastingGPerMin,
			bondWindowS: windowS.timeS
		});
		paceS.push(batch.paceS);
		stiffS.push(highEnd(draft, `${path}.workingS`, batch.workingS));
		traced(draft, `${path}.windowClosesS`, {
			label: `${title}: takes the next without abrading until`,
			value: windowS.timeS,
			unit: 's',
			law: windowS.law,
			inputs: windowS.inputs,
			...windowS.range
		});
		return {
			id: `round-${index + 1}`,
			number: index + 1,
			title,
			...batch,
			reinforcementG,
			...(layers === null ? {} : { layers }),
			windowClosesS: windowS.timeS
		};
	});
	traced(draft, 'weights.shellG', {
		label: 'Shell',
		value: shellG,
		unit: 'g',
		law: wallLaw(draft),
		inputs: [
			computed('V', 'volume on the back of the glove', belowMl, 'mL'),
			computed('ρ', 'density with its cloth', densityGPerMl, 'g/mL'),
			computed('t', 'thickness', shellMm, 'mm', 'shell.thicknessMm')
		],
		...around(shellG, 2 * DEFAULTS.spreadFraction.value)
	});
	return { rounds, paceS, stiffS, shellG };
}

/** Volume of the shell up to a thickness, on the back of the glove and on its flange. */
function shellMl(draft: Draft, gloveMm: number, thicknessMm: number, frame: FramePlan): number {
	const wallMl = wallVolumeMl(draft, gloveMm, gloveMm + thicknessMm);
	const flangeMl = flangeVolumeMl({
		outerAreaCm2: frame.insideAreaCm2,
		footAreaCm2: draft.surface.footprintCm2,
		footPerimeterMm: draft.surface.footLengthMm,
		coatThicknessMm: gloveMm + thicknessMm,
		flangeThicknessMm: thicknessMm
	});
	return wallMl + flangeMl;
}

function roundWindow(draft: Draft) {
	const { shell } = draft.inputs.materials;
	const times = DEFAULTS.roundTimes.value;
	const pot = shell.potLife ?? { timeS: DEFAULTS.mixS.value, atC: DEFAULTS.referenceC.value };
	return roomTime({
		label: shell.recoatCloses
			? 'recoat window shuts'
			: `${times} times the pot life (common practice, no source)`,
		sheet: shell.recoatCloses ?? { timeS: pot.timeS * times, atC: pot.atC },
		fallback: 'demoldS',
		temperatureC: draft.temperatureC,
		spreadK: draft.inputs.shop.roomSpreadK,
		safe: 'sooner'
	});
}
