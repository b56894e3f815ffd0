import { strapForceLaw, strapForceN } from '../laws/strap';
import { boardUpliftLaw, boardUpliftN, coreUplift, coreUpliftLaw } from '../laws/uplift';
import { DEFAULTS, defaultInput } from './defaults';
import type { FramePlan } from './frame-plan';
import type { Plan } from './plan';
import { computed, fromSheet, inherited, traced, type Draft } from './trace';
import { withinLaw } from './within-law';

type ForcesSection = NonNullable<Plan['forces']>;

/** What a lid must hold when the mold is closed and filled through a riser. */
export function lidUplift(draft: Draft, { frame }: FramePlan): ForcesSection['lid'] {
	const { casting } = draft.inputs.materials;
	const board = frame.boards.find(({ name }) => name === 'Mold board');
	const lidMl = board ? (board.lengthMm * board.widthMm * board.thicknessMm) / 1000 : 0;
	const riserMm = DEFAULTS.riserMm.value;
	const straps = DEFAULTS.straps.value;
	const { footprintCm2 } = draft.surface;
	return withinLaw(draft, 'pour', 'Uplift of a lid', () => {
		const upliftN = traced(draft, 'forces.lid.upliftN', {
			label: 'Uplift on the mold board as a lid',
			value: boardUpliftN({
				densityGPerMl: Math.max(0.1, casting.mixedDensityGPerMl),
				headMm: riserMm,
				areaCm2: footprintCm2
			}),
			unit: 'N',
			law: boardUpliftLaw,
			inputs: [
				fromSheet('ρ', 'density of the casting', casting.mixedDensityGPerMl, 'g/mL'),
				defaultInput('h', 'riserMm'),
				computed('A', 'footprint', footprintCm2, 'cm2', 'surface.footprintCm2')
			],
			note: 'Only when the mold is closed and filled through a riser.'
		});
		const inputs = [
			computed('F', 'uplift', upliftN, 'N', 'forces.lid.upliftN'),
			computed('V', 'wood in the lid', lidMl, 'mL'),
			defaultInput('ρ', 'boardGPerMl'),
			defaultInput('n', 'straps')
		];
		const tensionN = (gPerMl: number): number =>
			strapForceN({ upliftN, lidMassG: lidMl * gPerMl, straps });
		return {
			riserMm,
			straps,
			upliftN,
			strapN: traced(draft, 'forces.lid.strapN', {
				label: 'Tension that each strap must hold',
				value: tensionN(DEFAULTS.boardGPerMl.value),
				unit: 'N',
				law: strapForceLaw,
				inputs,
				...inherited(draft, inputs, (...[, , gPerMl = 0]) => tensionN(gPerMl))
			})
		};
	});
}

/** What holds the pattern down in a poured block or layer. */
export function patternUplift(draft: Draft): ForcesSection['pattern'] {
	const { build } = draft.inputs.materials;
	const { volumeMl } = draft.surface;
	return withinLaw(draft, 'pattern', 'Uplift of the pattern', () => {
		const uplift = (ml: number) =>
			coreUplift({
				volumeMl: ml,
				massG: 0,
				liquidGPerMl: Math.max(0.1, build.mixedDensityGPerMl)
			});
		const { netUpliftN, immersedFraction } = uplift(volumeMl);
		const inputs = [
			computed('V', 'volume of the pattern', volumeMl, 'mL', 'surface.volumeMl'),
			fromSheet('ρ', 'density of the rubber', build.mixedDensityGPerMl, 'g/mL')
		];
		return {
			upliftN: traced(draft, 'forces.pattern.upliftN', {
				label: 'Uplift of the pattern in a poured block or layer',
				value: netUpliftN,
				unit: 'N',
				law: coreUpliftLaw,
				inputs,
				...inherited(draft, inputs, (ml = 0) => uplift(ml).netUpliftN),
				note: 'As if the pattern were hollow and weighed nothing: fix it from below.'
			}),
			immersedFraction
		};
	});
}
