import Module, { type Manifold as Solid, type ManifoldToplevel } from 'manifold-3d';
import type { Mesh } from '../../src/lib/core/mesh/mesh';

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
