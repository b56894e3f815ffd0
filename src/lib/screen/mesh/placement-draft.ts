import type { Placement } from '$lib/core/mesh/place';
import type { Rest } from '$lib/core/mesh/rests';
import { readNumber } from '../form/read-number';

/** How a mesh is laid down, as typed. */
export interface PlacementDraft {
	unitMm: string;
	scalePct: string;
	turnDeg: string;
	/** Number of the resting face, from 0. */
	rest: string;
}

export const UNIT_OPTIONS = [
	{ value: '1', label: 'millimeters' },
	{ value: '10', label: 'centimeters' },
	{ value: '1000', label: 'meters' },
	{ value: '25.4', label: 'inches' },
	{ value: '304.8', label: 'feet' }
];

/** The draft a file starts with: its own unit or the likeliest one, on its largest stable face, turned as this proposes. */
export function firstDraft(unitMm: number, turnDeg = 0): PlacementDraft {
	return { unitMm: String(unitMm), scalePct: '100', turnDeg: String(turnDeg), rest: '0' };
}

export type PlacementRead =
	| { placement: Placement; errors: Partial<Record<keyof PlacementDraft, string>> }
	| { placement: null; errors: Partial<Record<keyof PlacementDraft, string>> };

/** The placement that is typed, or what is wrong with it. */
export function readPlacement(draft: PlacementDraft, rests: readonly Rest[]): PlacementRead {
	const errors: Partial<Record<keyof PlacementDraft, string>> = {};
	const within = (key: 'scalePct' | 'turnDeg', min: number, max: number, unit: string): number => {
		const value = readNumber(draft[key]);
		if (value !== null && value >= min && value <= max) return value;
		errors[key] =
			`“${draft[key].slice(0, 40)}” is not accepted; accepted: ${min} to ${max}${unit}.`;
		return Number.NaN;
	};
	const scale = within('scalePct', 1, 10_000, '%') / 100;
	const turnDeg = within('turnDeg', -360, 360, '°');
	const down = rests[Number(draft.rest)]?.down ?? ([0, 0, -1] as const);
	const unitMm = Number(draft.unitMm);
	return Object.keys(errors).length > 0
		? { placement: null, errors }
		: { placement: { unitMm, scale, turnDeg, down }, errors };
}

/** Where a face is in the file's own axes, in words. */
export function faceName([x, y, z]: Rest['down']): string {
	const named: [number, string][] = [
		[-z, 'the file’s underside'],
		[z, 'the file’s top'],
		[-x, 'the file’s left (−x)'],
		[x, 'the file’s right (+x)'],
		[-y, 'the file’s front (−y)'],
		[y, 'the file’s back (+y)']
	];
	const exact = named.find(([cosine]) => cosine > 0.9998);
	if (exact) return exact[1];
	const nearest = named.reduce((best, one) => (one[0] > best[0] ? one : best));
	return `a slope near ${nearest[1]}`;
}
