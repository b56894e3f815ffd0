import type { CuringMaterial } from '../laws/mass-effect';
import { cureRateFrom } from '../laws/cure-rate';
import type { FigureInput } from '../quantity/figure';
import { around } from '../quantity/range';
import type { Sheet } from '../materials/sheet';
import { DEFAULTS, defaultInput } from './defaults';
import { assumed, fromSheet } from './trace';

interface TypicalHeat {
	glove: number;
	rigid: number;
	/** Where the number comes from, and how far it may be off. */
	basis: string;
}

/**
 * Heat of reaction by family in J/g. Heats a mole are published; how many reacting groups a gram of a
 * product holds is the maker's, and stands here from memory.
 */
const TYPICAL_HEAT: Partial<Record<Sheet['family'], TypicalHeat>> = {
	urethane: {
		glove: 50,
		rigid: 150,
		basis:
			'55 to 80 kJ a mole of isocyanate groups (Sultan and Busnel, J. Therm. Anal. Calorim. 83, 2006, 355; Integration of Fundamental Polymer Science and Technology 4, 1990, ch. 11), the upper end taken; 0.6 mmol of them in a gram of soft rubber and 1.9 in a backing paste, from memory'
	},
	epoxy: { glove: 300, rigid: 300, basis: 'an unfilled or lightly filled resin, from memory' },
	polyester: {
		glove: 330,
		rigid: 330,
		basis:
			'66 kJ a mole of double bonds (Lucas, Borrajo and Williams, Polymer 34, 1993, 3216); 5 mmol of them in a gram of resin, from memory'
	},
	acrylic: {
		glove: 300,
		rigid: 300,
		basis:
			'13 to 19 kcal a mole of monomer (McCurdy and Laidler, Can. J. Chem. 42, 1964, 818); some 5 mmol of it in a gram of mix, from memory'
	},
	'tin silicone': { glove: 15, rigid: 15, basis: 'from memory' },
	'platinum silicone': { glove: 15, rigid: 15, basis: 'from memory' },
	plaster: { glove: 60, rigid: 60, basis: 'plaster and its water together, from memory' },
	concrete: { glove: 60, rigid: 60, basis: 'the first day, from memory' }
};

/** What a plan takes for the heat of reaction in J/g when the sheet gives none; undefined for a family that sets none free. */
export function typicalHeatJPerG(family: Sheet['family'], isGlove: boolean): number | undefined {
	return TYPICAL_HEAT[family]?.[isGlove ? 'glove' : 'rigid'];
}

/** Says of a peak that it stands on a typical heat; null when the sheet gives its own. */
export function roughHeatNote(sheet: Sheet): string | null {
	const basis = sheet.heatJPerG === undefined ? TYPICAL_HEAT[sheet.family]?.basis : undefined;
	return basis === undefined
		? null
		: `Rough until the data sheet gives its heat of reaction; a typical one is taken: ${basis}.`;
}

/** A sheet as the heat balance reads it; null without a pot life, or for a family that sets no heat free. */
export function curingMaterial(
	sheet: Sheet
): { material: CuringMaterial; inputs: FigureInput[] } | null {
	const heatJPerG = sheet.heatJPerG ?? typicalHeatJPerG(sheet.family, sheet.kind === 'glove');
	if (!sheet.potLife || heatJPerG === undefined) return null;
	const { timeS, massG, atC } = sheet.potLife;
	const specificHeatJPerGK = sheet.specificHeatJPerGK ?? DEFAULTS.heatCapacity.value;
	const known = sheet.tackFree?.second ? sheet.tackFree : sheet.demold;
	const points = known?.second ? [known, known.second] : [];
	return {
		material: {
			densityGPerMl: sheet.mixedDensityGPerMl,
			heatJPerG,
			specificHeatJPerGK,
			rate: cureRateFrom(points.map((at) => ({ timeS: at.timeS, temperatureC: at.atC }))),
			potLife: { timeS, massG, temperatureC: atC }
		},
		inputs: [
			fromSheet('t_pot', 'pot life', timeS, 's'),
			fromSheet('m_pot', 'in a cup of', massG, 'g'),
			fromSheet('T_1', 'at', atC, 'C'),
			sheet.heatJPerG === undefined
				? {
						...assumed(
							'ΔH',
							`heat of a ${sheet.family} (typical, in part from memory; see the note)`,
							heatJPerG,
							'J/g'
						),
						...around(heatJPerG, DEFAULTS.heatSpread.value)
					}
				: fromSheet('ΔH', 'heat of reaction', heatJPerG, 'J/g'),
			sheet.specificHeatJPerGK === undefined
				? defaultInput('c', 'heatCapacity')
				: fromSheet('c', 'heat capacity', specificHeatJPerGK, 'J/(g·K)'),
			fromSheet('ρ', 'density of the mix', sheet.mixedDensityGPerMl, 'g/mL')
		]
	};
}
