import { castingMassG, castingMassLaw, pourVolumeLaw, pourVolumeMl } from '../laws/casting';
import { readableSplitLaw } from '../laws/readable-split';
import { roundedOutward, type Range } from '../quantity/range';
import { roundTo } from '../quantity/rounding';
import { ratioText } from '../materials/mix-ratio';
import { splitCup } from './cup-parts';
import { DEFAULTS, defaultInput } from './defaults';
import { meltedPour } from './melted-pour';
import type { Plan } from './plan';
import { PlanError } from './plan-error';
import { pourBatches, type PourBatches } from './pour-batches';
import { pourPace, type PourPace } from './pour-pace';
import { warnOfBatches, warnOfNoBatch, warnOfNoPotLife } from './pour-warnings';
import type { ShellThicknessPlan } from './shell-thickness-plan';
import { computed, entered, fromSheet, inherited, traced, type Draft } from './trace';

/** The first pour: what to mix to fill the mold once. */
export function pourPlan(draft: Draft, shell: ShellThicknessPlan, gloveMm: number): Plan['pour'] {
	const { shop, materials } = draft.inputs;
	const { casting } = materials;
	const cavityMl = draft.surface.volumeMl;
	const filled = [
		computed('V_cavity', 'volume of the pattern', cavityMl, 'mL', 'surface.volumeMl'),
		defaultInput('loss', 'pourLoss')
	];
	const volumeMl = traced(draft, 'pour.volumeMl', {
		label: 'Casting to mix for one part',
		value: pourVolumeMl({ cavityMl, lossFraction: DEFAULTS.pourLoss.value }),
		unit: 'mL',
		law: pourVolumeLaw,
		inputs: filled,
		...inherited(draft, filled, (cavity = 0, lossFraction = 0) =>
			pourVolumeMl({ cavityMl: cavity, lossFraction })
		)
	});
	const exactG = castingMassG({ volumeMl, densityGPerMl: casting.mixedDensityGPerMl });
	const pace = pourPace(draft);
	const count = pace && pace.largestG > 0 ? Math.ceil(exactG / pace.largestG - 1e-9) : 1;
	const split = splitCup(casting, exactG / count, shop.scaleReadabilityG);
	if (!split) {
		throw new PlanError([
			{
				path: 'shop.scaleReadabilityG',
				message: `A scale that reads ${shop.scaleReadabilityG} g is too coarse to weigh ${casting.name} on ratio, or the pour is beyond 1,000 kg.`
			}
		]);
	}
	const mixed = [
		computed('V', 'volume to mix', volumeMl, 'mL', 'pour.volumeMl'),
		fromSheet('ρ', 'density of the mix', casting.mixedDensityGPerMl, 'g/mL')
	];
	const needed = inherited(draft, mixed, (ml = 0, densityGPerMl = 0) =>
		castingMassG({ volumeMl: ml, densityGPerMl })
	);
	const inAll = (batchG: number): number => roundTo(count * batchG, shop.scaleReadabilityG);
	const totalG = inAll(split.massG);
	const massG = traced(draft, 'pour.massG', {
		label: 'Mass of the first pour',
		value: totalG,
		unit: 'g',
		law: castingMassLaw,
		inputs: mixed,
		...asWeighed(needed, totalG, shop.scaleReadabilityG),
		note: 'Rounded up to what the scale shows in every part, on ratio.'
	});
	const parts = split.parts.map(({ part, massG: batchG }) => ({ part, massG: inAll(batchG) }));
	traceParts(draft, parts, massG);
	const batches = batchesOf(draft, pace, { count, massG: split.massG, parts: split.parts, totalG });
	const pour = {
		materialName: casting.name,
		volumeMl,
		massG,
		parts,
		...(batches && { batches }),
		headMm: shell.headMm,
		pressurePa: shell.pressurePa
	};
	const melt = meltedPour(draft, pour, gloveMm + shell.thicknessMm);
	return melt ? { ...pour, melt } : pour;
}

/** The batches in which the pour is mixed, and what stands against them; undefined without a pot life. */
function batchesOf(
	draft: Draft,
	pace: PourPace | null,
	given: Parameters<typeof pourBatches>[2]
): PourBatches | undefined {
	if (pace === null) {
		warnOfNoPotLife(draft);
		return undefined;
	}
	if (pace.largestG === 0) {
		warnOfNoBatch(draft, pace);
		return undefined;
	}
	const batches = pourBatches(draft, pace, given);
	warnOfBatches(draft, pace, batches, given.totalG);
	return batches;
}

/** What a casting may need, in steps of the scale, with what is weighed within it. */
function asWeighed(
	needed: ReturnType<typeof inherited>,
	massG: number,
	step: number
): ReturnType<typeof inherited> {
	const { low, high } = needed;
	if (low === undefined || high === undefined) return needed;
	return roundedOutward({ low: Math.min(low, massG), high: Math.max(high, massG) }, step);
}

function traceParts(draft: Draft, parts: Plan['pour']['parts'], massG: number): void {
	const { shop, materials } = draft.inputs;
	const { ratioByWeight, ratioByVolume } = materials.casting;
	const ratio = ratioByWeight ?? ratioByVolume;
	parts.forEach((part, i) => {
		traced(draft, `pour.parts.${i}.massG`, {
			label: `First pour: ${part.part}`,
			value: part.massG,
			unit: 'g',
			law: readableSplitLaw,
			inputs: [
				computed('M', 'mass of the first pour', massG, 'g', 'pour.massG'),
				...(ratio
					? [
							fromSheet(
								'r',
								ratioByWeight ? 'ratio by weight' : 'ratio by volume',
								ratioText(materials.casting, ratio),
								'text'
							)
						]
					: []),
				entered('d', 'smallest step of the scale', shop.scaleReadabilityG, 'g')
			],
			...inheritedShare(draft, part.massG / massG, shop.scaleReadabilityG)
		});
	});
}

function inheritedShare({ figures }: Draft, share: number, step: number): Partial<Range> {
	const { low, high } = figures['pour.massG'] ?? {};
	if (low === undefined || high === undefined) return {};
	return roundedOutward({ low: share * low, high: share * high }, step);
}
