import { castingMassG, castingMassLaw, pourVolumeLaw, pourVolumeMl } from '../laws/casting';
import { readableSplitLaw } from '../laws/readable-split';
import { roundedOutward, type Range } from '../quantity/range';
import { roundTo } from '../quantity/rounding';
import { splitCup } from './cup-parts';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { PlanError } from './plan-error';
import type { ShellThicknessPlan } from './shell-thickness-plan';
import { computed, entered, fromSheet, inherited, traced, type Draft } from './trace';

/** The first pour: what to mix to fill the mold once. */
export function pourPlan(draft: Draft, shell: ShellThicknessPlan): Plan['pour'] {
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
	const split = splitCup(casting, exactG, shop.scaleReadabilityG);
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
	const massG = traced(draft, 'pour.massG', {
		label: 'Mass of the first pour',
		value: roundTo(split.massG, shop.scaleReadabilityG),
		unit: 'g',
		law: castingMassLaw,
		inputs: mixed,
		...asWeighed(needed, split.massG, shop.scaleReadabilityG),
		note: 'Rounded up to what the scale shows in every part, on ratio.'
	});
	traceParts(draft, split.parts, massG);
	return {
		materialName: casting.name,
		volumeMl,
		massG,
		parts: split.parts,
		headMm: shell.headMm,
		pressurePa: shell.pressurePa
	};
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
								ratio.join(' : '),
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
