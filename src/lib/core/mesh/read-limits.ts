import { refuse } from './refusal';

/** What a reader takes on before it refuses. */
export interface ReadLimits {
	maxTriangles: number;
	maxVertices: number;
	/** Size of a zipped file once unzipped. */
	maxUnzippedBytes: number;
}

/** Ten million triangles: five million are promised, and a file must not take all memory. A choice. */
export const READ_LIMITS: ReadLimits = {
	maxTriangles: 10_000_000,
	maxVertices: 30_000_000,
	maxUnzippedBytes: 1_500_000_000
};

export function refuseTooManyTriangles(count: number, limits: ReadLimits, where: string): void {
	if (count > limits.maxTriangles) {
		refuse(
			`The file says it holds ${count} triangles`,
			where,
			`up to ${limits.maxTriangles} triangles; make the mesh coarser`
		);
	}
}
