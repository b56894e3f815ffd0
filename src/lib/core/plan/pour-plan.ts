import { castingMassG, castingMassLaw, pourVolumeLaw, pourVolumeMl } from '../laws/casting';
import { roundTo } from '../quantity/rounding';
import { splitCup } from './cup-parts';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { PlanError } from './plan-error';
import type { ShellThicknessPlan } from './shell-thickness-plan';
import { computed, fromSheet, traced, type Draft } from './trace';

/** The first pour: what to mix to fill the mold once. */
export function pourPlan(draft: Draft, shell: ShellThicknessPlan): Plan['pour'] {
	const { shop, materials } = draft.inputs;
	const { casting } = materials;
	const volumeMl = traced(draft, 'pour.volumeMl', {
		label: 'Casting to mix for one part',
		value: pourVolumeMl({
			cavityMl: draft.surface.volumeMl,
			lossFraction: DEFAULTS.pourLoss.value
		}),
		unit: 'mL',
		law: pourVolumeLaw,
		inputs: [
			computed(
				'V_cavity',
				'volume of the pattern',
				draft.surface.volumeMl,
				'mL',
				'surface.volumeMl'
			),
			defaultInput('loss', 'pourLoss')
		]
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
	const massG = traced(draft, 'pour.massG', {
		label: 'Mass of the first pour',
		value: roundTo(split.massG, shop.scaleReadabilityG),
		unit: 'g',
		law: castingMassLaw,
		inputs: [
			computed('V', 'volume to mix', volumeMl, 'mL', 'pour.volumeMl'),
			fromSheet('ρ', 'density of the mix', casting.mixedDensityGPerMl, 'g/mL')
		]
	});
	return {
		materialName: casting.name,
		volumeMl,
		massG,
		parts: split.parts,
		headMm: shell.headMm,
		pressurePa: shell.pressurePa
	};
}
