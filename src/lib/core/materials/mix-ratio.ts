import { massPartsBPer100A } from '../laws/volume-ratio';
import type { Sheet } from './sheet';

/**
 * Parts by weight in the order of the sheet's parts; a single 1 for a one-part material. A sheet
 * that gives only a ratio by volume is converted with its part densities.
 *
 * @returns null when the sheet does not say how to weigh its parts
 */
export function weightRatio(sheet: Sheet): number[] | null {
	const { parts, ratioByWeight, ratioByVolume } = sheet;
	if (parts.length === 1) return [1];
	if (ratioByWeight) return ratioByWeight.length === parts.length ? [...ratioByWeight] : null;
	if (!ratioByVolume || ratioByVolume.length !== parts.length) return null;
	const [volumeA, volumeB, volumeC] = ratioByVolume;
	const [a, b, c] = parts.map(({ densityGPerMl }) => densityGPerMl);
	if (!volumeA || !volumeB || !a || !b) return null;
	const second = massPartsBPer100A({ volumeParts: [volumeA, volumeB], densitiesGPerMl: [a, b] });
	if (parts.length === 2) return [100, second];
	if (!volumeC || !c) return null;
	return [
		100,
		second,
		massPartsBPer100A({ volumeParts: [volumeA, volumeC], densitiesGPerMl: [a, c] })
	];
}

/** A ratio with the names of its parts, in the sheet's order: "A 110 : B 100". */
export function ratioText({ parts }: Pick<Sheet, 'parts'>, ratio: readonly number[]): string {
	return ratio.map((share, i) => `${parts[i]?.part ?? ''} ${share}`.trim()).join(' : ');
}
