import type { FaultKind, Health } from '$lib/core/mesh/health';
import type { Repairs } from '$lib/core/mesh/repair';

export interface HealthWords {
	/** One sentence for all. */
	verdict: string;
	isSound: boolean;
	repaired: string[];
	left: string[];
	trusted: string[];
	untrusted: string[];
}

const many = (count: number, one: string, more: string): string =>
	`${count.toLocaleString('en-US')} ${count === 1 ? one : more}`;

/** Two digits; what is less than a thousandth of a percent is said to be so. */
const percent = (fraction: number): string =>
	fraction < 1e-5 ? 'less than 0.001%' : `${Number((100 * fraction).toPrecision(2))}%`;

const FAULT_WORDS: Record<FaultKind, (count: number) => string> = {
	'open edges': (n) => `${many(n, 'edge has', 'edges have')} a triangle on one side only: a hole`,
	'edges of three or more': (n) => `${many(n, 'edge joins', 'edges join')} three triangles or more`,
	'turned neighbors': (n) => `${many(n, 'pair', 'pairs')} of neighbors face opposite ways`,
	'inside out': (n) => `${many(n, 'triangle faces', 'triangles face')} inward`,
	'loose parts': (n) => `${many(n, 'part is', 'parts are')} loose beside the main one`,
	'parts within parts': (n) =>
		`${many(n, 'part lies', 'parts lie')} within another: that volume would count twice`,
	'doubled triangles': (n) => `${many(n, 'triangle lies', 'triangles lie')} twice in one place`,
	'triangles without area': (n) => `${many(n, 'triangle has', 'triangles have')} no area`,
	slivers: (n) =>
		`${many(n, 'triangle is', 'triangles are')} thin as a hair; nothing depends on it`,
	'crossing triangles': (n) => `${many(n, 'triangle cuts', 'triangles cut')} through another one`,
	'no volume': () => 'The mesh encloses no volume: it is a sheet'
};

/**
 * What was found, repaired and left of a mesh's faults, and which numbers hold in spite of them.
 *
 * @param hasCoats - false where the mesh is sound but so fine that its coats are not computed
 */
export function healthWords(health: Health, repairs: Repairs, hasCoats = true): HealthWords {
	const { faults, isComplete, unlookedParts } = health;
	const trust = { ...health.trust, distance: health.trust.distance && hasCoats };
	const repaired = [
		repairs.joinedVertices > 0 &&
			`${many(repairs.joinedVertices, 'corner was', 'corners were')} joined with an equal one.`,
		repairs.droppedTriangles > 0 &&
			`${many(repairs.droppedTriangles, 'useless triangle was', 'useless triangles were')} left out.`,
		repairs.turnedTriangles > 0 &&
			`${many(repairs.turnedTriangles, 'triangle was', 'triangles were')} turned to face outward.`,
		repairs.hiddenFraction > 0 &&
			`Parts that touch or overlap were joined into one body; ${percent(repairs.hiddenFraction)} of their area lay between or within them and is left out.`
	].filter((line) => line !== false);
	const left = [
		...faults.map(({ kind, count, at }) => `${FAULT_WORDS[kind](count)}${place(kind, at)}.`),
		...(isComplete ? [] : ['The search for crossing triangles stopped at its limit.']),
		...(unlookedParts > 0
			? [
					`Whether parts lie within others was looked at for the largest; ${many(unlookedParts, 'small one was', 'small ones were')} not looked at.`
				]
			: [])
	];
	const numbers: [boolean, string][] = [
		[trust.area, 'exposed area'],
		[trust.volume, 'volume and center of mass'],
		[trust.distance, 'coats, sections with coats and bridged places']
	];
	return {
		verdict: hasCoats
			? verdictOf(health)
			: 'The mesh is closed, but too fine for its coats to be computed.',
		isSound: trust.area && trust.volume && trust.distance,
		repaired,
		left,
		trusted: [...numbers.filter(([isTrusted]) => isTrusted).map(([, name]) => name), 'size'],
		untrusted: numbers.filter(([isTrusted]) => !isTrusted).map(([, name]) => name)
	};
}

function verdictOf({ isWatertight, trust, faults, isComplete, unlookedParts }: Health): string {
	const isSearched = isComplete && unlookedParts === 0;
	if (faults.length === 0) {
		return isSearched
			? 'The mesh is closed and without faults.'
			: 'The mesh is closed, and no fault was found as far as it was searched.';
	}
	if (trust.distance && trust.volume) {
		return isSearched
			? 'The mesh is closed; what is left does no harm.'
			: 'The mesh is closed; what was found does no harm, but not all of it was searched.';
	}
	if (isWatertight) return 'The mesh is closed, but some of its numbers cannot be trusted.';
	return 'The mesh is not closed: nobody can tell its inside from its outside.';
}

/** What whoever drew the mesh has to do before it can become a pattern. */
export function mendingWords({ isWatertight, faults }: Health): string {
	const has = (kind: FaultKind): boolean => faults.some((fault) => fault.kind === kind);
	if (!isWatertight) return 'Close its holes where it was drawn';
	if (has('no volume')) return 'Give it a thickness where it was drawn';
	return 'Unite its parts into one body where it was drawn';
}

function place(kind: FaultKind, at: readonly [number, number, number]): string {
	if (kind === 'no volume' || kind === 'slivers') return '';
	const [x, y, z] = at.map((value) => Number(value.toPrecision(4)));
	return `, first at x ${x}, y ${y}, z ${z} of the file`;
}
