import { otherPartG, otherPartLaw } from '../laws/proportioning';
import {
	ratioUncertaintyFraction,
	smallestBatchG,
	smallestBatchLaw,
	weighingUncertaintyLaw
} from '../laws/weighing-uncertainty';
import { volumePartsBPer100A, volumeRatioLaw } from '../laws/volume-ratio';
import { ratioText, weightRatio } from '../materials/mix-ratio';
import type { Sheet } from '../materials/sheet';
import type { PlacedBatch } from './batch-paths';
import { toleranceOf } from './cup-parts';
import type { Plan } from './plan';
import { assumed, computed, entered, fromSheet, traced, tradeLaw, warn, type Draft } from './trace';
import { withinLaw } from './within-law';

type WeighingSection = NonNullable<Plan['weighing']>;

const smallestCupLaw = tradeLaw(
	'smallest-planned-cup',
	'The smallest cup of the plan',
	'm = min m_i',
	'the cups as they are planned; a scrap mixed for a repair is smaller'
);
const toleranceLaw = tradeLaw(
	'ratio-tolerance',
	'How far a ratio by weight may be off',
	'as the data sheet says; 2% where it says nothing',
	'materials that cure by ratio; the data sheet decides'
);

/** Whether the scale is fine enough for the smallest cup of each material. */
export function weighingSection(draft: Draft, batches: readonly PlacedBatch[]): WeighingSection {
	const { detail, build, shell } = draft.inputs.materials;
	const sheets = [detail, build, shell].filter(
		(sheet): sheet is Sheet => !!sheet && batches.some(({ materialId }) => materialId === sheet.id)
	);
	return sheets.map((sheet, i) => weighing(draft, sheet, batches, `weighing.${i}`));
}

function weighing(
	draft: Draft,
	sheet: Sheet,
	batches: readonly PlacedBatch[],
	path: string
): WeighingSection[number] {
	const readabilityG = draft.inputs.shop.scaleReadabilityG;
	const parts = weightRatio(sheet) ?? [1];
	const toleranceFraction = toleranceOf(sheet);
	const cups = batches
		.filter(({ materialId }) => materialId === sheet.id)
		.flatMap(({ cups: all, title, path: batch }) =>
			all.map((cup) => ({ ...cup, title, figure: `${batch}.cups.0.massG` }))
		);
	const smallest = cups.reduce(
		(least, cup) => (cup.massG < least.massG ? cup : least),
		cups[0] ?? { massG: 0, parts: [], title: '', figure: '' }
	);
	const scale = entered('d', 'smallest step of the scale', readabilityG, 'g');
	const ratio = fromSheet('r', 'ratio by weight', ratioText(sheet, parts), 'text');
	const tolerance =
		sheet.ratioToleranceFraction === undefined
			? assumed(
					'tolerance',
					'of the ratio (common practice, no source)',
					toleranceFraction,
					'fraction'
				)
			: fromSheet('tolerance', 'of the ratio', toleranceFraction, 'fraction');
	const isMixed = parts.length > 1;
	const leastG = isMixed
		? withinLaw(draft, 'materials', `Smallest batch of ${sheet.name}`, () =>
				traced(draft, `${path}.smallestBatchG`, {
					label: `${sheet.name}: smallest batch this scale can weigh`,
					value: smallestBatchG({ readabilityG, parts, toleranceFraction }),
					unit: 'g',
					law: smallestBatchLaw,
					inputs: [scale, ratio, tolerance]
				})
			)
		: null;
	traced(draft, `${path}.smallestCupG`, {
		label: `${sheet.name}: smallest cup of this plan`,
		value: smallest.massG,
		unit: 'g',
		law: smallestCupLaw,
		inputs: [computed('m', smallest.title, smallest.massG, 'g', smallest.figure)]
	});
	traced(draft, `${path}.toleranceFraction`, {
		label: `${sheet.name}: the ratio may be off by`,
		value: toleranceFraction,
		unit: 'fraction',
		law: toleranceLaw,
		inputs: [tolerance]
	});
	const [first, second] = [...smallest.parts].sort((a, b) => a.massG - b.massG);
	const uncertaintyFraction =
		first && second
			? withinLaw(draft, 'materials', `Uncertainty of a cup of ${sheet.name}`, () =>
					traced(draft, `${path}.uncertaintyFraction`, {
						label: `${sheet.name}: uncertainty of the ratio in the smallest cup`,
						value: ratioUncertaintyFraction({
							massesG: [first.massG, second.massG],
							readabilityG,
							tared: true
						}),
						unit: 'fraction',
						law: weighingUncertaintyLaw,
						inputs: [
							scale,
							computed('m_1', first.part, first.massG, 'g'),
							computed('m_2', second.part, second.massG, 'g')
						],
						note: 'One standard uncertainty; twice that covers about 95%.'
					})
				)
			: null;
	const isFineEnough = leastG === null || smallest.massG >= leastG - 1e-9;
	if (!isFineEnough) {
		const text = `A scale that reads ${readabilityG} g weighs ${sheet.name} on ratio from ${leastG?.toFixed(0)} g on; the plan has a cup of ${smallest.massG.toFixed(0)} g. Take a finer scale for it.`;
		warn(draft, 'warn', 'scale-coarse', 'materials', text);
	}
	return {
		materialId: sheet.id,
		materialName: sheet.name,
		smallestBatchG: leastG,
		smallestCupG: smallest.massG,
		perHundred: perHundred(draft, sheet, parts, path),
		uncertaintyFraction,
		toleranceFraction,
		isFineEnough
	};
}

/** The other parts for a hundred of the first, by weight, and by volume of two parts with densities. */
function perHundred(
	draft: Draft,
	sheet: Sheet,
	parts: readonly number[],
	path: string
): NonNullable<WeighingSection[number]['perHundred']> {
	const [first, second] = sheet.parts;
	const ratio = fromSheet('r', 'ratio by weight', ratioText(sheet, parts), 'text');
	const volumes =
		sheet.parts.length === 2 && first?.densityGPerMl && second?.densityGPerMl
			? volumePartsBPer100A({
					massParts: [parts[0] ?? 1, parts[1] ?? 1],
					densitiesGPerMl: [first.densityGPerMl, second.densityGPerMl]
				})
			: null;
	return sheet.parts.slice(1).map(({ part }, i) => ({
		part,
		massG: traced(draft, `${path}.perHundred.${i}.massG`, {
			label: `${sheet.name}: ${part} for 100 g of ${first?.part ?? ''}`,
			value: otherPartG({ knownG: 100, knownParts: parts[0] ?? 1, otherParts: parts[i + 1] ?? 1 }),
			unit: 'g',
			law: otherPartLaw,
			inputs: [ratio]
		}),
		volumeMl:
			volumes === null
				? null
				: traced(draft, `${path}.perHundred.${i}.volumeMl`, {
						label: `${sheet.name}: ${part} for 100 mL of ${first?.part ?? ''}`,
						value: volumes,
						unit: 'mL',
						law: volumeRatioLaw,
						inputs: [
							ratio,
							fromSheet(
								'ρ_A',
								`density of ${first?.part ?? ''}`,
								first?.densityGPerMl ?? 0,
								'g/mL'
							),
							fromSheet('ρ_B', `density of ${part}`, second?.densityGPerMl ?? 0, 'g/mL')
						],
						note: 'By weight is the safer way; by volume only where the data sheet allows it.'
					})
	}));
}
