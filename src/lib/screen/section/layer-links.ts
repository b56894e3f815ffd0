import type { SectionLayer } from './section-model';

/** Ids of the phases on the plan's page. */
type PlanPlace = 'pattern' | 'frame' | 'detail' | 'build' | 'wax' | 'shell' | 'pour';

/** Where the plan speaks of a layer: "#phase-build". */
export function planAnchor(layers: readonly SectionLayer[], index: number): string {
	return `#phase-${placeOf(layers, index)}`;
}

/** Where a layer of a mold leads: the one at work to the bench, any other to its place in the plan. */
export function jobLink(jobId: string, layers: readonly SectionLayer[], index: number): string {
	return layers[index]?.state === 'current'
		? `/jobs/${jobId}/bench`
		: `/jobs/${jobId}/plan${planAnchor(layers, index)}`;
}

/** Where a record tells how a layer was laid, "#built-2"; of the shell its first round. Undefined: nothing was laid, or no cup goes into it. */
export function recordAnchor(
	built: ReadonlyArray<{ title: string }>,
	layers: readonly SectionLayer[],
	index: number
): string | undefined {
	const layer = layers[index];
	if (!layer) return undefined;
	const labels = layers.map(({ label }) => label);
	// Rounds of the shell are one layer, and have names of their own.
	const row =
		layer.kind === 'shell'
			? built.findIndex(({ title }) => !labels.includes(title))
			: built.findLastIndex(({ title }) => title === layer.label);
	return row < 0 ? undefined : `#built-${row}`;
}

function placeOf(layers: readonly SectionLayer[], index: number): PlanPlace {
	switch (layers[index]?.kind) {
		case 'board':
		case 'frame':
			return 'frame';
		case 'detail':
			return 'detail';
		case 'build':
			return 'build';
		case 'shell':
			return 'shell';
		case 'casting':
			return 'pour';
		case 'release':
			// Upon the glove, not upon the pattern.
			return layers.slice(0, index).some(({ kind }) => kind === 'build') ? 'wax' : 'pattern';
		default:
			return 'pattern';
	}
}
