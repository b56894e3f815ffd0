import type { Pattern } from '$lib/core/geometry/pattern';
import { pairProblems, type ChosenSheets } from '$lib/core/materials/compatibility';
import type { MaterialKind, Sheet } from '$lib/core/materials/sheet';
import { takenHazards } from '$lib/core/materials/usual-hazards';
import { detailNeed } from '$lib/core/plan/detail-rule';
import type { Slot } from './choices';

/** For every place, the sheet chosen, null where it shall stay empty; absent where nobody has chosen. */
export type Chosen = Partial<Record<Slot, Sheet | null>>;

/**
 * Fills the places that nobody has chosen for with the sheets that get along best: the fewest refusals,
 * then the fewest warnings (a molten casting is one), then the fewest hazards. Null when the library has no glove, shell or casting material.
 */
export function proposeMaterials(
	pattern: Pattern,
	library: readonly Sheet[],
	chosen: Chosen
): ChosenSheets | null {
	const of = (kind: MaterialKind) => library.filter((sheet) => sheet.kind === kind);
	const pool = (slot: Slot, sheets: Sheet[]) => {
		const choice = chosen[slot];
		return choice ? [choice] : sheets;
	};
	const gloves = of('glove').filter(({ body }) => body !== 'free-flowing');
	let best: ChosenSheets | null = null;
	let least = Infinity;
	for (const build of pool('build', gloves)) {
		for (const shell of pool('shell', of('shell'))) {
			for (const casting of pool('casting', of('casting'))) {
				const sheets = around(pattern, { build, shell, casting }, chosen, of);
				const lacksDetail =
					detailNeed(pattern.detail).needed && !sheets.detail && chosen.detail === undefined;
				const burden = burdenOf(pattern, sheets) + (lacksDetail ? BURDEN.refuse : 0);
				if (burden < least) [best, least] = [sheets, burden];
			}
		}
	}
	return best;
}

function around(
	pattern: Pattern,
	main: Pick<ChosenSheets, 'build' | 'shell' | 'casting'>,
	chosen: Chosen,
	of: (kind: MaterialKind) => Sheet[]
): ChosenSheets {
	const { build, shell } = main;
	const or = (slot: Slot, proposed: Sheet | undefined): Sheet | undefined =>
		chosen[slot] === undefined ? proposed : (chosen[slot] ?? undefined);
	const fiber = shell.family === 'plaster' ? 'plant fiber' : 'glass fiber';
	return {
		...main,
		detail: or(
			'detail',
			detailNeed(pattern.detail).needed
				? of('glove').find(({ body, family }) => body === 'free-flowing' && family === build.family)
				: undefined
		),
		reinforcement: or(
			'reinforcement',
			shell.body === 'liquid' || shell.family === 'plaster'
				? of('reinforcement').find(({ family }) => family === fiber)
				: undefined
		),
		sealer: or('sealer', pattern.porosity === 'dense' ? undefined : of('sealer')[0]),
		wax: or('wax', of('wax')[0]),
		film: or('film', build.family.includes('silicone') ? undefined : of('film')[0])
	};
}

const BURDEN = { refuse: 1000, decide: 100, warn: 1, note: 0 };

function burdenOf(pattern: Pattern, sheets: ChosenSheets): number {
	const hazards = new Set(
		Object.values(sheets).flatMap((sheet?: Sheet) => (sheet ? takenHazards(sheet) : []))
	);
	// It burns and has to be melted, whatever little its sheet ticks.
	const molten = sheets.casting.family === 'casting wax' ? BURDEN.warn : 0;
	return pairProblems(pattern, sheets).reduce(
		(sum, { severity }) => sum + BURDEN[severity],
		molten + hazards.size / 100
	);
}

/** Refusals in the few words that a list has room for; the page says the whole of it once one is chosen. */
const IN_SHORT: Readonly<Record<string, string>> = {
	inhibited: 'does not cure here',
	'casting-inhibited': 'does not cure in this glove',
	'casting-bonds': 'bonds to this glove',
	'no-bond': 'no bond between the coats',
	'release-missing': 'needs a release',
	'shell-release-missing': 'needs wax'
};

/** Why a sheet in this place would be refused beside the others, in a few words; null when it would not be. */
export function refusal(
	pattern: Pattern,
	sheets: ChosenSheets,
	slot: Slot,
	candidate: Sheet
): string | null {
	const found = pairProblems(pattern, { ...sheets, [slot]: candidate }).find(
		({ severity, text }) => severity === 'refuse' && text.includes(candidate.name)
	);
	return found ? (IN_SHORT[found.code] ?? 'not with the others') : null;
}
