/** An indexed triangle mesh; outward is where a triangle's corners run counterclockwise. */
export interface Mesh {
	/** x, y, z of each vertex: in the file's unit as read, in millimeters once placed on the board. */
	readonly positions: Float64Array;
	/** Three vertex numbers for each triangle. */
	readonly triangles: Uint32Array;
}

export type Vec3 = readonly [number, number, number];

export function triangleCount(mesh: Mesh): number {
	return mesh.triangles.length / 3;
}

/** One vertex as three numbers. */
export function vertexAt({ positions }: Pick<Mesh, 'positions'>, index: number): Vec3 {
	return [positions[3 * index]!, positions[3 * index + 1]!, positions[3 * index + 2]!];
}
