import type { MeshBody } from '$lib/core/geometry/mesh-body';
import { offsetVolumeMl } from '$lib/core/laws/offset-volume';
import type { DrawnLayer } from './section-picture';

export interface LayerVolume extends DrawnLayer {
	volumeMl: number;
	/** Of the volume from the pattern out to this layer's face, by the computation alone. */
	errorFraction: number;
}

/** Volume of each layer between true offset surfaces, by the volumes computed on the mesh. */
export function layerVolumesOf(
	layers: readonly DrawnLayer[],
	exposedAreaCm2: number,
	offsets: MeshBody['offsets']
): LayerVolume[] {
	let [outerMm, uptoMl] = [0, 0];
	return layers.map((layer) => {
		outerMm += layer.thicknessMm;
		const before = uptoMl;
		uptoMl = offsetVolumeMl(exposedAreaCm2, offsets, outerMm);
		const row = offsets.find((one) => one.outerMm >= outerMm) ?? offsets.at(-1);
		return {
			...layer,
			volumeMl: uptoMl - before,
			errorFraction: row ? row.errorMl / row.volumeMl : 0
		};
	});
}
