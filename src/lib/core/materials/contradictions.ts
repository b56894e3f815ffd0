import { ratioContradiction, RATIO_TOLERANCE_FRACTION } from '../laws/ratio-contradiction';
import { mixedDensityGPerMl } from '../laws/volume-ratio';
import { weightRatio } from './mix-ratio';
import type { Sheet } from './sheet';

/** Two numbers of a data sheet that can't both be right. */
export interface SheetContradiction {
	/** Field of the sheet that is off, or, when nobody can tell, one of those that disagree. */
	field: string;
	message: string;
	statedValue: number;
	expectedValue: number;
}

/** Everything on a data sheet that contradicts the rest of it; empty when it holds together. */
export function sheetContradictions(sheet: Sheet): SheetContradiction[] {
	return [
		...countContradictions(sheet),
		...ratioContradictions(sheet),
		...densityContradictions(sheet),
		...timeContradictions(sheet),
		...temperatureContradictions(sheet),
		...volatileContradictions(sheet)
	];
}

const shown = (value: number): string => String(Number(value.toPrecision(3)));

function countContradictions(sheet: Sheet): SheetContradiction[] {
	const expectedValue = sheet.parts.length;
	return (['ratioByWeight', 'ratioByVolume'] as const).flatMap((field) => {
		const statedValue = sheet[field]?.length;
		return statedValue === undefined || statedValue === expectedValue
			? []
			: [
					{
						field,
						message: `The ratio has ${statedValue} numbers for ${expectedValue} parts; give one number a part.`,
						statedValue,
						expectedValue
					}
				];
	});
}

function ratioContradictions(sheet: Sheet): SheetContradiction[] {
	const [massA, massB, massC] = sheet.ratioByWeight ?? [];
	const [volumeA, volumeB] = sheet.ratioByVolume ?? [];
	const [a, b] = sheet.parts.map(({ densityGPerMl }) => densityGPerMl);
	if (!massA || !massB || massC || !volumeA || !volumeB || !a || !b) return [];
	const found = ratioContradiction({
		massParts: [massA, massB],
		volumeParts: [volumeA, volumeB],
		densitiesGPerMl: [a, b],
		mixedGPerMl: sheet.mixedDensityGPerMl
	});
	if (!found) return [];
	const { needed, off } = found;
	const [nameA, nameB] = sheet.parts.map(({ part }) => part);
	const all =
		`By weight ${massA}:${massB} and by volume ${volumeA}:${volumeB} mean that ${nameA} is ` +
		`${shown(needed.densityRatio)} times as dense as ${nameB}; the sheet's densities say ${shown(a / b)}.`;
	if (off === 'weight ratio') {
		return [
			{
				field: 'ratioByWeight',
				message: `${all} The mixed density speaks against the weight ratio: expected 100:${shown(needed.massPartsBPer100A)}.`,
				statedValue: (100 * massB) / massA,
				expectedValue: needed.massPartsBPer100A
			}
		];
	}
	if (off === 'volume ratio') {
		return [
			{
				field: 'ratioByVolume',
				message: `${all} The mixed density speaks against the volume ratio: expected 100:${shown(needed.volumePartsBPer100A)}.`,
				statedValue: (100 * volumeB) / volumeA,
				expectedValue: needed.volumePartsBPer100A
			}
		];
	}
	return [
		{
			field: 'parts.0.densityGPerMl',
			message: `${all} If the ratios are right, ${nameA} has ${shown(needed.densityAGPerMl)} g/mL.`,
			statedValue: a,
			expectedValue: needed.densityAGPerMl
		}
	];
}

function densityContradictions(sheet: Sheet): SheetContradiction[] {
	const parts = weightRatio(sheet);
	const densities = sheet.parts.map(({ densityGPerMl }) => densityGPerMl);
	if (!parts || parts.length < 2 || densities.some((density) => density === undefined)) return [];
	const expectedValue = mixedDensityGPerMl({
		massParts: parts,
		densitiesGPerMl: densities.map(Number)
	});
	const statedValue = sheet.mixedDensityGPerMl;
	return Math.abs(statedValue / expectedValue - 1) <= RATIO_TOLERANCE_FRACTION
		? []
		: [
				{
					field: 'mixedDensityGPerMl',
					message: `The parts in this ratio mix to ${shown(expectedValue)} g/mL; the sheet says ${shown(statedValue)} g/mL.`,
					statedValue,
					expectedValue
				}
			];
}

/** Whether a recoat window shuts before it opens, both stated at one temperature: no coat could ever follow. */
export function isShutFirst({
	tackFree,
	recoatCloses
}: Pick<Sheet, 'tackFree' | 'recoatCloses'>): boolean {
	return (
		tackFree !== undefined &&
		recoatCloses !== undefined &&
		tackFree.atC === recoatCloses.atC &&
		recoatCloses.timeS <= tackFree.timeS
	);
}

/** Times that must follow one another, earlier first. */
function timeContradictions(sheet: Sheet): SheetContradiction[] {
	const { potLife, mixS, tackFree, recoatCloses, demold } = sheet;
	const pairs: [string, string, number | undefined, string, number | undefined][] = [
		['potLife.timeS', 'The pot life', potLife?.timeS, 'the time it takes to mix', mixS],
		[
			'recoatCloses.timeS',
			'The recoat window shuts',
			recoatCloses?.timeS,
			'it opens',
			tackFree?.timeS
		],
		['demold.timeS', 'Demolding', demold?.timeS, 'the coat is almost tack-free', tackFree?.timeS]
	];
	return pairs.flatMap(([field, later, statedValue, earlier, expectedValue]) =>
		statedValue === undefined || expectedValue === undefined || statedValue > expectedValue
			? []
			: [
					{
						field,
						message: `${later} (${minutes(statedValue)}) must come after ${earlier} (${minutes(expectedValue)}).`,
						statedValue,
						expectedValue
					}
				]
	);
}

const minutes = (timeS: number): string => `${shown(timeS / 60)} min`;

function temperatureContradictions({ useTemperature }: Sheet): SheetContradiction[] {
	if (!useTemperature || useTemperature.minC < useTemperature.maxC) return [];
	return [
		{
			field: 'useTemperature.maxC',
			message: `The warmest room, ${useTemperature.maxC} °C, must be above the coldest, ${useTemperature.minC} °C.`,
			statedValue: useTemperature.maxC,
			expectedValue: useTemperature.minC
		}
	];
}

/** Shares by weight that come to more than the whole; binary fractions may miss it by a hair. */
function volatileContradictions({ volatiles = [] }: Sheet): SheetContradiction[] {
	const statedValue = volatiles.reduce((sum, { fraction }) => sum + fraction, 0);
	if (statedValue <= 1 + 1e-9) return [];
	return [
		{
			field: 'volatiles.0.fraction',
			message: `What evaporates comes to ${shown(100 * statedValue)}% of the mix; accepted: 100% at most.`,
			statedValue,
			expectedValue: 1
		}
	];
}
