import type { Layer } from '$lib/screen/mesh/layers';

/** A point that section and model are asked to show. */
export interface Shown {
	xMm: number;
	yMm: number;
	zMm: number;
	layer: Layer;
	/** What it is, for whoever cannot see it. */
	words: string;
}
