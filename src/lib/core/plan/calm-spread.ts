import { calmCupLaw, thickestCalmSpreadMm } from '../laws/calm-cup';
import type { CuringMaterial } from '../laws/mass-effect';
import type { FigureInput } from '../quantity/figure';
import type { Sheet } from '../materials/sheet';
import { roughHeatNote } from './curing-material';
import { DEFAULTS, defaultInput } from './defaults';
import { calibrated, calmSpreadRange, rangeOfInput, spreadRange } from './heat-ranges';
import { remembered } from './remembered';
import { traced, type Draft } from './trace';

const thickest = remembered((material: CuringMaterial, temperatureC: number, peakC: number) => ({
	thicknessMm: thickestCalmSpreadMm(material, temperatureC, peakC, calibrated(material))
}));

/**
 * How thick what is left of a material may be spread, mm, where no lump of it stays calm; null when even
 * the thinnest smear passes the limit by the law.
 */
export function calmSpread(
	draft: Draft,
	sheet: Sheet,
	of: { material: CuringMaterial; inputs: FigureInput[]; path: string }
): number | null {
	const { material, inputs, path } = of;
	const calmPeakC = Math.max(DEFAULTS.calmPeakC.value, draft.temperatureC);
	const { thicknessMm } = thickest(material, draft.temperatureC, calmPeakC);
	if (thicknessMm === null) return null;
	const range = calmSpreadRange(material, {
		heatJPerG: rangeOfInput(inputs, 'ΔH'),
		specificHeatJPerGK: rangeOfInput(inputs, 'c'),
		roomC: rangeOfInput(inputs, 'T_room'),
		calmPeakC
	});
	const rough = roughHeatNote(sheet);
	const note = 'On stone or metal, in extraction. A lump of it, however small, can pass the limit.';
	return traced(draft, `${path}.calmSpreadMm`, {
		label: `${sheet.name}: what is left stays calm, spread no thicker than`,
		value: thicknessMm,
		unit: 'mm',
		law: calmCupLaw,
		inputs: [...inputs, defaultInput('T_limit', 'calmPeakC')],
		...spreadRange(range, thicknessMm),
		note: rough ? `${note} ${rough}` : note
	});
}
