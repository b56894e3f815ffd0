import Module, { type Manifold as Solid, type ManifoldToplevel } from 'manifold-3d';
import type { Mesh } from '../../src/lib/core/mesh/mesh';
import { weldMesh } from '../../src/lib/core/mesh/weld';

export const KERNEL = 'manifold-3d 3.5.4, a general geometry kernel';

/** The kernel, loaded once. */
export async function loadKernel(): Promise<ManifoldToplevel> {
	const kernel = await Module();
	kernel.setup();
	return kernel;
}

export function toKernel({ Manifold, Mesh: KernelMesh }: ManifoldToplevel, mesh: Mesh): Solid {
	const found = new KernelMesh({
		numProp: 3,
		vertProperties: Float32Array.from(mesh.positions),
		triVerts: mesh.triangles
	});
	found.merge();
	return new Manifold(found);
}

export function fromKernel(solid: Solid): Mesh {
	const { numProp, vertProperties, triVerts } = solid.getMesh();
	const positions = Float64Array.from(
		{ length: (3 * vertProperties.length) / numProp },
		(_, i) => vertProperties[Math.floor(i / 3) * numProp + (i % 3)]!
	);
	return weldMesh({ positions, triangles: Uint32Array.from(triVerts) });
}
