import { coatVolumeLaw, coatVolumeMl } from '../laws/coat-volume';
import { offsetVolumeLaw, offsetVolumeMl } from '../laws/offset-volume';
import type { FigureInput, Law } from '../quantity/figure';
import { computed, type Draft } from './trace';

/** The law by which layers on the pattern are counted: on its mesh, or by area, edges and corners. */
export function wallLaw({ surface }: Draft): Law {
	return surface.offsets ? offsetVolumeLaw : coatVolumeLaw;
}

/** Volume of a layer on the pattern alone, from one distance off its surface to another, mL. */
export function wallVolumeMl({ surface }: Draft, fromMm: number, toMm: number): number {
	const { exposedAreaCm2, offsets } = surface;
	const uptoMl = (mm: number): number =>
		offsets
			? offsetVolumeMl(exposedAreaCm2, offsets, mm)
			: coatVolumeMl(
					{
						areaCm2: exposedAreaCm2,
						edgeTurnMm: surface.edgeTurnMm,
						cornerTurnSr: surface.cornerTurnSr
					},
					mm
				);
	return Math.max(0, uptoMl(toMm) - uptoMl(fromMm));
}

/** What stands in the trace of a layer beside area and thickness. */
export function wallInputs({ surface }: Draft): FigureInput[] {
	const { offsets, edgeTurnMm, cornerTurnSr } = surface;
	if (!offsets) {
		return [
			computed('E', 'edges times their turn', edgeTurnMm, 'mm'),
			computed('K', 'corners', cornerTurnSr, 'count')
		];
	}
	return [
		computed('n', 'distances computed on the mesh', offsets.length, 'count'),
		...offsets
			.slice(0, 12)
			.map(({ outerMm, volumeMl }) =>
				computed(`V(${outerMm})`, `out to ${outerMm} mm from the mesh`, volumeMl, 'mL')
			)
	];
}
