import { exothermLaw } from '../laws/exotherm';
import { peakMoment, type CuringMaterial } from '../laws/mass-effect';
import type { FigureInput } from '../quantity/figure';
import { around, type NoRange, type Range } from '../quantity/range';
import { curingMaterial, roughHeatNote } from './curing-material';
import { DEFAULTS } from './defaults';
import { calibrated, heatRanges, rangeOfInput, roomInput, spreadRange } from './heat-ranges';
import { warnOfCastingHeat } from './heat-warnings';
import type { Plan } from './plan';
import { remembered } from './remembered';
import { computed, traced, tradeLaw, type Draft } from './trace';
import { withinLaw } from './within-law';

export type CastingHeat = NonNullable<NonNullable<Plan['cure']>['casting']>;

const meanThicknessLaw = tradeLaw(
	'mean-thickness',
	'Mean thickness of the part',
	'd = V / A',
	'volume over the area that the mold covers; a boss or a foot is thicker, and its middle hotter'
);

const peaks = remembered(
	(material: CuringMaterial, batchG: number, thicknessMm: number, temperatureC: number) => {
		const peakC = (body: Parameters<typeof peakMoment>[1]) =>
			peakMoment(material, body, temperatureC, calibrated(material)).temperatureC;
		return {
			batchC: peakC({ kind: 'cup', massG: batchG }),
			partC: peakC({ kind: 'film', thicknessMm })
		};
	}
);

/** How hot the first part gets in the mold, and a batch of it that is left in its bucket. */
export function castingHeat(draft: Draft, pour: Plan['pour']): CastingHeat | undefined {
	const { casting } = draft.inputs.materials;
	const { batches } = pour;
	const curing = curingMaterial(casting);
	if (!batches || !curing) return undefined;
	return (
		withinLaw(draft, 'cure', `Temperature of the first part of ${casting.name}`, () =>
			heated(draft, curing, batches.massG)
		) ?? undefined
	);
}

function heated(
	draft: Draft,
	{ material, inputs }: { material: CuringMaterial; inputs: FigureInput[] },
	batchG: number
): CastingHeat {
	const { surface, temperatureC } = draft;
	const { casting } = draft.inputs.materials;
	const { volumeMl, exposedAreaCm2 } = surface;
	const thicknessMm = (10 * volumeMl) / exposedAreaCm2;
	const { batchC, partC } = peaks(material, batchG, thicknessMm, temperatureC);
	const calmPeakC = DEFAULTS.calmPeakC.value;
	const room = roomInput(draft);
	const thickness = around(thicknessMm, 2 * DEFAULTS.areaSpread.value);
	const ranges = heatRanges(material, {
		massG: batchG,
		calmPeakC,
		heatJPerG: rangeOfInput(inputs, 'ΔH'),
		specificHeatJPerGK: rangeOfInput(inputs, 'c'),
		roomC: rangeOfInput([room], 'T_room'),
		thicknessMm: thickness
	});
	const rough = roughHeatNote(casting);
	const peak = (
		key: 'batchPeakC' | 'peakC',
		given: { label: string; value: number; of: FigureInput; range: Range | NoRange; note: string }
	): number =>
		traced(draft, `cure.casting.${key}`, {
			label: given.label,
			value: given.value,
			unit: 'C',
			law: exothermLaw,
			inputs: [...inputs, room, given.of],
			...spreadRange(given.range, given.value),
			note: rough ? `${given.note} ${rough}` : given.note
		});
	const found: CastingHeat = {
		materialId: casting.id,
		materialName: casting.name,
		batchG,
		batchPeakC: peak('batchPeakC', {
			label: 'First pour: hottest, if a batch is left in its bucket',
			value: batchC,
			of: computed('m', 'each batch', batchG, 'g'),
			range: ranges.cupPeakC,
			note: 'The middle runs hotter than this.'
		}),
		thicknessMm: traced(draft, 'cure.casting.thicknessMm', {
			label: 'Mean thickness of the first part',
			value: thicknessMm,
			unit: 'mm',
			law: meanThicknessLaw,
			inputs: [
				computed('V', 'volume of the part', volumeMl, 'mL'),
				computed('A', 'area that the mold covers', exposedAreaCm2, 'cm2')
			]
		}),
		peakC: peak('peakC', {
			label: 'First part: hottest in the mold',
			value: partC,
			of: {
				...computed('d', 'mean thickness of the part', thicknessMm, 'mm'),
				...thickness
			},
			range: ranges.filmPeakC,
			note: 'As a layer as thick as the part is on average; where it is thicker, it gets hotter.'
		}),
		calmPeakC
	};
	warnOfCastingHeat(draft, casting, found);
	return found;
}
