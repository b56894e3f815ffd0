import { refuse } from './refusal';

/** What a reader takes on before it refuses. */
export interface ReadLimits {
	maxTriangles: number;
	/** Size of a zipped file once unzipped. */
	maxUnzippedBytes: number;
}

/** Six million triangles: five million are promised, and the store takes files of 300 MB, which hold no more. */
export const READ_LIMITS: ReadLimits = {
	maxTriangles: 6_000_000,
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
