import { calmCupLaw, largestCalmCupG } from '../laws/calm-cup';
import type { CuringMaterial } from '../laws/mass-effect';
import type { FigureInput } from '../quantity/figure';
import { roundDownTo } from '../quantity/rounding';
import { DEFAULTS, defaultInput } from './defaults';
import { calibrated } from './heat-ranges';
import { LEAST_CUP_G } from './inputs';
import type { MixedUse } from './mixed-uses';
import { remembered } from './remembered';
import { traced, type Draft } from './trace';

const largest = remembered((material: CuringMaterial, temperatureC: number, plannedG: number) => ({
	massG: largestCalmCupG(
		material,
		temperatureC,
		{ peakC: DEFAULTS.hotPeakC.value, searchUpToG: plannedG },
		calibrated(material)
	)
}));

/**
 * The heaviest cup, in whole grams, that does not get as hot as only a supervisor lets pass; null when the
 * planned one does not, and when no cup worth mixing stays below.
 *
 * @param peakC - of the planned cup, forgotten
 */
export function smallerCup(
	draft: Draft,
	{ sheet, largestCupG }: MixedUse,
	of: { material: CuringMaterial; inputs: FigureInput[]; path: string },
	peakC: number
): number | null {
	if (peakC <= DEFAULTS.hotPeakC.value) return null;
	const { massG } = largest(of.material, draft.temperatureC, largestCupG);
	const smallerG = roundDownTo(massG ?? 0, 1);
	if (smallerG < LEAST_CUP_G) return null;
	return traced(draft, `${of.path}.smallerCupG`, {
		label: `${sheet.name}: no forgotten cup melts up to`,
		value: smallerG,
		unit: 'g',
		law: calmCupLaw,
		inputs: [...of.inputs, defaultInput('T_limit', 'hotPeakC')],
		note: 'More cups, each mixed and laid by itself.'
	});
}
