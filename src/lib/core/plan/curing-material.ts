import type { CuringMaterial } from '../laws/mass-effect';
import { cureRateFrom } from '../laws/cure-rate';
import type { FigureInput } from '../quantity/figure';
import type { Sheet } from '../materials/sheet';
import { DEFAULTS } from './defaults';
import { assumed, fromSheet } from './trace';

/**
 * Heat of reaction by family in J/g; typical values, from memory. Urethane: about 80 kJ a mole of
 * isocyanate groups, with 0.6 mmol/g in a soft rubber and 1.9 mmol/g in a backing paste.
 */
const TYPICAL_HEAT_J_PER_G: Partial<Record<Sheet['family'], { glove: number; rigid: number }>> = {
	urethane: { glove: 50, rigid: 150 },
	epoxy: { glove: 300, rigid: 300 },
	polyester: { glove: 330, rigid: 330 },
	acrylic: { glove: 300, rigid: 300 },
	'tin silicone': { glove: 15, rigid: 15 },
	'platinum silicone': { glove: 15, rigid: 15 },
	plaster: { glove: 60, rigid: 60 },
	concrete: { glove: 60, rigid: 60 }
};

/** A sheet as the heat balance reads it; null without a pot life, or for a family that sets no heat free. */
export function curingMaterial(
	sheet: Sheet
): { material: CuringMaterial; inputs: FigureInput[] } | null {
	const typical = TYPICAL_HEAT_J_PER_G[sheet.family];
	const heatJPerG = sheet.heatJPerG ?? typical?.[sheet.kind === 'glove' ? 'glove' : 'rigid'];
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
				? assumed('ΔH', `heat of a ${sheet.family} (typical, from memory)`, heatJPerG, 'J/g')
				: fromSheet('ΔH', 'heat of reaction', heatJPerG, 'J/g'),
			sheet.specificHeatJPerGK === undefined
				? assumed('c', 'heat capacity (common practice, no source)', specificHeatJPerGK, 'J/(g·K)')
				: fromSheet('c', 'heat capacity', specificHeatJPerGK, 'J/(g·K)'),
			fromSheet('ρ', 'density of the mix', sheet.mixedDensityGPerMl, 'g/mL')
		]
	};
}
