import type { MeshDesk } from '$lib/device/mesh-desk.svelte';
import type { Shown } from './shown';

/** Where a kind of fault, by its place in the list, is to be shown; null until the mesh lies on the board. */
export function faultShown(
	{ health, faultsAt }: Pick<MeshDesk, 'health' | 'faultsAt'>,
	fault: number
): Shown | null {
	const [spot, found] = [faultsAt[fault], health?.faults[fault]];
	return spot && found ? { ...spot, layer: 'faults', words: `Fault: ${found.kind}` } : null;
}
