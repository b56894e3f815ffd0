import {
	plasterConsistencyLaw,
	plasterDryLaw,
	plasterMix,
	plasterMixLaw,
	waterRatioFromConsistency
} from '../laws/plaster';
import { readableSplitLaw } from '../laws/readable-split';
import { weightRatio } from '../materials/mix-ratio';
import { waterPartOf } from '../materials/tap-water';
import type { Plan } from './plan';
import { computed, fromSheet, inherited, traced, warn, type Draft } from './trace';
import { withinLaw } from './within-law';

type PlasterSection = NonNullable<Plan['plaster']>;

/** A sheet's density this far from what powder and water give is doubtful; common practice, no source. */
const DENSITY_TOLERANCE = 0.05;

/** Water, powder, yield and dry mass of a plaster casting; undefined for any other casting. */
export function plasterSection(draft: Draft, pour: Plan['pour']): PlasterSection | undefined {
	const { casting } = draft.inputs.materials;
	const ratio = weightRatio(casting);
	const water = waterPartOf(casting);
	if (casting.family !== 'plaster' || casting.parts.length !== 2 || !ratio || water < 0)
		return undefined;
	const consistency = (100 * (ratio[water] ?? 0)) / (ratio[1 - water] ?? 1);
	const section = withinLaw(draft, 'pour', 'Plaster for the first pour', () => {
		const waterRatio = waterRatioFromConsistency(consistency);
		const mix = plasterMix({ volumeMl: pour.volumeMl, waterRatio });
		const { volumeMl: partMl } = draft.surface;
		// What stays in the bucket never becomes part.
		const part = plasterMix({ volumeMl: partMl, waterRatio });
		const ratioInput = fromSheet('w', 'water : plaster by weight', waterRatio, 'fraction');
		const toMix = [
			computed('V', 'volume to mix', pour.volumeMl, 'mL', 'pour.volumeMl'),
			ratioInput
		];
		const inMold = [
			computed('V', 'volume of the part', partMl, 'mL', 'surface.volumeMl'),
			ratioInput
		];
		const number = (
			key: keyof ReturnType<typeof plasterMix> & keyof PlasterSection,
			label: string,
			value: number,
			unit: 'g' | 'g/mL' | 'mL',
			isDry = false
		): number => {
			const inputs = isDry ? inMold : toMix;
			return traced(draft, `plaster.${key}`, {
				label,
				value,
				unit,
				law: isDry ? plasterDryLaw : plasterMixLaw,
				inputs,
				...inherited(
					draft,
					inputs,
					(volumeMl = 0, ratio = 0) => plasterMix({ volumeMl, waterRatio: ratio })[key]
				)
			});
		};
		/** The recipe is what is weighed for the first pour: one amount, wherever it is read. */
		const weighed = (key: 'plasterG' | 'waterG', label: string, part: string): number => {
			const i = pour.parts.findIndex((each) => each.part === part);
			const massG = pour.parts[i]?.massG ?? 0;
			const inputs = [
				computed('m', `${part}, first pour`, massG, 'g', `pour.parts.${i}.massG`),
				ratioInput
			];
			return traced(draft, `plaster.${key}`, {
				label,
				value: massG,
				unit: 'g',
				law: readableSplitLaw,
				inputs,
				...inherited(draft, inputs, (ofPart = 0) => ofPart)
			});
		};
		return {
			waterRatio,
			consistencyMlPer100G: traced(draft, 'plaster.consistencyMlPer100G', {
				label: 'Water for 100 g of plaster',
				value: consistency,
				unit: 'mL',
				law: plasterConsistencyLaw,
				inputs: [ratioInput]
			}),
			plasterG: weighed('plasterG', 'Plaster powder', casting.parts[1 - water]?.part ?? ''),
			waterG: weighed('waterG', 'Water', casting.parts[water]?.part ?? ''),
			slurryGPerMl: number('slurryGPerMl', 'Density of the slurry', mix.slurryGPerMl, 'g/mL'),
			yieldMlPerKg: number(
				'yieldMlPerKg',
				'Slurry from a kilogram of plaster',
				mix.yieldMlPerKg,
				'mL'
			),
			dryG: number('dryG', 'Part, set and dry', part.dryG, 'g', true),
			dryGPerMl: number('dryGPerMl', 'Density, set and dry', part.dryGPerMl, 'g/mL', true),
			dryingWaterG: number(
				'dryingWaterG',
				'Water that dries out of the part',
				part.dryingWaterG,
				'g',
				true
			)
		};
	});
	if (
		section &&
		Math.abs(section.slurryGPerMl / casting.mixedDensityGPerMl - 1) > DENSITY_TOLERANCE
	) {
		const text = `Powder and water in the ratio of ${casting.name} give ${section.slurryGPerMl.toFixed(2)} g/mL; its sheet says ${casting.mixedDensityGPerMl} g/mL. One of them is wrong, or air is beaten in.`;
		warn(draft, 'warn', 'plaster-density', 'pour', text);
	}
	return section ?? undefined;
}
